package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * An earlier day is told as it was: what happened later changes no telling of it, whenever it
 * happened. The same made-up builds on every run.
 */
class EarlierDayProperties {
  private static final LocalDate DAY = GeneratedBuild.TODAY.minusDays(4);

  /** Days that have happened, by their keys; plans and promises were known and stay. */
  private static final Pattern HAPPENED =
      Pattern.compile(
          "\\b(received|started|finished|on|found|returned|withdrawn|done|sent):"
              + " (2026-\\d\\d-\\d\\d)");

  private static final List<String> TELLINGS =
      List.of(
          "open",
          "ahead --weeks 60",
          "tomorrow",
          "kit",
          "kit i0 i1 i2 i3",
          "claim",
          "claim c0",
          "claim c2",
          "claim c1 --since",
          "claim c2 --since",
          "options",
          "options s0",
          "budget",
          "cut",
          "cut u0",
          "week",
          "week --audience public",
          "week --ending 2026-03-29",
          "report");

  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void whatHappensLaterChangesNothing(@ForAll @IntRange(min = 1, max = 16) int seed)
      throws IOException {
    assertThat(differences(seed)).as("build " + seed).isEmpty();
  }

  static List<String> differences(long seed) throws IOException {
    Path folder = Files.createTempDirectory("earlier");
    try {
      GeneratedBuild.write(seed, folder);
      List<String> told = told(folder);
      for (Path file : files(folder)) {
        String name = file.getFileName().toString();
        if (name.endsWith(".md")) {
          if (LocalDate.parse(name.substring(0, 10)).isAfter(DAY)) {
            Files.delete(file);
          }
        } else {
          Files.writeString(file, muchLater(Files.readString(file)));
        }
      }
      List<String> again = told(folder);
      List<String> differences = new ArrayList<>();
      for (int i = 0; i < told.size(); i++) {
        if (!told.get(i).equals(again.get(i))) {
          differences.add(TELLINGS.get(i) + ": " + firstDifference(told.get(i), again.get(i)));
        }
      }
      return differences;
    } finally {
      for (Path each : files(folder)) {
        Files.delete(each);
      }
      Files.deleteIfExists(folder.resolve("log"));
      Files.delete(folder);
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted(Comparator.naturalOrder()).toList();
    }
  }

  /** What happened after the day happens a year later. */
  private static String muchLater(String yaml) {
    Matcher day = HAPPENED.matcher(yaml);
    return day.replaceAll(
        each -> {
          LocalDate on = LocalDate.parse(each.group(2));
          return each.group(1) + ": " + (on.isAfter(DAY) ? on.plusYears(1) : on);
        });
  }

  private static List<String> told(Path folder) {
    List<String> all = new ArrayList<>();
    for (String telling : TELLINGS) {
      List<String> words = new ArrayList<>(Arrays.asList(telling.split(" ")));
      words.addAll(List.of("--format", "json", "--today", DAY.toString()));
      all.add(Run.in(folder, words.toArray(String[]::new)).out());
    }
    return all;
  }

  private static String firstDifference(String one, String other) {
    List<String> lines = one.lines().toList();
    List<String> others = other.lines().toList();
    for (int i = 0; i < lines.size() && i < others.size(); i++) {
      if (!lines.get(i).equals(others.get(i))) {
        return lines.get(i).strip() + " against " + others.get(i).strip();
      }
    }
    return lines.size() + " lines against " + others.size();
  }
}
