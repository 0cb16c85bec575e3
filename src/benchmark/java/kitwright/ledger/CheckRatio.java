package kitwright.ledger;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Stream;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;

/**
 * Prints the time of {@code check} as a multiple of the bare parser's over the same bytes: both in
 * turn, in one process, on one thread; medians of the processor time, the collector's included.
 */
public final class CheckRatio {
  private static final int ROUNDS = 7;
  private static final int LARGE_FILE = 20_000_000;

  private CheckRatio() {}

  /** Measures 1,000, 10,000 and 100,000 records, a file of 20 MB, and a ledger on disk. */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("ledger                          MB  findings  events ms  read ms  check ms  ratio");
    for (int size : new int[] {100_000, 1_000, 10_000}) {
      compare(out, size + " records", GeneratedLedger.files(size));
    }
    compare(out, "one file of 20 MB", GeneratedLedger.oneFile(LARGE_FILE));
    Path folder = Files.createTempDirectory("generated-ledger");
    try {
      GeneratedLedger.lay(folder, GeneratedLedger.files(100_000));
      fromDisk(out, folder);
    } finally {
      delete(folder);
    }
  }

  private static void compare(PrintStream out, String name, List<SourceFile> files) {
    double[] events = new double[ROUNDS];
    double[] reads = new double[ROUNDS];
    double[] checks = new double[ROUNDS];
    int found = Reading.check(files).size();
    for (int i = 0; i < ROUNDS; i++) {
      events[i] = millis(() -> Reading.events(files));
      reads[i] = millis(() -> Reading.read(files, new Findings()));
      checks[i] = millis(() -> Reading.check(files));
    }
    double bytes = files.stream().mapToLong(f -> f.text().length()).sum() / 1e6;
    String[] row = {
      String.format(Locale.ROOT, "%-28s %5.1f %9d", name, bytes, found),
      String.format(Locale.ROOT, " %10.0f %8.0f %9.0f", median(events), median(reads), median(checks)),
      String.format(Locale.ROOT, "  %5.2f", median(checks) / median(events))
    };
    out.println(String.join("", row));
  }

  private static void fromDisk(PrintStream out, Path folder) {
    double[] events = new double[ROUNDS];
    double[] checks = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      events[i] = millis(() -> Reading.events(LedgerFolder.at(folder).files(new Findings())));
      checks[i] = millis(() -> checkFolder(folder));
    }
    out.printf(
        Locale.ROOT,
        "100,000 records from 5,000 files on disk: events %.0f ms, check %.0f ms, ratio %.2f%n",
        median(events),
        median(checks),
        median(checks) / median(events));
  }

  private static List<Finding> checkFolder(Path folder) {
    Findings out = new Findings();
    Ledger ledger = LedgerFolder.at(folder).read(out).orElseThrow();
    Check.examine(ledger, GeneratedLedger.TODAY, out);
    return out.inOrder();
  }

  private static double millis(Supplier<?> work) {
    var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    System.gc();
    long before = machine.getProcessCpuTime();
    if (work.get() == null) {
      throw new IllegalStateException("nothing came of it");
    }
    return (machine.getProcessCpuTime() - before) / 1e6;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
