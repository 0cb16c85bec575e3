package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;
import org.junit.jupiter.api.Test;

/** The way of a new builder: from an empty ledger to a first count, shortage and claim. */
class FirstUseTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  private final Map<String, String> files = new LinkedHashMap<>(Starter.files("Dunlin", TODAY));

  @Test
  void leadsToACleanCheck() throws Misread {
    files.keySet().removeIf(path -> path.contains("example"));
    assertThat(rules()).isEmpty();

    begin(
        Kind.KIT, "keel bolt", Map.of("what", "keel bolt M12", "qty", "12 each", "price", "9.80"));
    begin(
        Kind.DELIVERIES,
        "first",
        Map.of("from", "kit-maker", "counted", "[{item: keel-bolt, qty: 9 each}]"));
    assertThat(rules()).containsExactly("counted-short-unrecorded");

    begin(Kind.SHORTAGES, "bolts", Map.of("item", "keel-bolt", "qty", "3 each"));
    assertThat(rules()).containsExactly("shortage-unclaimed");

    begin(
        Kind.CLAIMS,
        "bolts",
        Map.of(
            "against", "kit-maker", "shortages", "[short-2026-03-02-bolts]", "sent", "2026-03-02"));
    assertThat(rules()).isEmpty();
  }

  private void begin(Kind kind, String about, Map<String, String> values) throws Misread {
    NewFile file = NewRecord.of(kind, about, TODAY, values, id -> false);
    files.put(file.path(), file.text());
  }

  private List<String> rules() {
    Findings out = new Findings();
    List<SourceFile> sources =
        files.entrySet().stream()
            .filter(file -> file.getKey().matches("[^.].*\\.(yaml|md)"))
            .map(file -> new SourceFile(file.getKey(), file.getValue()))
            .toList();
    Ledger ledger = LedgerReader.read(sources, paths -> Map.of(), out).orElseThrow();
    Check.examine(Facts.of(ledger, TODAY), out);
    return out.inOrder().stream().map(Finding::rule).toList();
  }
}
