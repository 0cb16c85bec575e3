package kitwright.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A ledger of any size for measuring, the same on every run: twenty records a file on average, in
 * block and flow style, one file in twenty a day of the log. It reads without a fault and its
 * references hold; what its rules find is of the everyday kind.
 */
final class GeneratedLedger {
  /** The day on which it is judged. */
  static final LocalDate TODAY = LocalDate.of(2026, 3, 29);

  private static final int RECORDS_A_FILE = 20;
  private static final int LOG_EVERY = 20;
  private static final int LINES = 12;
  private static final LocalDate START = LocalDate.of(2024, 1, 8);

  private final Random random = new Random(72);
  private int records;

  private GeneratedLedger() {}

  /** The files of a ledger of about so many records. */
  static List<SourceFile> files(int records) {
    return new GeneratedLedger().write(records / RECORDS_A_FILE);
  }

  /** One file of about so many bytes, with the build in it. */
  static List<SourceFile> oneFile(int bytes) {
    GeneratedLedger ledger = new GeneratedLedger();
    StringBuilder all = new StringBuilder(bytes + 500).append(ledger.build().text());
    all.append("spending:\n");
    for (int i = 0; all.length() < bytes; i++) {
      ledger.spend(all, i, i % 7);
    }
    return List.of(new SourceFile("ledger.yaml", all.toString()));
  }

  /** Writes the files below a folder. */
  static void lay(Path folder, List<SourceFile> files) throws IOException {
    for (SourceFile file : files) {
      Path path = folder.resolve(file.path());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.text());
    }
  }

  private List<SourceFile> write(int files) {
    List<SourceFile> all = new ArrayList<>();
    int wanted = files * RECORDS_A_FILE;
    all.add(build());
    for (int i = 1; i < files; i++) {
      if (i % LOG_EVERY == 0) {
        all.add(logDay(i));
      } else {
        int due = wanted * i / files - records;
        all.add(chapter(i, Math.max(2, due - 17)));
      }
    }
    return all;
  }

  private SourceFile build() {
    StringBuilder out = new StringBuilder();
    out.append("build: {name: Generated, currency: EUR, started: 2024-01-08, launch: 2030-09-26}\n");
    out.append("parties:\n");
    out.append("  - {id: kit-maker, name: Redshank Kit Boats, role: supplier}\n");
    out.append("  - {id: nora, name: Nora, role: builder, may-sign: [finish]}\n");
    out.append("  - {id: pell, name: Pell, role: lender}\n");
    out.append("rates:\n  - {on: 2024-01-08, from: NZD, to: EUR, rate: 0.54321}\n");
    out.append("budget:\n");
    for (int i = 0; i < LINES; i++) {
      line(out, "  - {line: line-%d, title: Part %d of the boat, amount: 90000000.00 EUR}%n", i, i);
    }
    records += 5 + LINES;
    return new SourceFile("a-build.yaml", out.toString());
  }

  private SourceFile logDay(int i) {
    records++;
    LocalDate day = START.plusDays(i / LOG_EVERY);
    StringBuilder out = new StringBuilder();
    line(out, "---%nday: %s%nhours: {nora: %d}%n", day, 1 + random.nextInt(9));
    line(out, "tasks: {task-%d-0: 100 %%}%n---%n", i - 1);
    out.append("Planed the strips of the day, then cleaned up.\n");
    return new SourceFile("log/" + day + ".md", out.toString());
  }

  /** Seventeen records that belong together, with a delivery, a shortage and its claim. */
  private SourceFile chapter(int i, int spends) {
    StringBuilder out = new StringBuilder();
    kit(out, i);
    line(out, "deliveries:%n  - id: delivery-%d%n    received: %s%n", i, day(i, 3));
    line(out, "    from: kit-maker%n    note: PL %04d%n    counted:%n", i);
    for (int k = 0; k < 7; k++) {
      line(out, "      - {item: item-%d-%d, qty: %d each}%n", i, k, k == 6 ? 1 : 4 + k);
    }
    line(out, "shortages:%n  - id: short-%d%n    item: item-%d-6%n    qty: 9 each%n", i, i);
    line(out, "    found: %s%n    cause: not-packed%n    options:%n", day(i, 4));
    line(out, "      - {kind: wait, cost: 0 EUR, arrives: %s}%n", day(i, 40));
    line(out, "      - {kind: buy, cost: %d.50 EUR, arrives: %s}%n", 10 + i % 90, day(i, 20));
    line(out, "claims:%n  - id: claim-%d%n    against: kit-maker%n    shortages: [short-%d]%n", i, i);
    line(out, "    sent: %s%n    by: \"registered letter\"%n    remedy: credit%n", day(i, 5));
    line(out, "    settled: {on: %s, how: credited, amount: %d.20 EUR}%n", day(i, 30), 5 + i % 90);
    stock(out, i);
    tasks(out, i);
    line(out, "borrowed:%n  - {id: saw-%d, tool: band saw, from: pell, on: %s, ", i, day(i, 2));
    line(out, "returned: %s, condition: 'sharp, one tooth gone'}%n", day(i, 9));
    out.append("spending:\n");
    for (int k = 0; k < spends; k++) {
      spend(out, i, k);
    }
    records += 17;
    return new SourceFile(
        String.format(Locale.ROOT, "part-%02d/chapter-%05d.yaml", i % 50, i), out.toString());
  }

  private void kit(StringBuilder out, int i) {
    out.append("# what the supplier promised\nkit:\n");
    for (int k = 0; k < 7; k++) {
      line(out, "  - id: item-%d-%d%n    what: frame %d, port side%n", i, k, k);
      line(out, "    qty: %d each%n    crate: C%d%n    price: %d.30 NZD%n", 4 + k, i, 3 + k);
    }
  }

  private static void stock(StringBuilder out, int i) {
    line(out, "stock:%n  - {id: board-%d, what: larch board, ", i);
    line(out, "size: 1850 x 310 x 25 mm, pieces: %d}%n", 1 + i % 3);
    line(out, "  - {id: screws-%d, what: screws 5 x 50, qty: 200 each}%n", i);
  }

  private static void tasks(StringBuilder out, int i) {
    out.append("tasks:\n");
    for (int k = 0; k < 4; k++) {
      line(out, "  - id: task-%d-%d%n    what: Fit frame %d%n    phase: hull%n", i, k, k);
      line(out, "    takes: [1 d, 2 d, 4 d]%n    place: indoors%n");
      if (k > 0) {
        line(out, "    after: [task-%d-%d]%n", i, k - 1);
      }
      line(out, "    uses:%n      - {item: item-%d-%d, qty: 2 each}%n", i, k);
      line(out, "    started: %s%n    finished: %s%n", day(i, 10 + k), day(i, 10 + k));
    }
  }

  private void spend(StringBuilder out, int i, int k) {
    records++;
    line(out, "  - id: spend-%d-%d%n    on: %s%n    line: line-%d%n", i, k, day(i, k), k % LINES);
    line(out, "    what: Epoxy, brushes and gloves from the village%n");
    line(out, "    amount: %d.%02d EUR%n    state: paid%n    to: Chandler%n", i % 300 + 1, k);
  }

  private static LocalDate day(int i, int later) {
    return START.plusDays(i % 700 + later);
  }

  private static void line(StringBuilder out, String form, Object... values) {
    out.append(String.format(Locale.ROOT, form.replace("%n", "\n"), values));
  }
}
