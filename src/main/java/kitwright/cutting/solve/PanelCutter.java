package kitwright.cutting.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Plans which parts come out of which panel, as a person cuts them: the panel into strips, or first
 * into blocks; the strips into parts, perhaps a part trimmed. All parts made, least value of stock,
 * fewest widths of the fence, then left-overs as large as may be. Says how far from the least value
 * the plan can be at most. The same task and the same number of steps give the same plan
 * everywhere.
 */
public final class PanelCutter {
  private static final int RESTS_PERCENT = 20;
  private static final long LEAST_FOR_RESTS = 20_000_000;
  private static final int SEARCH_PERCENT = 70;

  /** Of the work where blocks are tried afterwards. */
  private static final int STRIPS_PERCENT = 35;

  private final PanelTask task;
  private final List<PanelKind> all;
  private final List<PanelKind> kinds;
  private final Effort effort;
  private long steps;

  private PanelCutter(PanelTask task, Effort effort) {
    this.task = task;
    this.all = PanelKind.of(task);
    this.kinds =
        Shortlist.of(
            all,
            task.parts().size(),
            kind -> (double) kind.value() / kind.room(task.saw()),
            (p, kind) -> kind.takes(p, task.parts().get(p)));
    this.effort = effort;
  }

  /** The best plan that the effort finds. */
  public static PanelPlan plan(PanelTask task, Effort effort) {
    long forRests = effort.steps() / 100 * RESTS_PERCENT;
    if (forRests < LEAST_FOR_RESTS) {
      return quick(task, effort);
    }
    PanelPlan plan = quick(task, effort.of(effort.steps() - forRests));
    return PanelRests.larger(task, plan, effort.of(forRests));
  }

  /** As good, but with left-overs as they come. */
  static PanelPlan quick(PanelTask task, Effort effort) {
    return new PanelCutter(task, effort).plan();
  }

  private PanelPlan plan() {
    // Blocks hold whatever strips do: for the parts alone one search will do.
    boolean blocks = task.saw().stages() == Stages.THREE_AND_TRIM && !effort.partsAlone();
    PanelModel strips = model(blocks ? Stages.TWO_AND_TRIM : task.saw().stages());
    Solved<List<StripCut>> solved =
        solve(strips, List.of(), blocks ? STRIPS_PERCENT : SEARCH_PERCENT);
    Solved<List<StripCut>> best = solved;
    PanelModel model = strips;
    if (blocks && !isSettled(solved, strips)) {
      model = model(Stages.THREE_AND_TRIM);
      Solved<List<StripCut>> other = solve(model, solved.columns(), SEARCH_PERCENT);
      best = better(solved, other, model);
    }
    PanelSettings settings = new PanelSettings(model, left());
    PanelBench bench = new PanelBench(task, kinds);
    boolean settled = effort.partsAlone() || !model.isSearched();
    bench.lay(model, settled ? best : best.with(settings.fewer(best)));
    boolean asGood = best.value() == solved.value() && best.unmade().equals(solved.unmade());
    boolean proved =
        (solved.missing() == 0 || solved.mostParts()) && solved.value() <= solved.bound();
    PanelPlan plan = plan(bench, best, steps + settings.steps(), asGood && proved);
    return kinds.size() < all.size() ? ofAll(plan) : plan;
  }

  /** Where the search looked at some of the stock only: proved of nothing but by the material. */
  private PanelPlan ofAll(PanelPlan plan) {
    PanelModel model = new PanelModel(task, all, Stages.TWO_AND_TRIM);
    Solved<List<StripCut>> fitted = model.firstFitAlone();
    if (!plan.missing().isEmpty() && fitted.missing() < missing(plan)) {
      PanelBench bench = new PanelBench(task, all);
      bench.lay(model, fitted);
      return plan(bench, fitted, plan.outcome().steps(), false);
    }
    boolean made = plan.missing().isEmpty();
    long bound = made ? Math.min(model.leastValue(), plan.outcome().value()) : 0;
    Outcome outcome = new Outcome(plan.outcome().value(), bound, made, plan.outcome().steps());
    return new PanelPlan(plan.panels(), plan.missing(), plan.settings(), outcome, false);
  }

  private static int missing(PanelPlan plan) {
    return plan.missing().stream().mapToInt(Shortfall::missing).sum();
  }

  private PanelPlan plan(
      PanelBench bench, Solved<List<StripCut>> solved, long spent, boolean bestInStrips) {
    List<CutPanel> panels = bench.cut();
    List<Shortfall> missing = bench.shortfalls();
    boolean most = missing.isEmpty() || solved.mostParts();
    long value = bench.value();
    Outcome outcome = new Outcome(value, Math.min(solved.bound(), value), most, spent);
    return new PanelPlan(panels, missing, bench.settings(), outcome, bestInStrips);
  }

  private PanelModel model(Stages stages) {
    return new PanelModel(task, kinds, stages);
  }

  private Solved<List<StripCut>> solve(
      PanelModel model, List<Column<List<StripCut>>> known, int percent) {
    Work work = new Work(effort.of(left().steps() / 100 * percent));
    Solved<List<StripCut>> solved = model.solve(work, known);
    steps += work.spent();
    return solved;
  }

  private Effort left() {
    return effort.of(Math.max(0, effort.steps() - steps));
  }

  /** Whether no cutting of any kind can do better: all is made, and from no more than must be. */
  private boolean isSettled(Solved<List<StripCut>> solved, PanelModel model) {
    return !model.isSearched() || (solved.missing() == 0 && solved.value() <= model.leastValue());
  }

  /** More parts, the first priority first; then less value. The bound is the wider one's. */
  private Solved<List<StripCut>> better(
      Solved<List<StripCut>> strips, Solved<List<StripCut>> blocks, PanelModel model) {
    int parts = Arrays.compare(model.unmadeByLevel(strips), model.unmadeByLevel(blocks));
    boolean asGood = parts < 0 || (parts == 0 && strips.value() <= blocks.value());
    if (!asGood) {
      return blocks;
    }
    boolean same = parts == 0 && strips.unmade().equals(blocks.unmade());
    return new Solved<>(
        strips.columns(),
        strips.unmade(),
        strips.value(),
        same ? Math.min(strips.value(), blocks.bound()) : 0,
        parts == 0 && blocks.mostParts());
  }
}
