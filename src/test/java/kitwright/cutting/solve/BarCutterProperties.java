package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class BarCutterProperties {
  private static final Effort EFFORT = Effort.steps(3_000_000);

  @Property(tries = 300, seed = "3507")
  void everyPlanCanBeCutAsItStands(@ForAll("tasks") BarTask task) {
    assertThat(BarVerify.faults(task, BarCutter.plan(task, EFFORT))).isEmpty();
  }

  @Property(tries = 300, seed = "3511")
  void aPlanWithJointsCanBeCutAsItStands(@ForAll("jointed") BarTask task) {
    assertThat(BarVerify.faults(task, BarCutter.plan(task, EFFORT))).isEmpty();
  }

  /** The value of the stock left out of it, the same parts come off the saw, and soundly. */
  @Property(tries = 300, seed = "3514")
  void forThePartsAloneNoFewerAreMade(@ForAll("tasks") BarTask task) {
    BarPlan plan = BarCutter.plan(task, EFFORT);
    BarPlan parts = BarCutter.plan(task, Effort.forParts(EFFORT.steps()));
    assertThat(BarVerify.faults(task, parts)).isEmpty();
    if (plan.outcome().mostParts() && parts.outcome().mostParts()) {
      assertThat(count(parts)).isEqualTo(count(plan));
    }
    if (plan.missing().isEmpty()) {
      assertThat(parts.missing()).isEmpty();
    }
  }

  private static int count(BarPlan plan) {
    return plan.missing().stream().mapToInt(Shortfall::missing).sum();
  }

  @Property(tries = 100, seed = "3508")
  void theSameTaskGivesTheSamePlan(@ForAll("tasks") BarTask task) {
    assertThat(BarCutter.plan(task, EFFORT)).isEqualTo(BarCutter.plan(task, EFFORT));
  }

  @Property(tries = 200, seed = "3509")
  void aProvedPlanIsWhatTryingEverythingFinds(@ForAll("smallTasks") BarTask task) {
    BarPlan plan = BarCutter.plan(task, Effort.usual());
    assertThat(BarVerify.faults(task, plan)).isEmpty();
    Optional<Long> least = new EveryBarPlan(task).leastValue();
    if (least.isPresent()) {
      assertThat(plan.missing()).isEmpty();
      assertThat(plan.outcome().value()).isEqualTo(least.get());
      assertThat(plan.outcome().isProvedBest()).isTrue();
    } else {
      assertThat(plan.missing()).isNotEmpty();
    }
  }

  /** Where parts are missing, nobody saws those that are made out of cheaper stock. */
  @Property(tries = 400, seed = "3515")
  void withoutAllPartsItIsTheCheapestWithTheSameParts(@ForAll("smallTasks") BarTask task) {
    BarPlan plan = BarCutter.plan(task, Effort.usual());
    if (plan.missing().isEmpty()) {
      return;
    }
    List<BarPart> made = new ArrayList<>();
    for (BarPart p : task.parts()) {
      int qty = Made.of(p.mark(), p.qty(), plan.missing());
      if (qty > 0) {
        made.add(new BarPart(p.mark(), p.length(), qty, p.priority(), p.joint(), p.from()));
      }
    }
    BarTask same = new BarTask(made, task.stock(), task.kerf(), task.trim(), task.remnant());
    assertThat(new EveryBarPlan(same).leastValue()).contains(plan.outcome().value());
  }

  @Property(tries = 100, seed = "3510")
  void aKerfIsAsGoodAsALongerPartInALongerPlank(@ForAll("sound") BarTask task) {
    long kerf = task.kerf();
    BarTask thick =
        new BarTask(
            task.parts().stream()
                .map(
                    p ->
                        new BarPart(
                            p.mark(), p.length() + kerf, p.qty(), 1, Optional.empty(), p.from()))
                .toList(),
            task.stock().stream()
                .map(b -> new Bar(b.id(), b.length() + kerf, b.count(), b.value(), List.of()))
                .toList(),
            0,
            0,
            1);
    assertThat(BarCutter.plan(thick, EFFORT).outcome().value())
        .isEqualTo(BarCutter.plan(task, EFFORT).outcome().value());
  }

  @Property(tries = 300, seed = "3512")
  void onePieceMoreOfAKindNeverMakesFewerParts(@ForAll("tasks") BarTask task, @ForAll int which) {
    List<Bar> more = new ArrayList<>(task.stock());
    int k = Math.floorMod(which, more.size());
    Bar bar = more.get(k);
    more.set(k, new Bar(bar.id(), bar.length(), bar.count() + 1, bar.value(), bar.defects()));
    assertMakesNoFewer(task, more);
  }

  @Property(tries = 300, seed = "3513")
  void anotherLotLikeOneThatIsThereNeverMakesFewerParts(
      @ForAll("tasks") BarTask task, @ForAll int which) {
    List<Bar> more = new ArrayList<>(task.stock());
    Bar bar = more.get(Math.floorMod(which, more.size()));
    more.add(0, new Bar("more", bar.length(), 1, bar.value(), bar.defects()));
    assertMakesNoFewer(task, more);
  }

  private static void assertMakesNoFewer(BarTask task, List<Bar> more) {
    BarTask richer = new BarTask(task.parts(), more, task.kerf(), task.trim(), task.remnant());
    assertThat(missing(richer)).isLessThanOrEqualTo(missing(task));
  }

  /**
   * Parts missing of priority 1 first; no number of priority 2 here weighs as much as one of them.
   */
  private static long missing(BarTask task) {
    BarPlan plan = BarCutter.plan(task, EFFORT);
    return task.parts().stream()
        .mapToLong(
            part ->
                (part.priority() == 1 ? 1000 : 1)
                    * plan.missing().stream()
                        .filter(s -> s.mark().equals(part.mark()))
                        .mapToLong(Shortfall::missing)
                        .sum())
        .sum();
  }

  @Provide
  Arbitrary<BarTask> tasks() {
    return tasks(12, 30, true, false);
  }

  @Provide
  Arbitrary<BarTask> jointed() {
    return tasks(6, 6, true, true);
  }

  @Provide
  Arbitrary<BarTask> smallTasks() {
    return tasks(3, 2, true, false);
  }

  @Provide
  Arbitrary<BarTask> sound() {
    return tasks(6, 8, false, false);
  }

  private static Arbitrary<BarTask> tasks(int marks, int most, boolean spoilt, boolean jointed) {
    Arbitrary<Optional<Joint>> joint =
        jointed
            ? Arbitraries.longs().between(0, 60).map(l -> new Joint(l, l + 90)).optional(0.4)
            : Arbitraries.just(Optional.empty());
    Arbitrary<BarPart> part =
        Combinators.combine(
                Arbitraries.longs().between(20, jointed ? 1600 : 700),
                Arbitraries.integers().between(1, most),
                Arbitraries.integers().between(1, spoilt ? 2 : 1),
                joint)
            .as((length, qty, priority, j) -> new BarPart("", length, qty, priority, j));
    Arbitrary<List<Span>> defects =
        Combinators.combine(Arbitraries.longs().between(0, 900), Arbitraries.longs().between(1, 80))
            .as((from, wide) -> new Span(from, from + wide))
            .list()
            .ofMaxSize(spoilt ? 2 : 0);
    Arbitrary<Bar> bar =
        Combinators.combine(
                Arbitraries.longs().between(300, 1000),
                Arbitraries.integers().between(0, most),
                Arbitraries.longs().between(0, 60),
                defects)
            .as((length, count, value, bad) -> new Bar("", length, count, value, bad));
    return Combinators.combine(
            part.list().ofMinSize(1).ofMaxSize(marks),
            bar.list().ofMinSize(1).ofMaxSize(3),
            Arbitraries.longs().between(0, 40),
            Arbitraries.longs().between(0, spoilt ? 20 : 0),
            Arbitraries.longs().between(1, 200))
        .as((p, b, kerf, trim, keep) -> new BarTask(marked(p), named(b), kerf, trim, keep));
  }

  private static List<BarPart> marked(List<BarPart> parts) {
    List<BarPart> marked = new ArrayList<>();
    for (BarPart p : parts) {
      // Every fourth may come from the first stock only.
      Set<String> from = p.length() % 4 == 0 ? Set.of("B0") : Set.of();
      marked.add(
          new BarPart("P" + marked.size(), p.length(), p.qty(), p.priority(), p.joint(), from));
    }
    return marked;
  }

  private static List<Bar> named(List<Bar> bars) {
    List<Bar> named = new ArrayList<>();
    for (Bar b : bars) {
      named.add(new Bar("B" + named.size(), b.length(), b.count(), b.value(), b.defects()));
    }
    return named;
  }
}
