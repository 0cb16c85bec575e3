package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.OutsideProgram;
import kitwright.cli.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The example of {@code src/docs/many-ledgers.md}, as it stands there, run by SQLite over a
 * thousand generated ledgers and held to a count made beside it.
 */
class ManyLedgersIT {
  private static final int BOATS = 1000;
  private static final List<String> ITEMS = List.of("bolt", "plank", "rail", "rope", "winch");
  private static final Pattern SQL = Pattern.compile("```sql\n(.*?)```", Pattern.DOTALL);

  @TempDir Path folder;

  /** Of one item: in how many ledgers it was missing, and how much of it. */
  private static final class Count {
    private int boats;
    private int missing;
  }

  @Test
  void whichPartsWereMissingInAThousandLedgers() throws Exception {
    OutsideProgram.needed("sqlite3", "sqlite3");
    Map<String, Count> counts = new TreeMap<>();
    StringBuilder lines = new StringBuilder();
    Random random = new Random(5);
    for (int boat = 0; boat < BOATS; boat++) {
      lines.append(exported(boat, random, counts));
    }
    Files.writeString(folder.resolve("shortages.jsonl"), lines);
    String page = Files.readString(Path.of("src/docs/many-ledgers.md"));
    Matcher sql = SQL.matcher(page);
    assertThat(sql.find()).isTrue();
    List<String> wanted = new ArrayList<>();
    counts.entrySet().stream()
        .sorted(Comparator.comparing(each -> -each.getValue().boats))
        .forEach(
            each ->
                wanted.add(
                    each.getKey()
                        + " | "
                        + each.getValue().boats
                        + " | "
                        + each.getValue().missing
                        + " | each"));
    assertThat(sqlite(sql.group(1)).lines()).containsExactlyElementsOf(wanted);
  }

  private String exported(int boat, Random random, Map<String, Count> counts) throws Exception {
    StringBuilder text =
        new StringBuilder(
            "build: {name: \"Boat %d's\", currency: EUR, started: 2026-01-05}%nkit:%n"
                .formatted(boat)
                .replace("\r", ""));
    ITEMS.forEach(item -> text.append("  - {id: ").append(item).append(", what: x, qty: 20}\n"));
    text.append("shortages:\n");
    for (int i = 0; i < ITEMS.size(); i++) {
      if (random.nextInt(ITEMS.size() + 2) <= i) {
        int qty = 1 + random.nextInt(9);
        text.append(
            "  - {id: s%d, item: %s, qty: %d, found: 2026-01-20, cause: damaged}\n"
                .formatted(i, ITEMS.get(i), qty));
        Count count = counts.computeIfAbsent(ITEMS.get(i), any -> new Count());
        count.boats++;
        count.missing += qty;
      }
    }
    Path ledger = Files.createDirectories(folder.resolve("boat-" + boat));
    Files.writeString(ledger.resolve("all.yaml"), text);
    Run run = Run.in(ledger, "export", "shortages", "--format", "jsonl");
    assertThat(run.code()).as(run.err()).isZero();
    return run.out();
  }

  private String sqlite(String script) throws Exception {
    Path file = Files.writeString(folder.resolve("missing.sql"), script);
    Process sqlite =
        new ProcessBuilder("sqlite3", "many.db")
            .directory(folder.toFile())
            .redirectInput(file.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(sqlite.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(sqlite.waitFor()).as(said).isZero();
    return said;
  }
}
