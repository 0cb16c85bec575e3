package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Cut;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.Loan;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Programs that record one thing after the other are killed without warning, two hundred times, at
 * whatever they do: each file is the old or the new one, and nothing that was said to be recorded
 * is lost.
 */
class KilledWritingIT {
  private static final int TIMES = 100;
  private static final int MOST_MILLIS = 60;

  private static final String LEDGER =
      """
      build: {name: S, currency: EUR, started: 2026-01-05}
      parties:
        - {id: yard, name: Yard, role: supplier}
        - {id: pell, name: Pell, role: lender}
        - {id: me, name: Nora, role: builder, may-sign: [finish]}
      budget: [{line: hull, title: The hull, amount: 900}]
      kit: [{id: bolt, what: bolt, qty: 9}]
      tasks: [{id: glue, what: Glue, takes: 1 d}]
      borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: good}]
      claims: [{id: c1, against: yard, remedy: credit, shortages: []}]
      substitutions:
        - {id: paint, instead-of: {what: the drawn paint, qty: 1 l}, why: here, grade: finish}
      """;

  @TempDir Path temp;

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void whateverIsKilledNoFileIsTornAndNothingLost(int seed) throws Exception {
    Path root = Files.createDirectories(temp.resolve("ledger-" + seed));
    Files.writeString(root.resolve("all.yaml"), LEDGER);
    Random random = new Random(seed);
    Set<Integer> done = new TreeSet<>();
    for (int killed = 1; killed <= TIMES; killed++) {
      Process writer = start(root, done.size());
      try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
        int before = done.size();
        read(said, done);
        assertThat(done.size()).as("the writer itself goes on").isGreaterThan(before);
        Thread.sleep(random.nextInt(MOST_MILLIS));
        writer.toHandle().destroyForcibly(); // not the process: that would close what it said
        read(said, done);
      }
      writer.waitFor();
      holds(root, done, killed);
    }
  }

  private static Process start(Path root, int from) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            WritingForever.class.getName(),
            root.toString(),
            String.valueOf(from))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** What was said to be done: the first is waited for, the rest read as far as it lies there. */
  private static void read(BufferedReader said, Set<Integer> done) throws IOException {
    do {
      String line = said.readLine();
      if (line == null) {
        return;
      }
      if (line.startsWith("done ")) {
        done.add(Integer.valueOf(line.substring(5)));
      }
    } while (said.ready());
  }

  private static void holds(Path root, Set<Integer> done, int killed) throws IOException {
    Findings faults = new Findings();
    Ledger ledger = LedgerFolder.at(root).read(faults).orElseThrow();
    assertThat(faults.inOrder().stream().map(Finding::what)).as("after %d", killed).isEmpty();
    for (int i : done) {
      String id = "x" + i;
      assertThat(
              switch (i % WritingForever.KINDS) {
                case 0 -> ledger.knows(Kind.SPENDING, id);
                case 3 -> ledger.knows(Kind.DELIVERIES, "d" + i);
                case 5 -> ledger.knows(Kind.STOCK, id);
                case 7 -> ledger.knows(Kind.BORROWED, id);
                case 8 -> Files.exists(root.resolve(id + ".txt"));
                case 9 -> isFinished(ledger, id);
                case 10 -> isSettled(ledger, "c" + id);
                case 11 -> ledger.knows(Kind.SPENDING, "r" + id);
                case 12 -> isBack(ledger, id);
                case 13 -> ledger.knows(Kind.ASSESSMENTS, "a" + id);
                case 14 -> isSigned(ledger, id);
                case 15 -> isCut(ledger, id);
                case 18 -> Files.exists(beside(root, "other-" + i).resolve("forecast.yaml"));
                default -> true;
              })
          .as("step %d after %d kills", i, killed)
          .isTrue();
    }
    String first = Files.readString(root.resolve("all.yaml"));
    assertThat(first).contains("- {id: yard, name: Yard, role: supplier}", "id: paint");
    try (Stream<Path> all = Files.walk(root)) {
      List<Path> files = all.filter(Files::isRegularFile).toList();
      for (Path file : files) {
        String name = file.getFileName().toString();
        if (!name.startsWith(".") && !name.endsWith(".csv")) {
          assertThat(Files.readString(file)).as(name).endsWith("\n");
        }
      }
    }
  }

  private static Path beside(Path root, String name) {
    return root.resolveSibling(name + "-of-" + root.getFileName());
  }

  private static boolean isFinished(Ledger ledger, String id) {
    return ledger.<Task>find(Kind.TASKS, id).filter(t -> t.finished().isPresent()).isPresent();
  }

  /** With the letter that went out, and its hash. */
  private static boolean isSettled(Ledger ledger, String id) {
    return ledger
        .<Claim>find(Kind.CLAIMS, id)
        .filter(claim -> claim.sent().isPresent() && claim.settled().isPresent())
        .filter(claim -> claim.letter().stream().allMatch(file -> file.sha256().isPresent()))
        .isPresent();
  }

  private static boolean isBack(Ledger ledger, String id) {
    return ledger.<Loan>find(Kind.BORROWED, id).filter(l -> l.returned().isPresent()).isPresent();
  }

  private static boolean isSigned(Ledger ledger, String id) {
    return ledger
        .<Substitution>find(Kind.SUBSTITUTIONS, id)
        .filter(found -> found.signOffs().size() == 1)
        .isPresent();
  }

  /** Done, and what is left of the board lies on the rack. */
  private static boolean isCut(Ledger ledger, String id) {
    return ledger.<Cut>find(Kind.CUTS, id).filter(cut -> cut.done().isPresent()).isPresent()
        && ledger.stock().stream().anyMatch(stock -> stock.id().startsWith("b" + id + "-" + id));
  }
}
