package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may say that a part is done without. */
class LeavingOutTest {
  private static final String RECORDS =
      """
      parties:
        - {id: office, name: A. Osterlund, role: designer, may-sign: [{grade: structural, since: 2026-02-01}, systems]}
        - {id: bryde, name: T. Bryde, role: engineer, may-sign: [systems]}
        - {id: nora, name: Nora, role: builder, may-sign: [finish]}
      kit: [{id: bolt, what: bolt, qty: 8%s}, {id: eye, what: eye, qty: 2}]
      tasks:
        - {id: t, what: T, takes: 1 d, grade: %s, uses: [{item: %s, qty: 8}]%s}
      shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-05, cause: not-packed, options: [{kind: do-without}]%s}]
      """;

  private static String beyond(String kit, String work, String item, String task, String by) {
    String decided =
        by.isEmpty() ? "" : ", decided: {option: do-without, on: 2026-02-02, by: " + by + "}";
    Ledger ledger = Sample.ledger(RECORDS.formatted(kit, work, item, task, decided));
    return LeavingOut.beyond(ledger.shortages().get(0), ledger)
        .map(grade -> grade.name().toLowerCase(java.util.Locale.ROOT))
        .orElse("free");
  }

  @ParameterizedTest
  @CsvSource({
    "'', structural, bolt, office, free",
    "'', structural, bolt, bryde, structural",
    "'', structural, bolt, nora, structural",
    "'', structural, bolt, '', structural",
    "'', systems, bolt, bryde, free",
    "'', systems, bolt, nora, systems",
    "'', finish, bolt, nora, free",
    "'', finish, bolt, bryde, free", // trim needs nobody's right
    "'', structural, eye, nora, free", // other work
    "', grade: structural', finish, bolt, nora, structural", // the gravest of both
    "', grade: finish', systems, bolt, nora, systems",
    "', grade: systems', structural, bolt, bryde, structural"
  })
  void onlyWhoMaySignForItsGrade(String kit, String work, String item, String by, String told) {
    assertThat(beyond(kit, work, item, "", by)).isEqualTo(told);
  }

  @Test
  void workThatIsGivenUpHoldsNothing() {
    assertThat(beyond("", "structural", "bolt", ", withdrawn: 2026-02-01", "nora"))
        .isEqualTo("free");
  }

  @Test
  void theNamesAreThoseWhoseRightStandsOnTheDay() {
    Ledger ledger = Sample.ledger(RECORDS.formatted("", "finish", "bolt", "", ""));
    LocalDate first = LocalDate.of(2026, 2, 1);
    assertThat(LeavingOut.entitled(Grade.STRUCTURAL, first, ledger))
        .containsExactly("A. Osterlund (office)");
    assertThat(LeavingOut.entitled(Grade.STRUCTURAL, first.minusDays(1), ledger)).isEmpty();
    assertThat(LeavingOut.entitled(Grade.SYSTEMS, first, ledger))
        .containsExactly("A. Osterlund (office)", "T. Bryde (bryde)");
  }
}
