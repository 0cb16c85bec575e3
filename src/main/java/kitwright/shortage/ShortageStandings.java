package kitwright.shortage;

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
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Ref;
import org.jspecify.annotations.Nullable;

/**
 * How every shortage, and with it every item of the kit, stands on a day. The account of an item is
 * drawn up when it is first asked for, and asks only the substitutions that answer its shortages.
 */
public final class ShortageStandings {
  private static final Facts.Fact<ShortageStandings> FACT =
      day -> of(day.ledger(), Positions.on(day), SubstitutionStandings.on(day));

  private final Covering covering;

  /** What was found by the end of the day, in the ledger's order. */
  private final Map<String, Shortage> found = new LinkedHashMap<>();

  /** The same by item, the oldest first. */
  private final Map<String, List<Shortage>> ofItem = new HashMap<>();

  private final Positions positions;
  private final Map<String, Balance> byItem = new HashMap<>();
  private final Map<String, ShortageStanding> byId = new HashMap<>();
  private @Nullable List<ShortageStanding> all;

  private ShortageStandings(
      Ledger ledger, Positions positions, SubstitutionStandings substitutions) {
    covering = new Covering(ledger, substitutions, positions);
    this.positions = positions;
    ledger.shortages().stream().forEach(shortage -> found.putIfAbsent(shortage.id(), shortage));
    ledger.shortages().stream()
        .sorted(Comparator.comparing(Shortage::found))
        .forEach(
            shortage ->
                ofItem
                    .computeIfAbsent(shortage.item().id(), id -> new ArrayList<>())
                    .add(shortage));
  }

  /** How every shortage found up to the end of the day stands. */
  public static ShortageStandings on(Facts day) {
    return FACT.on(day);
  }

  /** By every shortage found up to the end of the day for which the positions hold. */
  public static ShortageStandings of(
      Ledger ledger, Positions positions, SubstitutionStandings substitutions) {
    return new ShortageStandings(ledger, positions, substitutions);
  }

  private Balance balance(Position position) {
    String item = position.item().id();
    Balance known = byItem.get(item);
    if (known == null) {
      known = covering.balance(position, ofItem.getOrDefault(item, List.of()));
      byItem.put(item, known);
    }
    return known;
  }

  /** With the others of its item; a shortage of an unknown item stands alone. */
  private ShortageStanding standing(Shortage shortage) {
    ShortageStanding known = byId.get(shortage.id());
    if (known == null) {
      known =
          balance(shortage.item()).stream()
              .flatMap(balance -> balance.shortages().stream())
              .filter(each -> each.shortage().id().equals(shortage.id()))
              .findFirst()
              .orElseGet(() -> covering.alone(shortage));
      byId.put(shortage.id(), known);
    }
    return known;
  }

  /** Every shortage, in the ledger's order. */
  public List<ShortageStanding> all() {
    List<ShortageStanding> known = all;
    if (known == null) {
      known = found.values().stream().map(this::standing).toList();
      all = known;
    }
    return known;
  }

  /** The open ones, in the ledger's order. */
  public List<ShortageStanding> open() {
    return all().stream().filter(ShortageStanding::isOpen).toList();
  }

  public Optional<ShortageStanding> of(Ref shortage) {
    return Optional.ofNullable(found.get(shortage.id())).map(this::standing);
  }

  /** The account of every item, in the kit's order. */
  public List<Balance> balances() {
    return positions.all().stream().map(this::balance).toList();
  }

  /** The account of an item of the kit. */
  public Optional<Balance> balance(Ref item) {
    return positions.of(item).map(this::balance);
  }
}
