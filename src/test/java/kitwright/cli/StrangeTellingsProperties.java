package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

/**
 * The tellings of builds with several crates of which some came in part, are counted for a day that
 * lies ahead or have no day, orders that are given up, waits between tasks, tasks given up, a
 * calendar of weekdays and a week shut. The same builds on every run.
 */
class StrangeTellingsProperties {
  private final StringBuilder yaml = new StringBuilder();
  private Random random = new Random(0);

  @Property(generation = GenerationMode.EXHAUSTIVE, shrinking = ShrinkingMode.OFF)
  void everyTellingAnswersAlike(@ForAll @IntRange(min = 1, max = 20) int seed) throws IOException {
    assertThat(
            TellingsProperties.contradictions(
                folder -> {
                  GeneratedBuild.write(seed, folder);
                  more(seed, folder);
                }))
        .as("strange build " + seed)
        .isEmpty();
  }

  @Example
  void aCrateThatComesLaterIsNotTickedToday() throws IOException {
    Path folder = Files.createTempDirectory("strange");
    Path file = folder.resolve("ledger.yaml");
    Files.writeString(
        file,
        """
        build: {name: Gen, currency: EUR, started: 2026-02-02}
        parties: [{id: maker, name: Maker, role: supplier}]
        kit: [{id: rail, what: rail, qty: 3}]
        deliveries:
          - {id: d, from: maker, received: 2026-03-31, packed: [{item: rail, qty: 3}],
             counted: [{item: rail, qty: 3}]}
        """);
    try {
      assertThat(sheet(folder, "2026-03-30")).contains("☐ rail").doesNotContain("☑");
      assertThat(sheet(folder, "2026-03-31")).contains("☑ rail");
    } finally {
      Files.delete(file);
      Files.delete(folder);
    }
  }

  private static String sheet(Path folder, String day) {
    return Run.in(folder, "report", "count-sheet", "--out", "-", "--today", day).out();
  }

  private void more(long seed, Path folder) throws IOException {
    random = new Random(seed * 77);
    yaml.setLength(0);
    waits();
    crates();
    orders();
    Files.writeString(folder.resolve("strange.yaml"), yaml);
    calendar(folder.resolve("ledger.yaml"));
  }

  private void waits() {
    yaml.append("tasks:\n");
    for (int i = 0; i < 3; i++) {
      yaml.append("  - {id: w%d, what: Wait %d, public: Wait %d, ".formatted(i, i, i))
          .append("takes: %d d, ".formatted(1 + random.nextInt(4)))
          .append(
              "after: [{task: t%d, lag: %d d}], ".formatted(random.nextInt(7), random.nextInt(5)))
          .append("wait: %d d, ".formatted(1 + random.nextInt(4)))
          .append(
              "uses: [{item: i%d, qty: %d}]".formatted(random.nextInt(4), 1 + random.nextInt(2)))
          .append(one(4) ? ", withdrawn: " + day(-3, 3) : "")
          .append("}\n");
    }
    yaml.append("  - {id: crate, what: Unpack, public: Unpack, takes: 1 d, unpacks: [e0, e1]}\n");
  }

  private void crates() {
    yaml.append("deliveries:\n");
    for (int i = 0; i < 3; i++) {
      boolean came = one(2);
      int qty = 1 + random.nextInt(3);
      yaml.append("  - {id: e%d, from: maker, ".formatted(i))
          .append(came ? "received: " + day(-9, 2) + ", " : "")
          .append(one(4) ? "" : "expected: " + day(-6, 12) + ", ")
          .append("packed: [{item: i%d, qty: %d}]".formatted(i, qty))
          .append(
              came && one(2)
                  ? ", counted: [{item: i%d, qty: %d, damaged: %d}]"
                      .formatted(i, qty, random.nextInt(2))
                  : "")
          .append("}\n");
    }
  }

  private void orders() {
    yaml.append("spending:\n");
    for (int i = 0; i < 3; i++) {
      yaml.append("  - {id: o%d, on: %s, line: goods, what: order, ".formatted(i, day(-12, 1)))
          .append("amount: 12, state: ordered, ")
          .append("item: i%d, qty: %d".formatted(random.nextInt(4), 1 + random.nextInt(3)))
          .append(one(2) ? ", expected: " + day(-4, 9) : "")
          .append(one(3) ? ", withdrawn: " + day(-3, 3) : "")
          .append(one(4) ? ", came: " + day(-2, 3) : "")
          .append("}\n");
    }
    yaml.append("borrowed:\n  - {id: l3, tool: Tool 3, from: pal, on: 2026-02-10, due: ")
        .append(day(-2, 8))
        .append(", condition: good, needed-for: [t1, w0]}\n");
  }

  /** A week shut, and in every other build free weekends. */
  private void calendar(Path file) throws IOException {
    LocalDate first = day(-3, 6);
    String text =
        Files.readString(file)
            .replace(
                "hours: 8}}",
                "hours: 8}, off: [{days: %s..%s, name: Shut}]}"
                    .formatted(first, first.plusDays(random.nextInt(9))));
    Files.writeString(
        file,
        one(2)
            ? text.replace("mon, tue, wed, thu, fri, sat, sun", "mon, tue, wed, thu, fri")
            : text);
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private LocalDate day(int from, int to) {
    return GeneratedBuild.TODAY.plusDays(from + random.nextInt(to - from + 1));
  }
}
