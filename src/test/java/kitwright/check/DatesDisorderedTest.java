package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The earlier day is named by its key, and where that stands. */
class DatesDisorderedTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "substitutions: [{id: s, instead-of: {what: rail, qty: 1}, grade: finish, why: w,"
            + " proposed: {by: nora, on: 2026-02-10}, sign-offs: [{by: nora, on: 2026-02-09}]}]"
            + " | before “on” under “proposed” (10",
        "claims: [{id: c, against: kit-maker, remedy: refund, sent: 2026-02-09, reply-by:"
            + " 2026-02-08}] | before “sent” (9",
        "claims: [{id: c, against: kit-maker, remedy: refund, shortages: [s], sent: 2026-02-01}];"
            + "kit: [{id: k, what: k, qty: 1}];"
            + "shortages: [{id: s, item: k, qty: 1, found: 2026-02-02, cause: damaged}]"
            + " | before “found” of the shortage s (2",
      })
  void isNamedWhereItStands(String yaml, String told) {
    assertThat(Sample.findings(new DatesDisordered(), yaml.replace(";", "\n")))
        .extracting(Finding::what)
        .singleElement()
        .asString()
        .contains(told);
  }
}
