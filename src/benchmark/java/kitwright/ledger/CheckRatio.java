package kitwright.ledger;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import kitwright.finding.Findings;

/**
 * Prints the time of {@code check} as a multiple of the bare parser's over the same bytes: both in
 * turn, in one process, on one thread; medians. The first time is the thread's own processor time;
 * the second, by the clock, has the collector's pauses in it, which the parser alone hardly knows
 * since it keeps nothing.
 */
public final class CheckRatio {
  private static final int ROUNDS = 7;
  private static final int LARGE_FILE = 20_000_000;

  private CheckRatio() {}

  /** What one piece of work took, in milliseconds. */
  private record Cost(double thread, double clock) {
    static Cost of(Supplier<?> work) {
      ThreadMXBean threads = ManagementFactory.getThreadMXBean();
      System.gc();
      long clock = System.nanoTime();
      long thread = threads.getCurrentThreadCpuTime();
      if (work.get() == null) {
        throw new IllegalStateException("nothing came of it");
      }
      thread = threads.getCurrentThreadCpuTime() - thread;
      return new Cost(thread / 1e6, (System.nanoTime() - clock) / 1e6);
    }

    static Cost median(List<Cost> costs) {
      return new Cost(middle(costs, Cost::thread), middle(costs, Cost::clock));
    }

    private static double middle(List<Cost> costs, ToDoubleFunction<Cost> part) {
      return costs.stream().mapToDouble(part).sorted().toArray()[costs.size() / 2];
    }
  }

  /** Measures 1,000, 10,000 and 100,000 records, a file of 20 MB, and a ledger on disk. */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    out.println("                                milliseconds: thread | clock");
    for (int size : new int[] {100_000, 1_000, 10_000, 100_000}) {
      List<SourceFile> files = GeneratedLedger.files(size);
      compare(out, size + " records, " + files.size() + " files", () -> files);
    }
    List<SourceFile> one = GeneratedLedger.oneFile(LARGE_FILE);
    compare(out, "one file of 20 MB", () -> one);
    Path folder = Files.createTempDirectory("generated-ledger");
    try {
      GeneratedLedger.lay(folder, GeneratedLedger.files(100_000));
      compare(out, "100000 records from disk", () -> fromDisk(folder));
    } finally {
      delete(folder);
    }
  }

  private static List<SourceFile> fromDisk(Path folder) {
    return LedgerFolder.at(folder).files(new Findings());
  }

  private static void compare(PrintStream out, String name, Supplier<List<SourceFile>> files) {
    List<Cost> events = new ArrayList<>();
    List<Cost> reads = new ArrayList<>();
    List<Cost> checks = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      events.add(Cost.of(() -> Reading.events(files.get())));
      reads.add(Cost.of(() -> Reading.read(files.get(), new Findings())));
      checks.add(Cost.of(() -> Reading.check(files.get())));
    }
    Cost event = Cost.median(events);
    out.printf("%-29s events %s%n", name, row(event, event));
    out.printf("%-29s read   %s%n", "", row(Cost.median(reads), event));
    out.printf("%-29s check  %s%n", "", row(Cost.median(checks), event));
  }

  private static String row(Cost cost, Cost base) {
    return String.format(
        Locale.ROOT,
        "%6.0f | %6.0f   ratio %5.2f | %5.2f",
        cost.thread,
        cost.clock,
        cost.thread / base.thread,
        cost.clock / base.clock);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
