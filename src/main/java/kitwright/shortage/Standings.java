package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.value.Ref;

/** How every shortage, and with it every item of the kit, stands on a day. */
public final class Standings {
  private static final Facts.Fact<Standings> FACT = new Work();

  private final Map<String, Standing> byId;
  private final Map<String, Balance> byItem;
  private final List<Standing> all;
  private final List<Balance> balances;

  private Standings(Map<String, Standing> byId, Map<String, Balance> byItem) {
    this.byId = byId;
    this.byItem = byItem;
    this.all = List.copyOf(byId.values());
    this.balances = List.copyOf(byItem.values());
  }

  /** How every shortage found up to the end of the day stands. */
  public static Standings on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<Standings> {
    @Override
    protected Standings work(Facts day) {
      return of(day.ledger(), Positions.on(day), kitwright.substitution.Standings.on(day));
    }
  }

  /** Judges every shortage found up to the end of the day for which the positions hold. */
  public static Standings of(
      Ledger ledger, Positions positions, kitwright.substitution.Standings substitutions) {
    LocalDate today = positions.day();
    Map<String, List<Shortage>> found = new HashMap<>();
    ledger.shortages().stream()
        .filter(shortage -> !shortage.found().isAfter(today))
        .sorted(Comparator.comparing(Shortage::found))
        .forEach(
            shortage ->
                found.computeIfAbsent(shortage.item().id(), id -> new ArrayList<>()).add(shortage));
    Covering covering = new Covering(ledger, substitutions, today);
    Map<String, Standing> standings = new HashMap<>();
    Map<String, Balance> balances = new LinkedHashMap<>();
    for (Position position : positions.all()) {
      List<Shortage> ofItem = found.getOrDefault(position.item().id(), List.of());
      Balance balance = covering.balance(position, ofItem);
      balances.put(position.item().id(), balance);
      balance.shortages().forEach(each -> standings.putIfAbsent(each.shortage().id(), each));
    }
    return new Standings(inOrder(ledger, standings, covering, today), balances);
  }

  /** In the ledger's order; a shortage of an unknown item stands alone. */
  private static Map<String, Standing> inOrder(
      Ledger ledger, Map<String, Standing> standings, Covering covering, LocalDate today) {
    Map<String, Standing> all = new LinkedHashMap<>();
    for (Shortage shortage : ledger.shortages()) {
      if (!shortage.found().isAfter(today)) {
        Optional<Standing> known = Optional.ofNullable(standings.get(shortage.id()));
        all.putIfAbsent(shortage.id(), known.orElseGet(() -> covering.alone(shortage)));
      }
    }
    return all;
  }

  /** Every shortage, in the ledger's order. */
  public List<Standing> all() {
    return all;
  }

  /** The open ones, in the ledger's order. */
  public List<Standing> open() {
    return all.stream().filter(Standing::isOpen).toList();
  }

  public Optional<Standing> of(Ref shortage) {
    return Optional.ofNullable(byId.get(shortage.id()));
  }

  /** The account of every item, in the kit's order. */
  public List<Balance> balances() {
    return balances;
  }

  /** The account of an item of the kit. */
  public Optional<Balance> balance(Ref item) {
    return Optional.ofNullable(byItem.get(item.id()));
  }
}
