package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * Files of the demonstration with bytes changed, cut out, doubled and moved, from fixed seeds.
 * Whatever comes of it is read and judged to the end, and every fault has a place in the file.
 */
class LedgerFuzzTest {
  private static final int ROUNDS = 2000;

  /** Bytes that mean something to YAML, and some that are no text. */
  private static final byte[] NASTY =
      ":-#,[]{}&*!|>'\"%@`~?\t\r\n 0x\u0000\u0007".getBytes(StandardCharsets.ISO_8859_1);

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void noChangeOfBytesBreaksTheReading() throws IOException {
    List<SourceFile> files = demonstration();
    int faulty = 0;
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      SourceFile chosen = files.get(random.nextInt(files.size()));
      SourceFile changed = new SourceFile(chosen.path(), mutated(chosen.text(), random));
      Findings faults = new Findings();
      try {
        examine(changed, faults);
      } catch (RuntimeException | StackOverflowError broken) {
        fail("seed " + seed + " of " + chosen.path() + " broke the reading", broken);
      }
      String about = "seed " + seed;
      faulty += faults.inOrder().isEmpty() ? 0 : 1;
      assertThat(faults.inOrder()).allSatisfy(fault -> assertPlaced(about, fault, changed));
      assertThat(faults.inOrder())
          .as(about)
          .extracting(Finding::rule)
          .doesNotContain("rule-broken");
    }
    assertThat(faulty).as("rounds that hit something").isGreaterThan(ROUNDS / 2);
  }

  private static void examine(SourceFile changed, Findings faults) {
    SourceFile build =
        new SourceFile("0.yaml", "build: {name: Wherry, currency: EUR, started: 2026-01-05}\n");
    LedgerReader.read(List.of(build, changed), paths -> Map.of(), faults)
        .ifPresent(ledger -> Check.examine(Facts.of(ledger, Sample.TODAY), faults));
  }

  private static void assertPlaced(String seed, Finding fault, SourceFile file) {
    assertThat(fault.mend()).as(seed).isNotBlank();
    if (fault.at().file().equals(file.path()) && !fault.at().isWholeFile()) {
      int lines = file.text().split("\r\n|\r|\n", -1).length;
      assertThat(fault.at().line()).as(seed + ": " + fault).isBetween(1, lines + 1);
      assertThat(fault.at().column()).as(seed).isPositive();
    }
  }

  private static String mutated(String text, Random random) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    StringBuilder out = new StringBuilder(new String(bytes, StandardCharsets.ISO_8859_1));
    for (int changes = 1 + random.nextInt(4); changes > 0 && out.length() > 20; changes--) {
      int at = random.nextInt(out.length());
      int end = Math.min(out.length(), at + 1 + random.nextInt(12));
      switch (random.nextInt(5)) {
        case 0 -> out.setCharAt(at, (char) (NASTY[random.nextInt(NASTY.length)] & 0xff));
        case 1 -> out.insert(at, (char) (NASTY[random.nextInt(NASTY.length)] & 0xff));
        case 2 -> out.delete(at, end);
        case 3 -> out.insert(at, out.substring(at, end).repeat(1 + random.nextInt(40)));
        default -> out.setCharAt(at, (char) random.nextInt(256));
      }
    }
    // Bytes that are no UTF-8 are told of before this; here they become replacement characters.
    return new String(out.toString().getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
  }

  private static List<SourceFile> demonstration() throws IOException {
    Path root = Path.of("ledger");
    try (Stream<Path> all = Files.walk(root)) {
      List<Path> paths =
          all.filter(path -> path.toString().matches(".*\\.(yaml|md)")).sorted().toList();
      assertThat(paths).hasSizeGreaterThan(50);
      List<SourceFile> files = new java.util.ArrayList<>();
      for (Path path : paths) {
        files.add(new SourceFile(root.relativize(path).toString(), Files.readString(path)));
      }
      return files;
    }
  }
}
