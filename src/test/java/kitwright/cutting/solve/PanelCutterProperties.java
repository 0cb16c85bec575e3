package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class PanelCutterProperties {
  private static final Effort EFFORT = Effort.steps(2_000_000);

  @Property(tries = 300, seed = "4507")
  void everyPlanCanBeCutAsItStands(@ForAll("tasks") PanelTask task) {
    assertThat(PanelVerify.faults(task, PanelCutter.plan(task, EFFORT))).isEmpty();
  }

  /** The value of the stock left out of it, the same parts come off the saw, and soundly. */
  @Property(tries = 300, seed = "4512")
  void forThePartsAloneNoFewerAreMade(@ForAll("tasks") PanelTask task) {
    PanelPlan plan = PanelCutter.plan(task, EFFORT);
    PanelPlan parts = PanelCutter.plan(task, Effort.forParts(EFFORT.steps()));
    assertThat(PanelVerify.faults(task, parts)).isEmpty();
    if (plan.outcome().mostParts() && parts.outcome().mostParts()) {
      assertThat(parts.missing()).isEqualTo(plan.missing());
    }
    if (plan.missing().isEmpty()) {
      assertThat(parts.missing()).isEmpty();
    }
  }

  @Property(tries = 60, seed = "4508")
  void theSameTaskGivesTheSamePlan(@ForAll("tasks") PanelTask task) {
    assertThat(PanelCutter.plan(task, EFFORT)).isEqualTo(PanelCutter.plan(task, EFFORT));
  }

  @Property(tries = 150, seed = "4509")
  void aProvedPlanIsWhatTryingEverythingFinds(@ForAll("smallTasks") PanelTask task) {
    PanelPlan plan = PanelCutter.plan(task, Effort.steps(20_000_000));
    assertThat(PanelVerify.faults(task, plan)).isEmpty();
    Optional<Long> least = new EveryPanelPlan(task).leastValue();
    if (plan.missing().isEmpty()) {
      assertThat(least.isPresent() || task.saw().stages() == Stages.THREE_AND_TRIM).isTrue();
      assertThat(plan.outcome().bound()).isLessThanOrEqualTo(least.orElse(Long.MAX_VALUE));
      if (task.saw().stages() != Stages.THREE_AND_TRIM) {
        assertThat(plan.outcome().value()).isGreaterThanOrEqualTo(least.get());
      }
    } else if (plan.outcome().mostParts()) {
      assertThat(least).isEmpty();
    }
  }

  /** Where parts are missing, nobody saws those that are made out of cheaper stock in strips. */
  @Property(tries = 300, seed = "4513")
  void withoutAllPartsItIsNoDearerThanAnyPlanInStripsOfTheSameParts(
      @ForAll("smallTasks") PanelTask task) {
    PanelPlan plan = PanelCutter.plan(task, Effort.steps(20_000_000));
    if (plan.missing().isEmpty()) {
      return;
    }
    List<PanelPart> made = new ArrayList<>();
    for (PanelPart p : task.parts()) {
      int qty = Made.of(p.mark(), p.qty(), plan.missing());
      if (qty > 0) {
        made.add(
            new PanelPart(p.mark(), p.length(), p.width(), qty, p.priority(), p.grain(), p.on()));
      }
    }
    PanelTask same =
        new PanelTask(made, task.stock(), task.saw(), task.remnantLong(), task.remnantShort());
    assertThat(plan.outcome().value())
        .isLessThanOrEqualTo(new EveryPanelPlan(same).leastValue().orElse(Long.MAX_VALUE));
  }

  @Property(tries = 200, seed = "4510")
  void onePanelMoreOfAKindNeverMakesFewerParts(@ForAll("tasks") PanelTask task, @ForAll int which) {
    List<Panel> more = new ArrayList<>(task.stock());
    int k = Math.floorMod(which, more.size());
    Panel p = more.get(k);
    more.set(k, new Panel(p.id(), p.length(), p.width(), p.count() + 1, p.value(), p.spoilt()));
    assertMakesNoFewer(task, more);
  }

  @Property(tries = 200, seed = "4511")
  void anotherLotLikeOneThatIsThereNeverMakesFewerParts(
      @ForAll("tasks") PanelTask task, @ForAll int which) {
    List<Panel> more = new ArrayList<>(task.stock());
    Panel p = more.get(Math.floorMod(which, more.size()));
    more.add(0, new Panel("more", p.length(), p.width(), 1, p.value(), p.spoilt()));
    assertMakesNoFewer(task, more);
  }

  private static void assertMakesNoFewer(PanelTask task, List<Panel> more) {
    PanelTask richer =
        new PanelTask(task.parts(), more, task.saw(), task.remnantLong(), task.remnantShort());
    assertThat(missing(richer)).isLessThanOrEqualTo(missing(task));
  }

  /**
   * Parts missing of priority 1 first; no number of priority 2 here weighs as much as one of them.
   */
  private static long missing(PanelTask task) {
    PanelPlan plan = PanelCutter.plan(task, EFFORT);
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
  Arbitrary<PanelTask> tasks() {
    return tasks(8, 12);
  }

  @Provide
  Arbitrary<PanelTask> smallTasks() {
    return tasks(3, 2);
  }

  private static Arbitrary<PanelTask> tasks(int marks, int most) {
    Arbitrary<PanelPart> part =
        Combinators.combine(
                Arbitraries.longs().between(40, 600),
                Arbitraries.longs().between(40, 400),
                Arbitraries.integers().between(1, most),
                Arbitraries.integers().between(1, 2),
                Arbitraries.of(Grain.class))
            .as(
                (length, width, qty, first, grain) ->
                    new PanelPart("", length, width, qty, first, grain));
    Arbitrary<List<Spoilt>> spoilt =
        Combinators.combine(
                Arbitraries.of(Run.class),
                Arbitraries.longs().between(0, 500),
                Arbitraries.longs().between(1, 60))
            .as((run, from, wide) -> new Spoilt(run, new Span(from, from + wide)))
            .list()
            .ofMaxSize(2);
    Arbitrary<Panel> panel =
        Combinators.combine(
                Arbitraries.longs().between(200, 1000),
                Arbitraries.longs().between(200, 700),
                Arbitraries.integers().between(0, most),
                Arbitraries.longs().between(0, 60),
                spoilt)
            .as(
                (length, width, count, value, bad) ->
                    new Panel("", length, width, count, value, bad));
    Arbitrary<PanelSaw> saw =
        Combinators.combine(
                Arbitraries.longs().between(0, 30),
                Arbitraries.longs().between(0, 30),
                Arbitraries.longs().between(0, 20),
                Arbitraries.of(FirstCut.class),
                Arbitraries.of(Stages.class))
            .as(PanelSaw::new);
    return Combinators.combine(
            part.list().ofMinSize(1).ofMaxSize(marks), panel.list().ofMinSize(1).ofMaxSize(2), saw)
        .as((parts, panels, s) -> new PanelTask(marked(parts), named(panels), s, 100, 50));
  }

  private static List<PanelPart> marked(List<PanelPart> parts) {
    List<PanelPart> marked = new ArrayList<>();
    for (PanelPart p : parts) {
      String mark = "P" + marked.size();
      // Some may come from the first stock only, or lie otherwise on the second.
      Map<String, Grain> on =
          p.length() % 4 == 0
              ? Map.of("B0", p.grain())
              : p.length() % 4 == 1 ? Map.of("B0", Grain.ALONG, "B1", Grain.ACROSS) : Map.of();
      marked.add(new PanelPart(mark, p.length(), p.width(), p.qty(), p.priority(), p.grain(), on));
    }
    return marked;
  }

  private static List<Panel> named(List<Panel> panels) {
    List<Panel> named = new ArrayList<>();
    for (Panel p : panels) {
      String id = "B" + named.size();
      named.add(new Panel(id, p.length(), p.width(), p.count(), p.value(), p.spoilt()));
    }
    return named;
  }
}
