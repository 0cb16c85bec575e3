package kitwright.loan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a borrowed tool is, when it is due, and what borrowing saved. */
class LoanStandingTest {
  private static LoanStanding loan(String more, String today) {
    String yaml =
        "borrowed: [{id: planer, tool: planer, from: pell, on: 2026-02-01, condition: good%s}]"
            .formatted(more);
    return LoanStanding.on(Facts.of(Sample.ledger(yaml), LocalDate.parse(today))).get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-27, WITH_US, 1",
    "2026-02-28, WITH_US, 0", // due today is not late
    "2026-03-01, OVERDUE, -1"
  })
  void aToolIsLateFromTheDayAfterItWasDue(String today, String state, long left) {
    LoanStanding standing = loan(", due: 2026-02-28", today);
    assertThat(standing.state()).hasToString(state);
    assertThat(standing.daysLeft()).contains(left);
  }

  @Test
  void aToolThatWentBackIsNeverLate() {
    LoanStanding standing = loan(", due: 2026-02-28, returned: 2026-03-01", "2026-03-15");
    assertThat(standing.state()).isEqualTo(LoanStanding.State.RETURNED);
    assertThat(standing.daysLeft()).isEmpty();
    assertThat(loan(", due: 2026-02-28, returned: 2026-03-10", "2026-03-05").state())
        .isEqualTo(LoanStanding.State.OVERDUE);
  }

  @ParameterizedTest
  @CsvSource({
    "24 EUR/d, 10, 240.00 EUR",
    "24 EUR, 10, 240.00 EUR", // a bare rate is for a day
    "70 EUR/w, 10, 100.00 EUR", // ten sevenths of a week
    "3 EUR/h, 2, 48.00 EUR", // eight hours to the usual day
  })
  void savingIsTheHireForTheDaysKept(String rate, int days, String saved) {
    LoanStanding standing =
        loan(
            ", hire-rate: %s, returned: %s"
                .formatted(rate, LocalDate.of(2026, 2, 1).plusDays(days - 1L)),
            "2026-03-15");
    assertThat(standing.daysKept()).isEqualTo(days);
    assertThat(standing.saved()).hasToString("Optional[" + saved + "]");
  }

  @Test
  void aToolBorrowedLaterIsNotThereYet() {
    assertThat(
            LoanStanding.on(
                Facts.of(
                    Sample.ledger(
                        "borrowed: [{id: planer, tool: planer, from: pell, on: 2026-02-01,"
                            + " condition: good}]"),
                    LocalDate.of(2026, 1, 31))))
        .isEqualTo(List.of());
  }

  private static String savedBy(String more) {
    return loan(", hire-rate: " + more, "2026-03-15").saved().map(Object::toString).orElse("none");
  }

  @Test
  void whatIsKeptLongerThanAgreedSavesNothingMore() {
    assertThat(savedBy("24 EUR/d, due: 2026-02-05, returned: 2026-02-10")).isEqualTo("120.00 EUR");
    assertThat(savedBy("24 EUR/d, due: 2026-02-10, returned: 2026-02-03")).isEqualTo("72.00 EUR");
  }

  @Test
  void aRateThatIsNotForTimeSavesNothing() {
    assertThat(savedBy("24 EUR/kg, returned: 2026-02-10")).isEqualTo("none");
  }
}
