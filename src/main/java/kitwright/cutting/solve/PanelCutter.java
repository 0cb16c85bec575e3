package kitwright.cutting.solve;

import java.util.List;

/**
 * Plans which parts come out of which panel, as a person cuts them: the panel into strips, the
 * strips into parts, perhaps a part trimmed. All parts made, least value of stock, fewest widths of
 * the fence, then left-overs as large as may be. Says how far from the least value the plan can be
 * at most. The same task and the same number of steps give the same plan everywhere.
 */
public final class PanelCutter {
  private static final int SEARCH_PERCENT = 70;

  private PanelCutter() {}

  /** The best plan that the effort finds. */
  public static PanelPlan plan(PanelTask task, Effort effort) {
    List<PanelKind> kinds = PanelKind.of(task);
    PanelModel model = new PanelModel(task, kinds);
    long forSearch = effort.steps() / 100 * SEARCH_PERCENT;
    Work work = new Work(new Effort(forSearch, effort.enough()));
    Solved<List<StripCut>> solved = model.solve(work);
    PanelSettings settings =
        new PanelSettings(model, new Effort(effort.steps() - forSearch, effort.enough()));
    Solved<List<StripCut>> tidy = model.isSearched() ? solved.with(settings.fewer(solved)) : solved;
    PanelBench bench = new PanelBench(task, kinds);
    bench.lay(model, tidy);
    List<CutPanel> panels = bench.cut();
    List<Shortfall> missing = bench.shortfalls();
    boolean most = missing.isEmpty() || solved.mostParts();
    long value = bench.value();
    long bound = Math.min(solved.bound(), value);
    Outcome outcome = new Outcome(value, bound, most, work.spent() + settings.steps());
    return new PanelPlan(panels, missing, bench.settings(), outcome);
  }
}
