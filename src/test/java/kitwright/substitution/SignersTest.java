package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whom to ask is decided as the signature will be judged. */
class SignersTest {
  @ParameterizedTest(name = "{0} proposed by {1}: {2}")
  @CsvSource({
    "finish, nora, A. Osterlund or Nora",
    "finish, office, A. Osterlund or Nora",
    "structural, nora, A. Osterlund",
    "structural, office, somebody entitled (no party of the ledger is)",
    "systems, office, A. Osterlund"
  })
  void aProposerIsPassedOverOnlyWhereTheWorkIsStructural(String grade, String by, String names) {
    SubstitutionStanding standing =
        SubstitutionStandings.on(
                Facts.of(
                    Sample.ledger(
                        """
                        substitutions:
                          - {id: s, instead-of: {what: a board, qty: 1}, grade: %s, why: none at hand, proposed: {by: %s, on: 2026-02-01}}
                        """
                            .formatted(grade, by)),
                    Sample.TODAY))
            .all()
            .get(0);
    assertThat(standing.whoMaySign()).isEqualTo(names);
  }
}
