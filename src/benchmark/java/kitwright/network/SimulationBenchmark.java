package kitwright.network;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Ten thousand runs of a thousand three-point tasks with three links each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 4, time = 3)
@Fork(1)
public class SimulationBenchmark {
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 5);
  private static final int SIZE = 1000;

  private final WorkCalendar calendar =
      WorkCalendar.of(
          EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), Duration.ofHours(8), List.of());
  private Network network = Network.of(List.of(), List.of());

  @Setup
  public void draw() {
    Random random = new Random(4);
    List<Activity> tasks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < SIZE; i++) {
      Activity task = Works.of("task-" + i, new Estimate(120, 300 + random.nextInt(400), 1440));
      tasks.add(i % 5 == 0 ? Works.curing(task, Duration.ofHours(18)) : task);
      for (int k = 0; k < 3 && i > 0; k++) {
        int near = Math.max(0, i - 1 - random.nextInt(60));
        links.add(new Link("task-" + near, "task-" + i, 0));
      }
    }
    network = Network.of(tasks, links);
  }

  @Benchmark
  public Range tenThousandRuns() {
    return Simulation.run(network, calendar, TODAY, done -> {});
  }
}
