package kitwright.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import kitwright.cutting.solve.Bar;
import kitwright.cutting.solve.BarCutter;
import kitwright.cutting.solve.BarPart;
import kitwright.cutting.solve.BarTask;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.FirstCut;
import kitwright.cutting.solve.Grain;
import kitwright.cutting.solve.Outcome;
import kitwright.cutting.solve.Panel;
import kitwright.cutting.solve.PanelCutter;
import kitwright.cutting.solve.PanelPart;
import kitwright.cutting.solve.PanelSaw;
import kitwright.cutting.solve.PanelTask;
import kitwright.cutting.solve.Stages;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Plans for a build of several stock lengths and for panels with off-cuts, at the effort a user
 * gets; prints the gap to the bound once for each case. The lists are invented.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx512m")
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 2, time = 1)
public class CuttingBenchmark {
  @Param({"1", "2", "3", "4", "5", "6"})
  int seed;

  private Outcome last = new Outcome(0, 0, false, 0);

  @TearDown
  public void tell() {
    System.out.printf(
        Locale.ROOT,
        "value %d, bound %d, gap %.2f %%, %,d steps%n",
        last.value(),
        last.bound(),
        last.percentAboveBound(),
        last.steps());
  }

  @Benchmark
  public Outcome threeHundredParts() {
    last = BarCutter.plan(lengths(20, 300, 60), Effort.usual()).outcome();
    return last;
  }

  @Benchmark
  public Outcome threeHundredPartsFromTightStock() {
    last = BarCutter.plan(tight(lengths(20, 300, 60)), Effort.usual()).outcome();
    return last;
  }

  @Benchmark
  public Outcome twoThousandParts() {
    last = BarCutter.plan(lengths(60, 2000, 400), Effort.usual()).outcome();
    return last;
  }

  @Benchmark
  public Outcome panels() {
    last = PanelCutter.plan(panelsWanted(), Effort.usual()).outcome();
    return last;
  }

  /** Parts from 0.2 m to 3.2 m out of eight lengths from 2.4 m to 6 m, priced by length. */
  private BarTask lengths(int sizes, int parts, int pieces) {
    Random random = new Random(seed);
    List<BarPart> wanted = new ArrayList<>();
    for (int i = 0; i < sizes; i++) {
      long length = 2_000L + random.nextInt(10_000);
      wanted.add(new BarPart("part " + i, length, parts / sizes, 1, Optional.empty()));
    }
    List<Bar> stock = new ArrayList<>();
    for (int k = 0; k < 8; k++) {
      long length = 24_000L + 36_000L * k / 7 + random.nextInt(500);
      int count = pieces / 8 + (k < pieces % 8 ? 1 : 0);
      stock.add(new Bar("bar " + k, length, count, length, List.of()));
    }
    return new BarTask(wanted, stock, 32, 100, 3_000);
  }

  /** Hardly more stock than is needed (8 %), dearer or cheaper than its length by up to 5 %. */
  private BarTask tight(BarTask task) {
    Random random = new Random(1000 + seed);
    long all = 0;
    List<Bar> stock = new ArrayList<>();
    for (Bar bar : task.stock()) {
      all += (bar.length() - 2 * task.trim() + task.kerf()) * bar.count();
      long value = Math.round(bar.length() * (0.95 + 0.1 * random.nextDouble()));
      stock.add(new Bar(bar.id(), bar.length(), bar.count(), value, List.of()));
    }
    long need = task.parts().stream().mapToLong(p -> (p.length() + task.kerf()) * p.qty()).sum();
    double scale = all / 1.08 / need;
    List<BarPart> parts =
        task.parts().stream()
            .map(
                p -> {
                  long length = Math.round((p.length() + task.kerf()) * scale - task.kerf());
                  return new BarPart(p.mark(), length, p.qty(), 1, Optional.empty());
                })
            .toList();
    return new BarTask(parts, stock, task.kerf(), task.trim(), task.remnant());
  }

  /** Four of each of twelve sizes from sheets and six kinds of off-cut, priced by area. */
  private PanelTask panelsWanted() {
    Random random = new Random(seed);
    List<PanelPart> wanted = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      long length = 2_000L + random.nextInt(10_000);
      long width = 1_000L + random.nextInt(5_000);
      wanted.add(new PanelPart("part " + i, length, width, 4, 1, Grain.ALONG));
    }
    List<Panel> stock = new ArrayList<>();
    stock.add(panel("sheet", 24_400, 12_200, 20));
    for (int k = 0; k < 6; k++) {
      long length = 8_000L + random.nextInt(14_000);
      stock.add(panel("off-cut " + k, length, 4_000L + random.nextInt(7_000), 1));
    }
    PanelSaw saw = new PanelSaw(32, 32, 100, FirstCut.EITHER, Stages.TWO_AND_TRIM);
    return new PanelTask(wanted, stock, saw, 5_000, 3_000);
  }

  private static Panel panel(String id, long length, long width, int count) {
    return new Panel(id, length, width, count, length * width / 100_000, List.of());
  }
}
