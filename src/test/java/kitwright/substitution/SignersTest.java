package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whom to ask is decided as the signature will be judged. */
class SignersTest {
  @ParameterizedTest(name = "{0} proposed by {1}: {2}")
  @CsvSource({
    "finish, nora, A. Osterlund or Nora",
    "finish, office, A. Osterlund or Nora",
    "structural, nora, A. Osterlund",
    "structural, office, ''",
    "systems, office, A. Osterlund"
  })
  void aProposerIsPassedOverOnlyWhereTheWorkIsStructural(String grade, String by, String names) {
    Ledger ledger =
        Sample.ledger(
            """
            substitutions:
              - {id: s, instead-of: {what: a board, qty: 1}, grade: %s, why: none at hand, proposed: {by: %s, on: 2026-02-01}}
            """
                .formatted(grade, by));
    List<String> signers = Signers.of(ledger.substitutions().get(0), ledger);
    assertThat(String.join(" or ", signers)).isEqualTo(names);
  }
}
