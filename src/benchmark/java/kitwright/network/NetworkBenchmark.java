package kitwright.network;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Three links and five needs a task, one task in five with a cure, a calendar with days off. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class NetworkBenchmark {
  private static final LocalDate TODAY = LocalDate.of(2026, 1, 5);

  @Param({"1000", "10000", "100000"})
  int size;

  private WorkCalendar calendar = fiveDays(List.of());
  private final List<Activity> tasks = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();
  private final List<Supply> supplies = new ArrayList<>();

  @Setup
  public void draw() {
    Random random = new Random(4);
    List<DaysOff> off = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      LocalDate day = TODAY.plusDays(random.nextInt(1500));
      off.add(new DaysOff(day, day.plusDays(random.nextInt(10))));
    }
    calendar = fiveDays(off);
    for (int i = 0; i < size; i++) {
      Activity task = Works.of("task-" + i, new Estimate(120, 480, 1440));
      tasks.add(i % 5 == 0 ? Works.curing(task, Duration.ofHours(18)) : task);
      for (int k = 0; k < 3 && i > 0; k++) {
        int near = Math.max(0, i - 1 - random.nextInt(200));
        links.add(new Link("task-" + near, "task-" + i, 0));
      }
      for (int k = 0; k < 5; k++) {
        String item = "item-" + random.nextInt(size / 5);
        LocalDate on = TODAY.plusDays(random.nextInt(900));
        needs.add(new Need("task-" + i, item, BigDecimal.valueOf(1 + random.nextInt(9)), on));
      }
    }
    for (int i = 0; i < size; i++) {
      BigDecimal amount = BigDecimal.valueOf(random.nextInt(25));
      LocalDate on = TODAY.plusDays(random.nextInt(900));
      supplies.add(Supplies.due("supply-" + i, "item-" + random.nextInt(size / 5), amount, on));
    }
  }

  private static WorkCalendar fiveDays(List<DaysOff> off) {
    return WorkCalendar.of(
        EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), Duration.ofHours(8), off);
  }

  /** From records to dates: sorting, both passes, all floats as dates. */
  @Benchmark
  public List<Planned> passes() {
    return Schedule.of(Network.of(tasks, links), calendar, TODAY).all();
  }

  @Benchmark
  public List<Cover> netting() {
    return Netting.of(needs, supplies, Map.of(), TODAY).covers();
  }

  /** What one look ahead costs. */
  @Benchmark
  public List<Cover> passesAndNetting() {
    List<Planned> planned = passes();
    List<Cover> covers = netting();
    return planned.isEmpty() ? List.of() : covers;
  }
}
