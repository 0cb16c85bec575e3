package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

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

  private static WorkDay day(String yaml) {
    Facts now = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    return WorkDay.of(Sample.TODAY.plusDays(1), now);
  }
}
