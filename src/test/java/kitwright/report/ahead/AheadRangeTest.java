package kitwright.report.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Simulation;
import kitwright.openmatter.Ends;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

/** A chance never says more than its runs and its durations do. */
class AheadRangeTest {
  private static String told(String launch, String tasks) {
    Facts now =
        Facts.of(
            Sample.ledger(
                "build: {name: S, currency: EUR, started: 2026-01-05, launch: "
                    + launch
                    + "}\ntasks:\n"
                    + tasks),
            Sample.TODAY);
    Outlook plain = Outlook.of(now);
    return Told.words(
        Told.markdown(
            AheadReport.sheet(
                new Outlook(
                    now,
                    plain.last(),
                    Optional.empty(),
                    Optional.of(
                        Simulation.run(
                            Ends.on(now).last().network(),
                            Plan.on(now).calendar(),
                            Plan.on(now).morning(),
                            done -> {}))))));
  }

  private static final String A = "  - {id: a, what: A, takes: [2 d, 4 d, 9 d]}\n";
  private static final String B = "  - {id: b, what: B, takes: 1 d, after: [a]}\n";

  @Test
  void whatHasNoRangeCountsAsSureAndThatIsSaid() {
    assertThat(told("2026-09-26", A)).doesNotContain("The true range is wider");
    assertThat(told("2026-09-26", A + B))
        .contains(
            "The true range is wider: 1 of 2 tasks states no “takes: [low, likely, high]”, and what"
                + " is stated counts as sure.");
    assertThat(told("2026-09-26", A.replace("}", ", place: outdoors, weather: {dry: 1 d}}")))
        .contains(
            "The true range is wider: what is not in the dates above is not in these either.");
  }

  @Test
  void noChanceIsCalledCertain() {
    assertThat(told("2026-09-26", A))
        .contains("Ready by the launch on Sat 26 September 2026: above 99.9 %; the classical")
        .contains("nearly as long, says above 99.9 %.");
    assertThat(told("2026-03-02", A))
        .contains("Ready by the launch on Mon 2 March 2026: below 0.1 %;");
    assertThat(told("2026-03-06", A)).containsPattern("6 March 2026: \\d\\d\\.\\d % ± 0\\.\\d;");
  }
}
