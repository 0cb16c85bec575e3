package kitwright.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.network.Headways;
import kitwright.value.Ref;

/**
 * How every item of the kit and every piece of stock stands on a day. Worked out in one pass over
 * the records; amounts in a unit that does not convert are left out, and the rule {@code
 * units-apart} tells of them.
 */
public final class Positions {
  private static final Facts.Fact<Positions> FACT =
      day -> of(day.ledger(), Headways.on(day), day.day());

  private final LocalDate day;
  private final Map<String, Position> items;
  private final Map<String, StockPosition> stock;
  private final List<Position> all;
  private final List<StockPosition> allStock;

  private Positions(LocalDate day, Map<String, Position> items, Map<String, StockPosition> stock) {
    this.day = day;
    this.items = items;
    this.stock = stock;
    this.all = List.copyOf(items.values());
    this.allStock = List.copyOf(stock.values());
  }

  /** Counts, uses and promises up to the end of the day. */
  public static Positions on(Facts day) {
    return FACT.on(day);
  }

  private static Positions of(Ledger ledger, Headways headways, LocalDate day) {
    Tallies tallies = new Tallies(ledger, headways);
    return new Positions(day, tallies.items(), tallies.stock());
  }

  /** The day for which they hold. */
  public LocalDate day() {
    return day;
  }

  /** Every item, in the kit's order. */
  public List<Position> all() {
    return all;
  }

  /** The position of an item of the kit. */
  public Optional<Position> of(Ref item) {
    return Optional.ofNullable(items.get(item.id()));
  }

  /** Every piece of stock, in the ledger's order. */
  public List<StockPosition> allStock() {
    return allStock;
  }

  /** The position of stock or an off-cut. */
  public Optional<StockPosition> ofStock(Ref ref) {
    return Optional.ofNullable(stock.get(ref.id()));
  }
}
