package kitwright.claim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * What a claim asks for a shortage, or for so much of it. Of the same pieces it asks one thing:
 * what was bought in their place and stands among the claim’s costs is asked instead of the goods.
 *
 * @param costs what bought the replacement, where its cost is asked
 * @param settled how it ended, part by part, as far as the record says
 */
public record Asking(
    Shortage shortage,
    Quantity qty,
    Claim.Remedy remedy,
    List<Cost> costs,
    List<Claim.Settlement> settled) {
  public Asking {
    costs = List.copyOf(costs);
    settled = List.copyOf(settled);
  }

  /** What a claim asks by what is recorded, in the order of the claim. */
  public static List<Asking> of(Claim claim, Facts day) {
    List<Asking> all = new ArrayList<>();
    for (Claim.Asked line : claim.asked()) {
      day.ledger()
          .shortage(line.shortage())
          .ifPresent(shortage -> all.addAll(of(line, shortage, claim, day)));
    }
    return List.copyOf(all);
  }

  /** What a claim names and nobody finds: a letter leaves it out. */
  public static List<Ref> unfound(Claim claim, Ledger ledger) {
    Map<String, Ref> unfound = new LinkedHashMap<>();
    for (Ref named : claim.shortages()) {
      Optional<Shortage> shortage = ledger.shortage(named);
      if (shortage.isEmpty()) {
        unfound.put(named.id(), named);
      } else if (ledger.kitItem(shortage.get().item()).isEmpty()) {
        unfound.putIfAbsent(shortage.get().item().id(), shortage.get().item());
      }
    }
    claim.spends().stream()
        .filter(ref -> ledger.spend(ref).isEmpty())
        .forEach(ref -> unfound.putIfAbsent(ref.id(), ref));
    return List.copyOf(unfound.values());
  }

  private static List<Asking> of(Claim.Asked line, Shortage shortage, Claim claim, Facts day) {
    Quantity qty = qty(line, shortage, claim);
    List<Claim.Settlement> settled = line.settled().stream().toList();
    Claim.Remedy remedy = line.remedy().orElse(claim.remedy());
    List<Spend> bought =
        line.costs().isEmpty()
            ? Cost.of(claim.costs(), claim, day).stream()
                .filter(spend -> Replacements.isOfTheThing(spend, shortage, day.ledger()))
                .toList()
            : Cost.of(line.costs(), claim, day);
    if (remedy == Claim.Remedy.COST) {
      List<Spend> costs = bought.isEmpty() ? Replacements.on(day).of(shortage) : bought;
      return List.of(new Asking(shortage, qty, remedy, Cost.of(costs, qty, claim, day), settled));
    }
    if (bought.isEmpty() || line.remedy().isPresent()) {
      return List.of(new Asking(shortage, qty, remedy, List.of(), settled));
    }
    Quantity replaced = replaced(bought, qty);
    Quantity rest = qty.less(replaced);
    List<Cost> costs = Cost.of(bought, replaced, claim, day);
    if (rest.isNone()) {
      return List.of(new Asking(shortage, replaced, Claim.Remedy.COST, costs, settled));
    }
    Ends ends = Ends.parted(settled, replaced, rest, remedy);
    return List.of(
        new Asking(shortage, replaced, Claim.Remedy.COST, costs, ends.bought()),
        new Asking(shortage, rest, remedy, List.of(), ends.owed()));
  }

  /** How much a line is about. */
  static Quantity qty(Claim.Asked line, Shortage shortage, Claim claim) {
    return line.qty().orElseGet(() -> restOf(shortage, claim));
  }

  /** All of a shortage that no other line of the claim names. */
  private static Quantity restOf(Shortage shortage, Claim claim) {
    return claim.asked().stream()
        .filter(line -> line.shortage().id().equals(shortage.id()))
        .flatMap(line -> line.qty().stream())
        .filter(qty -> qty.convertsTo(shortage.qty()))
        .reduce(shortage.qty(), Quantity::less);
  }

  private static Quantity replaced(List<Spend> bought, Quantity qty) {
    Quantity sum = Quantity.none(qty.unit());
    for (Spend spend : bought) {
      sum = sum.plus(spend.qty().filter(qty::convertsTo).orElse(qty));
    }
    return qty.min(sum);
  }

  /** Spending of a claim up to a day that bought no replacement: asked besides. */
  public static List<Cost> besides(Claim claim, Facts day) {
    Set<String> used = new HashSet<>();
    of(claim, day).forEach(part -> part.costs().forEach(cost -> used.add(cost.spend().id())));
    return Cost.of(claim.costs(), claim, day).stream()
        .filter(spend -> !used.contains(spend.id()))
        .map(spend -> Cost.of(spend, Optional.empty(), claim, day))
        .toList();
  }

  /** Whether all of it has an end of its own. */
  public boolean isSettled() {
    return !settled.isEmpty() && qty.less(ended(true)).less(ended(false)).isNone();
  }

  /**
   * So much of it as ends of its own have taken: all that others leave where one names no quantity.
   *
   * @param sent whether by goods that were sent, or otherwise
   */
  Quantity ended(boolean sent) {
    Quantity left = qty;
    Quantity ended = Quantity.none(qty.unit());
    for (Claim.Settlement end : settled) {
      Quantity part =
          end.qty().filter(left::convertsTo).orElse(end.qty().isPresent() ? none() : left);
      Quantity taken = part.in(qty.unit()).min(left);
      left = left.less(taken);
      ended = (end.how() == Claim.Outcome.REPLACED) == sent ? ended.plus(taken) : ended;
    }
    return ended;
  }

  private Quantity none() {
    return Quantity.none(qty.unit());
  }

  /** Whether money is asked. */
  public boolean isForMoney() {
    return remedy != Claim.Remedy.REPLACEMENT;
  }

  /** What so much of it is worth at the kit’s price; empty where the kit has none. */
  public Optional<Money> value(Quantity of, Ledger ledger) {
    return ledger.kitItem(shortage.item()).flatMap(item -> item.cost(of));
  }

  /**
   * The money that is asked, a sum a currency.
   *
   * @param owed what is still owed of it
   */
  public List<Money> money(Quantity owed, Ledger ledger) {
    return switch (remedy) {
      case REPLACEMENT -> List.of();
      case COST -> costs.stream().map(Cost::asked).toList();
      case CREDIT, REFUND, PRICE_REDUCTION -> value(owed, ledger).stream().toList();
    };
  }
}
