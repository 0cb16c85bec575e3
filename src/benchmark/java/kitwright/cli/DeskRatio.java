package kitwright.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Prints, by the clock and whole processes, medians in milliseconds: a recording word beside {@code
 * check} of the same ledger, a list of 100,000 rows taken twice, and {@code since} beside {@code
 * git log -p} over 500 commits and 2,000 records. Takes the program’s path; {@code
 * target/kitwright} where none is given. Needs git.
 */
public final class DeskRatio {
  private static final int ROUNDS = 7;
  private static final int COMMITS = 500;
  private static final int ROWS = 100_000;
  private static final String DAY = "2026-03-29";

  private final String program;
  private final Path temp;
  private final PrintStream out;

  private DeskRatio(String program, Path temp, PrintStream out) {
    this.program = program;
    this.temp = temp;
    this.out = out;
  }

  /** Measures. */
  public static void main(String[] arguments) throws Exception {
    Path program = Path.of(arguments.length > 0 ? arguments[0] : "target/kitwright");
    DeskRatio ratio =
        new DeskRatio(
            program.toAbsolutePath().toString(),
            Files.createTempDirectory("desk-ratio"),
            new PrintStream(System.out, true, StandardCharsets.UTF_8));
    ratio.recording();
    ratio.importing();
    ratio.comparing();
  }

  private void recording() throws Exception {
    Path ledger = temp.resolve("ledger");
    try (Stream<Path> files = Files.walk(Path.of("ledger"))) {
      for (Path file : files.toList()) {
        Path to = ledger.resolve(Path.of("ledger").relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
    double check = median(i -> run(ledger, program, "check", "--today", DAY));
    double buy =
        median(
            i ->
                run(
                    ledger,
                    program,
                    "buy",
                    "bolts " + i,
                    "3 EUR",
                    "--line",
                    "tools",
                    "--today",
                    DAY));
    out.printf("check %.0f, buy %.0f, ratio %.2f%n", check, buy, buy / check);
  }

  private void importing() throws Exception {
    StringBuilder list = new StringBuilder("id,what,qty,price,crate\n");
    for (int i = 0; i < ROWS; i++) {
      list.append(
          "K%d,\"plank %d, larch\",%d each,%d.40 EUR,C%d\n"
              .formatted(i, i, i % 50 + 1, i % 90, i % 9));
    }
    Path file = Files.writeString(temp.resolve("list.csv"), list);
    double fresh =
        median(i -> run(begun("import-" + i), program, "import", "kit", file.toString()));
    double again =
        median(i -> run(temp.resolve("import-0"), program, "import", "kit", file.toString()));
    out.printf("import of %d rows %.0f, again %.0f%n", ROWS, fresh, again);
  }

  private void comparing() throws Exception {
    Path top = begun("past");
    run(top, "git", "init", "-q");
    LocalDate day = LocalDate.of(2024, 2, 1);
    for (int file = 0; file < 100; file++) {
      kit(top, file, 0);
    }
    commit(top, day);
    for (int n = 1; n <= COMMITS; n++) {
      Files.writeString(
          Files.createDirectories(top.resolve("spending")).resolve("s" + n + ".yaml"),
          "spending: [{id: s%d, on: %s, line: hull, what: bolts, amount: %d, state: paid}]\n"
              .formatted(n, day.plusDays(n), n % 40 + 1));
      kit(top, n % 100, n);
      commit(top, day.plusDays(n));
    }
    double log = median(i -> run(top, "git", "log", "-p", "HEAD~" + COMMITS + "..HEAD"));
    double since = median(i -> run(top, program, "since", day.toString(), "--today", "2025-12-01"));
    out.printf("git log -p %.0f, since %.0f, ratio %.2f%n", log, since, since / log);
  }

  private Path begun(String name) throws IOException {
    Path folder = Files.createDirectories(temp.resolve(name));
    Files.writeString(
        folder.resolve("build.yaml"),
        """
        build: {name: B, currency: EUR, started: 2024-01-05}
        budget: [{line: hull, title: Hull, amount: 90000}]
        """);
    return folder;
  }

  private static void kit(Path top, int file, int version) throws IOException {
    StringBuilder text = new StringBuilder("kit:\n");
    for (int i = 0; i < 15; i++) {
      text.append(
          "  - {id: k%d-%d, what: plank %d v%d, qty: %d}\n".formatted(file, i, i, version, i + 1));
    }
    Files.writeString(
        Files.createDirectories(top.resolve("kit")).resolve("f" + file + ".yaml"), text);
  }

  private static void commit(Path top, LocalDate day) throws Exception {
    run(top, "git", "add", "-A");
    ProcessBuilder git =
        new ProcessBuilder(
                "git",
                "-c",
                "user.name=N",
                "-c",
                "user.email=n@example.org",
                "commit",
                "-qm",
                "step")
            .directory(top.toFile());
    git.environment().put("GIT_COMMITTER_DATE", day + "T12:00:00+0000");
    git.environment().put("GIT_AUTHOR_DATE", day + "T12:00:00+0000");
    git.start().waitFor();
  }

  /** One piece of work; told which round it is. */
  private interface Work {
    double milliseconds(int round) throws Exception;
  }

  private static double median(Work work) throws Exception {
    double[] all = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      all[i] = work.milliseconds(i);
    }
    Arrays.sort(all);
    return all[ROUNDS / 2];
  }

  private static double run(Path folder, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(words));
    long from = System.nanoTime();
    new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start()
        .waitFor();
    return (System.nanoTime() - from) / 1e6;
  }
}
