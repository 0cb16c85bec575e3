package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

class WorkDayTest {
  /** Written today with tomorrow's date: nobody has signed yet. */
  @Test
  void aSignatureDatedTomorrowReleasesNothingTomorrow() {
    String yaml =
        """
        parties: [{id: office, name: Office, role: designer, may-sign: [finish]}]
        tasks: [{id: plane, what: Plane, takes: 1 d}]
        substitutions:
          - {id: thin, instead-of: {what: some, qty: 1}, why: here, grade: finish, hold: plane,
             proposed: {by: office, on: 2026-02-24}, sign-offs: [{by: office, on: %s}]}
        """;
    assertThat(day(yaml.formatted(Sample.TODAY.plusDays(1))).ready()).isEmpty();
    assertThat(day(yaml.formatted(Sample.TODAY)).ready()).hasSize(1);
  }

  @Test
  void aForecastThatContradictsItselfForetellsNothing() {
    String row = "forecast: [{day: 2026-03-03, rain: 0 mm, low: %s, high: 12}]\n";
    assertThat(day(row.formatted("9")).forecast()).isPresent();
    assertThat(day(row.formatted("19")).forecast()).isEmpty();
  }

  /** Sample's today is a Monday; on Friday the next working day is Monday, a day off is none. */
  @Test
  void theNextWorkingDayIsNotToday() {
    Facts friday = Facts.of(Sample.ledger(""), Sample.TODAY.plusDays(4));
    assertThat(WorkDay.after(friday)).isEqualTo(Sample.TODAY.plusDays(7));
    String off =
        "build: {name: S, currency: EUR, started: 2026-01-05, off: [{days: 2026-03-03, name:"
            + " fair}]}\n";
    assertThat(WorkDay.after(Facts.of(Sample.ledger(off), Sample.TODAY)))
        .isEqualTo(Sample.TODAY.plusDays(2));
    assertThat(day("").day()).isEqualTo(Sample.TODAY.plusDays(1));
  }

  /** One that is needed longer than it may stay is a matter to act on, told once. */
  @Test
  void aToolThatIsDueIsToldOnce() {
    String saw =
        """
        tasks: [{id: t, what: T, takes: 9 d, tools: [%s]}]
        borrowed:
          - {id: saw, tool: band saw, from: pell, on: 2026-02-01, condition: fine, due: 2026-03-0%d}
          - {id: jig, tool: jig, from: pell, on: 2026-02-01, condition: fine, due: 2026-03-03, returned: 2026-02-20}
        """;
    assertThat(due(saw.formatted("", 3))).containsExactly("due saw");
    assertThat(due(saw.formatted("saw", 3))).containsExactly("act loan saw");
    assertThat(due(saw.formatted("", 4))).isEmpty();
  }

  private static List<String> due(String yaml) {
    List<String> all = new ArrayList<>();
    day(yaml).acts().forEach(act -> all.add("act " + act.record()));
    day(yaml).due().forEach(loan -> all.add("due " + loan.loan().id()));
    return all;
  }

  private static WorkDay day(String yaml) {
    Facts now = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    return WorkDay.of(Sample.TODAY.plusDays(1), now);
  }
}
