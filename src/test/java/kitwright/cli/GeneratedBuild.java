package kitwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A small build made up from a seed, as a folder: work in every state, parts counted, short,
 * claimed, promised, bought and on their way, substitutions signed well, badly, later and not at
 * all. Every day of the week is worked on, so that working days are days.
 */
final class GeneratedBuild {
  /** A Sunday, so that the week that ends today and the look-ahead begin on the same morning. */
  static final LocalDate TODAY = LocalDate.of(2026, 3, 29);

  /** The day on which its claims went out. */
  static final LocalDate SENT = LocalDate.of(2026, 3, 18);

  static final String METER = "meter";
  private static final int TASKS = 7;
  private static final int ITEMS = 4;

  private final Random random;
  private final StringBuilder yaml = new StringBuilder();
  private final List<String> shortages = new ArrayList<>();

  private GeneratedBuild(Random random) {
    this.random = random;
  }

  static void write(long seed, Path folder) {
    GeneratedBuild build = new GeneratedBuild(new Random(seed));
    try {
      Files.createDirectories(folder.resolve("log"));
      Files.writeString(folder.resolve("ledger.yaml"), build.ledger());
      Files.writeString(folder.resolve("more.yaml"), build.more());
      for (int i = 0; i < 3; i++) {
        LocalDate day = build.around(TODAY.minusDays(7), 4).plusDays(2L * i);
        if (!day.isAfter(TODAY)) {
          Files.writeString(folder.resolve("log/" + day + ".md"), build.log(day));
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private String ledger() {
    line("build: {name: Gen, currency: EUR, started: 2026-02-02, launch: 2026-12-01,");
    line("        week: {days: [mon, tue, wed, thu, fri, sat, sun], hours: 8}}");
    line("parties:");
    line("  - {id: maker, name: Maker, role: supplier}");
    line("  - {id: shop, name: Shop, role: supplier}");
    line("  - {id: office, name: Office, role: designer, may-sign: [finish, systems]}");
    line("  - {id: pal, name: Pal, role: helper}");
    line(
        "budget: [{line: work, title: Work, amount: 1000}, {line: goods, title: Goods, amount: %d}]"
            .formatted(one(3) ? 90 : 900));
    tasks();
    kit();
    deliveries();
    shortages();
    claims();
    spending();
    substitutions();
    borrowed();
    rack();
    return yaml.toString();
  }

  private void tasks() {
    line("tasks:");
    line("  - {id: meter, what: Meter, public: Meter, takes: 10 d, budget: work" + headway() + "}");
    for (int i = 0; i < TASKS; i++) {
      String after = i > 0 && one(2) ? ", after: [t" + random.nextInt(i) + "]" : "";
      String place =
          switch (random.nextInt(4)) {
            case 0, 1 -> ", place: indoors";
            case 2 -> ", place: outdoors, weather: {above: 8 C}";
            default -> "";
          };
      line(
          "  - {id: t%d, what: Task %s, public: Task %s, takes: %d d, uses: [{item: i%d, qty: %d}]%s%s%s}"
              .formatted(
                  i,
                  (char) ('A' + i),
                  (char) ('A' + i),
                  1 + random.nextInt(6),
                  random.nextInt(ITEMS),
                  1 + random.nextInt(3),
                  after,
                  place,
                  one(3) ? headway() : ""));
    }
  }

  private String headway() {
    return switch (random.nextInt(6)) {
      case 0 -> "";
      case 1 -> ", started: " + around(TODAY.minusDays(5), 4);
      case 2 -> ", started: 2026-03-01, progress: " + tenths();
      case 3 -> ", started: 2026-03-01, finished: " + around(TODAY.minusDays(1), 3);
      case 4 -> ", progress: " + tenths();
      default -> ", started: " + around(TODAY, 6);
    };
  }

  private String tenths() {
    return 10 * (1 + random.nextInt(10)) + " %";
  }

  private String log(LocalDate day) {
    String tasks =
        one(2) ? "tasks: {meter: " + tenths() + "}\n" : "tasks: {t1: " + tenths() + "}\n";
    String used =
        one(2)
            ? "used: [{item: i%d, qty: %d}]\n"
                .formatted(random.nextInt(ITEMS), 1 + random.nextInt(2))
            : "";
    return "---\nday: " + day + "\nhours: {office: 1}\n" + tasks + used + "---\n\nWork.\n";
  }

  private void kit() {
    line("kit:");
    IntStream.range(0, ITEMS)
        .forEach(i -> line("  - {id: i%d, what: Item %d, qty: 6, price: 4 EUR}".formatted(i, i)));
  }

  private void deliveries() {
    line("deliveries:");
    line("  - id: d0");
    line("    from: maker");
    line("    received: 2026-02-20");
    line("    counted:");
    for (int i = 0; i < ITEMS; i++) {
      line("      - {item: i%d, qty: %d}".formatted(i, 3 + random.nextInt(4)));
    }
    for (int d = 1; d < 3; d++) {
      String came = one(3) ? "received: " + around(TODAY, 6) + ", " : "";
      line(
          "  - {id: d%d, from: maker, %sexpected: %s, packed: [{item: i%d, qty: %d}]}"
              .formatted(
                  d,
                  came,
                  around(TODAY.plusDays(8), 12),
                  random.nextInt(ITEMS),
                  1 + random.nextInt(2)));
    }
  }

  private void shortages() {
    line("shortages:");
    for (int s = 0; s < 3; s++) {
      LocalDate found = around(TODAY.minusDays(12), 10);
      String decided =
          one(2)
              ? ", decided: {option: %s, on: %s, by: office}"
                  .formatted(one(2) ? "wait" : "buy", around(TODAY.minusDays(1), 3))
              : "";
      line(
          "  - {id: s%d, item: i%d, qty: %d, found: %s, cause: not-packed, options: [{kind: wait, arrives: %s}, {kind: buy, cost: 30, arrives: %s}]%s}"
              .formatted(
                  s,
                  s,
                  1 + random.nextInt(2),
                  found,
                  around(TODAY.plusDays(14), 10),
                  around(TODAY.plusDays(6), 5),
                  decided));
      shortages.add("s" + s);
    }
  }

  private void claims() {
    line("claims:");
    for (int c = 0; c < 2; c++) {
      List<String> events = new ArrayList<>();
      if (one(2)) {
        events.add("{on: %s, what: acknowledged}".formatted(around(TODAY.minusDays(6), 3)));
      }
      for (int i = random.nextInt(3); i > 0; i--) {
        events.add(
            "{on: %s, what: promised, expect: %s}"
                .formatted(around(TODAY.minusDays(2), 4), around(TODAY.plusDays(10), 12)));
      }
      line(
          "  - {id: c%d, against: maker, shortages: [%s], remedy: replacement, sent: %s, reply-by: %s, events: [%s]%s}"
              .formatted(
                  c,
                  one(4)
                      ? "{shortage: %s, settled: [{on: %s, how: refused}]}"
                          .formatted(shortages.get(c), around(TODAY.minusDays(2), 4))
                      : shortages.get(c),
                  SENT,
                  around(TODAY.plusDays(2), 8),
                  String.join(", ", events),
                  one(5) ? ", settled: {on: %s, how: replaced}".formatted(around(TODAY, 4)) : ""));
    }
  }

  private void spending() {
    line("spending:");
    line("  - {id: p0, on: 2026-02-20, line: goods, what: kit, amount: 100, state: paid}");
    line(
        "  - {id: p1, on: %s, line: goods, what: items, amount: 20, state: %s, because: %s%s}"
            .formatted(
                around(TODAY.minusDays(3), 5),
                one(2) ? "paid" : "ordered",
                shortages.get(random.nextInt(shortages.size())),
                one(2) ? ", expected: " + around(TODAY.plusDays(5), 8) : ""));
  }

  private void substitutions() {
    line("substitutions:");
    for (int s = 0; s < 3; s++) {
      String signed =
          switch (random.nextInt(5)) {
            case 0 -> "";
            case 1 -> ", sign-offs: [{by: office, on: 2026-03-20}]";
            case 2 -> ", sign-offs: [{by: pal, on: 2026-03-20}]";
            case 3 -> ", sign-offs: [{by: office, on: " + around(TODAY, 5) + "}]";
            default -> ", sign-offs: [{by: office, on: 2026-03-20, covers: 0123456789ab}]";
          };
      String withdrawn = one(6) ? ", withdrawn: " + around(TODAY, 4) : "";
      line(
          "  - {id: b%d, instead-of: {what: some, qty: 1}, why: here, grade: %s, proposed: {by: pal, on: %s}, hold: t%d%s%s}"
              .formatted(
                  s,
                  one(4) ? "systems" : "finish",
                  around(TODAY.minusDays(10), 5),
                  random.nextInt(TASKS),
                  signed,
                  withdrawn));
    }
  }

  /** Tools that came, went back, are due and overdue. */
  private void borrowed() {
    line("borrowed:");
    for (int l = 0; l < 3; l++) {
      LocalDate due = around(TODAY.plusDays(4), 10);
      String back = one(3) ? ", returned: " + around(TODAY.minusDays(1), 4) : "";
      line(
          "  - {id: l%d, tool: Tool %d, from: pal, on: 2026-02-1%d, due: %s, condition: good, needed-for: [t%d]%s}"
              .formatted(l, l, l, due, random.nextInt(TASKS), back));
    }
  }

  /** Boards and what shall be cut of them: enough, too little, and cut already. */
  private void rack() {
    line("stock:");
    for (int s = 0; s < 2; s++) {
      line(
          "  - {id: k%d, what: Board %d, size: %d x 120 x 20 mm, pieces: %d}"
              .formatted(s, s, 1000 + 200 * random.nextInt(6), 1 + random.nextInt(3)));
    }
    line("cuts:");
    for (int c = 0; c < 2; c++) {
      String done =
          one(3)
              ? ", done: %s, used: [{stock: k%d, pieces: 1}]"
                  .formatted(around(TODAY.minusDays(1), 4), c)
              : "";
      line(
          "  - {id: u%d, task: t%d, from: [k%d], kerf: 3 mm, keep: 200 x 40 mm, parts: [{mark: rib, length: %d mm, width: 50 mm, qty: %d}, {mark: cleat, length: 240 mm, width: 40 mm, qty: %d}]%s}"
              .formatted(
                  c,
                  random.nextInt(TASKS),
                  c,
                  400 + 50 * random.nextInt(5),
                  1 + random.nextInt(8),
                  1 + random.nextInt(6),
                  done));
    }
  }

  private void forecast() {
    line("forecast:");
    for (int d = 0; d < 6; d++) {
      int low = 4 + random.nextInt(8);
      line(
          "  - {day: %s, rain: 0 mm, low: %d C, high: %d C}"
              .formatted(TODAY.plusDays(d), low, low + 4));
    }
  }

  /** A claim for costs, of which something was granted and came back. */
  private String more() {
    yaml.setLength(0);
    forecast();
    String granted = one(2) ? "{on: %s, what: granted, amount: 6}".formatted(around(TODAY, 4)) : "";
    line("claims:");
    line(
        "  - {id: c2, against: maker, shortages: [{shortage: s2, remedy: credit%s}], remedy: credit, costs: [p2], sent: %s, reply-by: %s, events: [%s]}"
            .formatted(
                one(2)
                    ? ", settled: [{on: %s, how: credited%s}]"
                        .formatted(
                            around(TODAY.minusDays(1), 5),
                            one(3) ? "" : one(2) ? ", amount: 5, qty: 1" : ", amount: 5")
                    : "",
                SENT,
                around(TODAY.plusDays(2), 8),
                granted));
    line("spending:");
    line(
        "  - {id: p2, on: 2026-03-16, line: goods, what: calls, amount: 9, state: paid, because:"
            + " s2}");
    if (one(2)) {
      line(
          "  - {id: r2, on: %s, line: goods, what: back, amount: 4, state: refunded, because: s2}"
              .formatted(around(TODAY.minusDays(1), 4)));
    }
    return yaml.toString();
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }

  private LocalDate around(LocalDate middle, int days) {
    return middle.plusDays(random.nextInt(2 * days + 1) - days);
  }

  private void line(String text) {
    yaml.append(text).append('\n');
  }
}
