package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Misread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NewRecordTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  @Test
  void carriesADateAndASlug() throws Misread {
    NewFile file =
        NewRecord.of(Kind.SHORTAGES, "Spruce stave, 24 mm", TODAY, Map.of(), id -> false);
    assertThat(file.path()).isEqualTo("shortages/short-2026-03-02-spruce-stave-24-mm.yaml");
    assertThat(file.text())
        .contains("- id: short-2026-03-02-spruce-stave-24-mm\n")
        .contains("found: 2026-03-02\n");
  }

  @Test
  void namesThingsThatHaveANameByIt() throws Misread {
    assertThat(NewRecord.of(Kind.KIT, "Kølstave É", TODAY, Map.of(), id -> false).path())
        .isEqualTo("kit/kolstave-e.yaml");
  }

  /** What a key means stands in one column, whatever was filled in before it. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void theWordsOnKeysStandInOneColumn(Kind kind) throws Misread {
    NewFile file = NewRecord.of(kind, "keel thing", TODAY, Map.of(), id -> false);
    assertThat(
            file.text()
                .lines()
                .filter(line -> line.matches(" *(- )?[a-z-]+:.*[^ ] {2,}# .*"))
                .map(line -> line.indexOf("# ")))
        .allMatch(column -> column == 32);
  }

  @Test
  void avoidsAnIdThatIsTaken() throws Misread {
    Set<String> taken = Set.of("claim-2026-03-02", "claim-2026-03-02-b");
    assertThat(NewRecord.of(Kind.CLAIMS, "", TODAY, Map.of(), taken::contains).path())
        .isEqualTo("claims/claim-2026-03-02-c.yaml");
  }

  @Test
  void setsTheValuesGivenAndReadsCleanly() throws Misread {
    NewFile file =
        NewRecord.of(
            Kind.SHORTAGES,
            "stave",
            TODAY,
            Map.of(
                "item", "stave", "qty", "2 m", "cause", "damaged", "remark", "split: both # ends"),
            id -> false);
    Ledger ledger = Sample.ledger("kit: [{id: stave, what: stave, qty: 4 m}]\n" + file.text());
    assertThat(ledger.shortages()).hasSize(1);
    assertThat(ledger.shortages().get(0).remark()).contains("split: both # ends");
  }

  @Test
  void offersTheNearestKey() {
    assertThatThrownBy(
            () -> NewRecord.of(Kind.SHORTAGES, "", TODAY, Map.of("itme", "x"), id -> false))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).contains("“item”"));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void lacksNothingButWhatOnlyTheUserKnows(Kind kind) throws Misread {
    NewFile file = NewRecord.of(kind, "sample", TODAY, Map.of(), id -> false);
    Findings faults = new Findings();
    Sample.read(Map.of("other.yaml", BUILD, file.path(), file.text()), faults);
    assertThat(faults.inOrder()).extracting(Finding::rule).isSubsetOf("key-missing", "build-twice");
  }

  private static final String BUILD =
      "build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}\n";
}
