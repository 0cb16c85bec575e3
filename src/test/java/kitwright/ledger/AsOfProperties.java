package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import kitwright.finding.Findings;
import kitwright.value.Place;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/**
 * The view of an earlier day shares what no day cuts and reads the rest from what was written; both
 * together are what reading every file anew with that day gives.
 */
class AsOfProperties {
  private static final Path DEMONSTRATION = Path.of("ledger");
  private static final Pattern DAY = Pattern.compile("2026-0[1-9]-[0-3][0-9]");

  /** The demonstration on every day of the build; its last have nothing to cut. */
  @Test
  void theDemonstrationOnEachDay() {
    List<SourceFile> files = LedgerFolder.at(DEMONSTRATION).files(new Findings());
    LocalDate first = LocalDate.of(2026, 1, 1);
    for (LocalDate day = first; day.isBefore(first.plusDays(100)); day = day.plusDays(3)) {
      assertSame(files, day);
    }
  }

  /** The same with the days of its records moved by chance, but for the build’s and the log’s. */
  @Property(tries = 20)
  void theDemonstrationWithItsDaysShuffled(
      @ForAll Random random, @ForAll @IntRange(min = 0, max = 120) int later) {
    List<SourceFile> files =
        LedgerFolder.at(DEMONSTRATION).files(new Findings()).stream()
            .map(file -> new SourceFile(file.path(), moved(file, random)))
            .toList();
    assertSame(files, LocalDate.of(2026, 1, 1).plusDays(later));
  }

  private static String moved(SourceFile file, Random random) {
    return file.path().startsWith("log/") || file.path().equals("build.yaml")
        ? file.text()
        : DAY.matcher(file.text())
            .replaceAll(day -> LocalDate.of(2026, 1, 1).plusDays(random.nextInt(120)).toString());
  }

  private static void assertSame(List<SourceFile> files, LocalDate day) {
    Ledger ledger =
        LedgerReader.read(files, paths -> Map.of(), new Findings()).orElseThrow().asOf(day);
    Map<Kind, List<Entry>> anew = anew(files, ledger.build().currency(), day);
    for (Kind kind : Kind.values()) {
      if (kind != Kind.BUILD) { // there before it began
        List<Entry> wanted = anew.getOrDefault(kind, List.of());
        assertThat(ledger.entries(kind)).as(kind + " on " + day).isEqualTo(wanted);
        assertThat(values(ledger.entries(kind))).isEqualTo(values(wanted));
      }
    }
  }

  /** What the rules see: places are equal already where the same keys stand at the same spots. */
  private static List<String> values(List<Entry> entries) {
    List<String> all = new ArrayList<>();
    entries.forEach(
        entry ->
            entry.at().each((within, key, value) -> all.add(within + key.name() + "=" + value)));
    return all;
  }

  private static Map<Kind, List<Entry>> anew(
      List<SourceFile> files, Currency currency, LocalDate day) {
    Map<Kind, List<Entry>> all = new LinkedHashMap<>();
    Layouts layouts = new Layouts();
    for (SourceFile file : files) {
      if (file.isMarkdown()) {
        FrontMatter.of(file, new Findings(), unread -> {})
            .ifPresent(
                front -> {
                  List<Node.Entry> entries = new ArrayList<>();
                  front.read(
                      new Recall(),
                      (key, value) -> entries.add(new Node.Entry(key, value)),
                      new Findings());
                  Place at = new Place(file.path(), 1, 1, 1, 4);
                  Node.Mapping mapping = new Node.Mapping(entries, at);
                  read(layouts, Kind.LOG, mapping, front.body(), currency, day, all);
                });
      } else {
        YamlText.read(
            file.path(),
            file.text(),
            new Recall(),
            (key, node) ->
                read(
                    layouts,
                    Kind.of(key.text()).orElseThrow(),
                    (Node.Mapping) node,
                    "",
                    currency,
                    day,
                    all),
            new Findings());
      }
    }
    return all;
  }

  private static void read(
      Layouts layouts,
      Kind kind,
      Node.Mapping mapping,
      String body,
      Currency currency,
      LocalDate day,
      Map<Kind, List<Entry>> all) {
    Keys k =
        Keys.of(
            layouts.of(kind), mapping, kind.word(), currency, new Recall(), new Findings(), day);
    Entry entry = Layouts.read(kind, k, body);
    k.finish();
    if (k.isSound() && !k.isLater()) {
      all.computeIfAbsent(kind, any -> new ArrayList<>()).add(entry);
    }
  }
}
