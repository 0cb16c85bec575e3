package kitwright.shortage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import kitwright.ledger.Substitution;
import kitwright.network.Need;
import kitwright.network.Netting;
import kitwright.network.Plan;

/** Needs by task and thing. */
final class Gathered {
  private final Plan plan;
  private final Things resolver;
  private final Consumption used;
  private final Map<Spot, BigDecimal> amounts = new LinkedHashMap<>();

  /** By finished tasks too, whatever the log says of it. */
  private final Map<Spot, BigDecimal> asked = new HashMap<>();

  private final Map<Spot, BigDecimal> told = new HashMap<>();
  private final Map<Spot, List<String>> sums = new HashMap<>();
  private final Map<String, Thing> things = new TreeMap<>();

  Gathered(Plan plan, Things resolver, Consumption used) {
    this.plan = plan;
    this.resolver = resolver;
    this.used = used;
  }

  void add(Collection<Want> wants) {
    for (Want want : wants) {
      resolver.of(want).ifPresent(each -> add(want, each));
    }
  }

  private void add(Want want, Things.Amount each) {
    Spot spot = new Spot(want.task(), each.thing().key());
    asked.merge(spot, each.amount(), BigDecimal::add);
    if (plan.isOpen(want.task())) {
      things.putIfAbsent(each.thing().key(), each.thing());
      amounts.merge(spot, each.amount(), BigDecimal::add);
      want.sum().ifPresent(told -> sums.computeIfAbsent(spot, any -> new ArrayList<>()).add(told));
    }
  }

  /**
   * What a substitution takes is often what its held task, or one on the way to it, already asks
   * for or has used: it counts once.
   */
  void add(Substitution substitution, Set<String> work) {
    for (Want want : Wants.of(substitution)) {
      resolver
          .of(want)
          .ifPresent(
              each -> {
                String key = each.thing().key();
                BigDecimal rest = each.amount();
                for (String task : work) {
                  rest = rest.subtract(told(new Spot(task, key), rest, want.task()));
                }
                things.putIfAbsent(key, each.thing());
                amounts.merge(new Spot(want.task(), key), rest, BigDecimal::add);
              });
    }
  }

  /** So much of it is told by a task; what was told once is not told again. */
  private BigDecimal told(Spot spot, BigDecimal most, String held) {
    BigDecimal own = asked.getOrDefault(spot, BigDecimal.ZERO);
    BigDecimal used = spot.task().equals(held) ? own : this.used.logged(spot.task(), spot.key());
    BigDecimal before = told.getOrDefault(spot, BigDecimal.ZERO);
    BigDecimal part = own.max(used).subtract(before).max(BigDecimal.ZERO).min(most);
    told.put(spot, before.add(part));
    return part;
  }

  List<Need> needs() {
    List<Need> needs = new ArrayList<>();
    amounts.forEach(
        (spot, amount) -> {
          BigDecimal left = Thing.clean(amount.subtract(used.logged(spot.task(), spot.key())));
          if (left.signum() > 0) {
            needs.add(new Need(spot.task(), spot.key(), left, plan.workableOn(spot.task())));
          }
        });
    return needs;
  }

  /**
   * Of which things work that is not done has used more than it asks for, by task, each a clause
   * after “it is not known”: it asks for too little.
   */
  Map<String, List<String>> beyond() {
    Map<String, List<String>> all = new TreeMap<>();
    amounts.forEach(
        (spot, amount) -> {
          BigDecimal gone = used.logged(spot.task(), spot.key());
          Thing thing = Objects.requireNonNull(things.get(spot.key()));
          if (amount.signum() > 0 && Thing.clean(gone.subtract(amount)).signum() > 0) {
            all.computeIfAbsent(spot.task(), any -> new ArrayList<>())
                .add(
                    "how much more of “"
                        + thing.what()
                        + "” it takes: it has used "
                        + Thing.told(thing.qty(gone))
                        + " and asks for "
                        + Thing.told(thing.qty(amount)));
          }
        });
    return all;
  }

  /** All that is asked for, by key. */
  Map<String, Thing> things() {
    return things;
  }

  List<Wanted> wanted(Netting netting) {
    return netting.covers().stream()
        .map(
            cover ->
                new Wanted(
                    cover.need().task(),
                    Objects.requireNonNull(things.get(cover.need().item())),
                    cover,
                    sums.getOrDefault(
                        new Spot(cover.need().task(), cover.need().item()), List.of())))
        .sorted(
            Comparator.comparing(Wanted::on)
                .thenComparing(Wanted::task)
                .thenComparing(wanted -> wanted.thing().key()))
        .toList();
  }
}
