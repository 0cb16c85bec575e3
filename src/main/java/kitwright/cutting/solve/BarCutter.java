package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Plans which lengths come out of which piece: all parts made, least value of stock, then
 * left-overs as useful as may be. A part that permits joints is still made whole where it can be.
 * Says how far from the best the plan can be at most. The same task and the same number of steps
 * give the same plan everywhere.
 */
public final class BarCutter {
  private final BarTask task;
  private final List<BarKind> all;
  private final List<BarKind> kinds;
  private final Effort effort;
  private long steps;

  private BarCutter(BarTask task, Effort effort) {
    this.task = task;
    this.all = BarKind.of(task);
    this.kinds =
        Shortlist.of(
            all,
            task.parts().size(),
            kind -> (double) kind.value() / kind.longest(),
            (p, kind) -> kind.allows(p) && kind.longest() >= task.parts().get(p).length());
    this.effort = effort;
  }

  /** The best plan that the effort finds. */
  public static BarPlan plan(BarTask task, Effort effort) {
    return new BarCutter(task, effort).plan();
  }

  private BarPlan plan() {
    Set<List<BarOrder>> lists = new BarOrders(task, kinds).worthTrying();
    Effort each = effort.of(effort.steps() / lists.size());
    List<BarPlan> plans = new ArrayList<>();
    for (List<BarOrder> orders : lists) {
      if (!effort.partsAlone() || plans.stream().noneMatch(p -> p.missing().isEmpty())) {
        plans.add(plan(orders, new Work(each)));
      }
    }
    if (kinds.size() < all.size() && plans.stream().noneMatch(p -> p.missing().isEmpty())) {
      Work none = new Work(Effort.steps(0));
      plans.addAll(
          new BarOrders(task, all)
              .worthTrying().stream().map(orders -> finished(firstFit(orders), none)).toList());
    }
    return plans.stream()
        .min(
            Comparator.comparing(this::missingByLevel, Arrays::compare)
                .thenComparing(p -> p.outcome().value())
                .thenComparing(BarCutter::joints))
        .map(best -> withSteps(best, steps))
        .orElseThrow();
  }

  /** A plan laid out, before joints. */
  private record Laid(BarBench bench, BarSolution solution) {}

  private BarPlan plan(List<BarOrder> orders, Work work) {
    BarModel model = new BarModel(task, kinds, orders);
    BarSolution solution = model.solve(work);
    BarBench bench = new BarBench(task, kinds);
    bench.lay(model, solution);
    return finished(new Laid(bench, solution), work);
  }

  /** From all stock, where the search looked at some of it only. */
  private Laid firstFit(List<BarOrder> orders) {
    BarModel model = new BarModel(task, all, orders);
    BarSolution solution = model.firstFitAlone();
    BarBench bench = new BarBench(task, all);
    bench.lay(model, solution);
    return new Laid(bench, solution);
  }

  private BarPlan finished(Laid laid, Work work) {
    BarBench bench = laid.bench();
    BarSolution solution = laid.solution();
    new BarTidy(task.remnant(), task.kerf(), work).improve(bench);
    int[] missing = joined(bench, work);
    boolean looked = kinds.size() == all.size();
    boolean joints = bench.hasJoints();
    boolean made = Arrays.stream(missing).allMatch(n -> n == 0);
    boolean mightJoin = task.parts().stream().anyMatch(p -> p.joint().isPresent());
    boolean most = made || (solution.mostParts() && !mightJoin && looked);
    long value = bench.value();
    long bound = joints || !looked ? materialBound(missing) : solution.bound();
    steps += work.spent();
    Outcome outcome = new Outcome(value, Math.min(bound, value), most, work.spent());
    return new BarPlan(bench.cut(), shortfalls(missing), outcome);
  }

  /** Joins what could not be made whole; what is missing even so, of each part. */
  private int[] joined(BarBench bench, Work work) {
    List<List<Integer>> lacking = bench.takeAwayIncomplete();
    int[] missing = lacking.stream().mapToInt(List::size).toArray();
    for (int p : byPriority()) {
      for (int copy : lacking.get(p)) {
        work.spend(bench.pieces.size());
        if (work.isOver() || !BarJoining.join(task.parts().get(p), p, copy, bench)) {
          break;
        }
        missing[p]--;
      }
    }
    return missing;
  }

  private List<Shortfall> shortfalls(int[] missing) {
    return IntStream.range(0, missing.length)
        .filter(p -> missing[p] > 0)
        .mapToObj(p -> new Shortfall(task.parts().get(p).mark(), missing[p]))
        .toList();
  }

  /** With joints only the material is counted: so much wood is needed however it is parted. */
  private long materialBound(int[] missing) {
    double need = 0;
    for (int p = 0; p < missing.length; p++) {
      BarPart part = task.parts().get(p);
      int pieces = BarSplit.fewest(part, BarOrders.longest(all, p));
      long taking = BarSplit.taking(part, pieces, task.kerf());
      need += (double) taking * (part.qty() - missing[p]);
    }
    return StockBound.of(new long[0], all, task.kerf()).byMaterial(need);
  }

  private List<Integer> byPriority() {
    return IntStream.range(0, task.parts().size())
        .boxed()
        .sorted(Comparator.comparingInt(p -> task.parts().get(p).priority()))
        .toList();
  }

  /** How many parts are missing of each priority, the first first. */
  private int[] missingByLevel(BarPlan plan) {
    Map<String, Integer> level = new HashMap<>();
    task.parts().forEach(part -> level.put(part.mark(), part.priority()));
    TreeMap<Integer, Integer> missing = new TreeMap<>();
    level.values().forEach(priority -> missing.put(priority, 0));
    plan.missing()
        .forEach(s -> missing.merge(level.getOrDefault(s.mark(), 1), s.missing(), Integer::sum));
    return missing.values().stream().mapToInt(n -> n).toArray();
  }

  private static long joints(BarPlan plan) {
    return plan.bars().stream()
        .flatMap(bar -> bar.pieces().stream())
        .filter(piece -> piece.piece() > 1)
        .count();
  }

  private static BarPlan withSteps(BarPlan plan, long steps) {
    Outcome o = plan.outcome();
    return new BarPlan(
        plan.bars(), plan.missing(), new Outcome(o.value(), o.bound(), o.mostParts(), steps));
  }
}
