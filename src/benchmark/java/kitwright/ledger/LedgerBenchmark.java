package kitwright.ledger;

import java.util.List;
import java.util.concurrent.TimeUnit;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
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

/**
 * The bare parser, the reading, and the whole check over the same texts; {@link CheckRatio} prints
 * the ratio.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 4, time = 3)
@Fork(value = 1, jvmArgs = {"-Xms1g", "-Xmx1g", "-XX:+UseSerialGC"})
public class LedgerBenchmark {
  @Param({"1000", "10000", "100000"})
  int records;

  private List<SourceFile> files = List.of();

  @Setup
  public void write() {
    files = GeneratedLedger.files(records);
  }

  @Benchmark
  public int events() {
    return Reading.events(files);
  }

  @Benchmark
  public Ledger read() {
    return Reading.read(files, new Findings());
  }

  @Benchmark
  public List<Finding> check() {
    return Reading.check(files);
  }
}
