package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demonstration with values of its records exchanged for those of others and for numbers that
 * cannot be, from fixed seeds: no command breaks inside, whatever it then has to tell.
 */
class ExchangedValuesTest {
  private static final int ROUNDS = 5;

  /** A plain value behind its key. */
  private static final Pattern VALUE =
      Pattern.compile("(?<=[a-z]: )([^,{}\\[\\]\\n#]+)(?=[,}\\n])");

  private static final List<String> ODD =
      List.of(
          "0", "-1", "99999999999999999", "1 mm", "1e9 m", "0.0001", "x", "2026-02-30", "9999 d");

  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("check", "--fail-on", "never"),
          List.of("check", "--all", "--fail-on", "never"),
          List.of("report", "--out", "-"),
          List.of("cut"),
          List.of("cut", "hatch-coamings"),
          List.of("assess"),
          List.of("assess", "--remedy"),
          List.of("assess", "--scatter"),
          List.of("claim", "claim-2026-03-23"),
          List.of("claim", "claim-2026-01-26", "--reminder"),
          List.of("ahead"),
          List.of("open"),
          List.of("tomorrow"),
          List.of("week"),
          List.of("kit"),
          List.of("budget"),
          List.of("options"),
          List.of("options", "short-2026-03-20-portlight"));

  @TempDir private Path folder;

  @Test
  void noExchangeOfValuesBreaksACommand() throws IOException {
    List<String> broken = new ArrayList<>();
    for (int seed = 0; seed < ROUNDS; seed++) {
      broken.addAll(broken(seed, folder.resolve("round" + seed)));
    }
    assertThat(broken).isEmpty();
  }

  /** What broke inside, with its seed. */
  static List<String> broken(int seed, Path ledger) throws IOException {
    copy(ledger);
    exchange(ledger, new Random(seed));
    List<String> broken = new ArrayList<>();
    for (List<String> words : COMMANDS) {
      List<String> all = new ArrayList<>(words);
      all.addAll(List.of("--today", "2026-03-29"));
      Run run = Run.in(ledger, all.toArray(String[]::new));
      for (String line : run.all().lines().toList()) {
        if (line.contains("A fault of the program")
            || line.contains("breaks inside")
            || line.contains("cannot be worked out (")) {
          broken.add("seed " + seed + ", " + words.get(0) + ": " + line.strip());
        }
      }
    }
    return broken;
  }

  private static void copy(Path to) throws IOException {
    Path from = Path.of("ledger");
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.sorted(Comparator.naturalOrder()).toList()) {
        Path there = to.resolve(from.relativize(each).toString());
        if (Files.isDirectory(each)) {
          Files.createDirectories(there);
        } else if (each.toString().endsWith(".yaml") || each.toString().endsWith(".md")) {
          Files.copy(each, there);
        }
      }
    }
  }

  private static void exchange(Path ledger, Random random) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(ledger)) {
      files = all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
    List<String> values = new ArrayList<>(ODD);
    for (Path file : files) {
      Matcher value = VALUE.matcher(Files.readString(file));
      while (value.find()) {
        values.add(value.group(1));
      }
    }
    for (Path file : files) {
      Matcher value = VALUE.matcher(Files.readString(file));
      StringBuilder text = new StringBuilder();
      while (value.find()) {
        boolean changed = random.nextInt(30) == 0;
        String other =
            random.nextInt(3) == 0
                ? ODD.get(random.nextInt(ODD.size()))
                : values.get(random.nextInt(values.size()));
        value.appendReplacement(text, Matcher.quoteReplacement(changed ? other : value.group(1)));
      }
      Files.writeString(file, value.appendTail(text).toString());
    }
  }
}
