package kitwright.substitution;

import static kitwright.substitution.SignedSample.RECORDS;
import static kitwright.substitution.SignedSample.signed;
import static kitwright.substitution.SignedSample.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a signature lacks, each alone: signed for the records as they are, with one of them wrong.
 */
class LacksTest {
  private static List<String> lacks(String records) {
    return SignedSample.standing(records).signatures().get(0).lacks().stream()
        .map(Lack::name)
        .toList();
  }

  @Test
  void asSignedItLacksNothing() {
    assertThat(lacks(signed(RECORDS))).isEmpty();
    assertThat(SignedSample.standing(signed(RECORDS)).lacks()).isEmpty();
    assertThat(SignedSample.standing(signed(RECORDS)).isApproved()).isTrue();
  }

  /** Proposed on 30 January, assessed on 5 February, signed on 12 February 2026. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "on: 2026-02-12 | on: 2026-02-05 |",
        "on: 2026-02-12 | on: 2026-02-04 | BEFORE_ASSESSMENT",
        "on: 2026-02-12 | on: 2026-01-30 | BEFORE_ASSESSMENT",
        "on: 2026-02-12 | on: 2026-01-29 | BEFORE_PROPOSAL BEFORE_ASSESSMENT",
        "since: 2026-01-01 | since: 2026-02-12 |",
        "since: 2026-01-01 | since: 2026-02-13 | NOT_ENTITLED",
        "until: 2026-12-31 | until: 2026-02-12 |",
        "until: 2026-12-31 | until: 2026-02-11 | NOT_ENTITLED",
        "proposed: {by: nora | proposed: {by: office | BY_PROPOSER",
        "takes: 1 d, grade: structural | takes: 1 d, grade: structural, who: [office] | BY_BUILDER",
        "takes: 1 d, grade: structural | takes: 1 d, grade: structural, who: [ivo] |",
        "id: ivo, name: Ivo | id: ivo, name: A. Osterlund | BY_BUILDER",
        "verdict: passes | verdict: fails | VERDICT_TURNED",
        "verdict: passes | verdict: open | VERDICT_TURNED",
        "at-least: {plies: 2} | at-least: {plies: 3} | CONDITION_UNMET",
        "at-least: {plies: 2} | at-least: {height: 2 mm} | CONDITION_UNCHECKED",
        "letter.txt, sha256: e3b0c442 | letter.txt, sha256: e3b0c443 | LETTER_ALTERED",
        "there/letter.txt | gone/letter.txt | LETTER_ALTERED"
      })
  void eachLackIsToldAlone(String from, String to, String told) {
    String records = signed(with(RECORDS, from, to));
    assertThat(lacks(records)).containsExactly(told == null ? new String[0] : told.split(" "));
  }

  @Test
  void withoutDigitsItCoversNothing() {
    assertThat(lacks(with(RECORDS, "        covers: COVERS\n", "")))
        .containsExactly("COVERS_NOTHING");
  }

  @Test
  void aLetterWithoutItsHashIsNone() {
    String sha = ", sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}]\n";
    assertThat(RECORDS).endsWith(sha);
    String bare = RECORDS.substring(0, RECORDS.length() - sha.length()) + "}]\n";
    assertThat(lacks(signed(bare))).containsExactly("NO_LETTER");
  }

  @Test
  void whatIsChangedAfterwardsIsNotCovered() {
    assertThat(lacks(with(signed(RECORDS), "thickness: 26 mm", "thickness: 27 mm")))
        .containsExactly("STALE");
    assertThat(lacks(with(signed(RECORDS), "roll-width: 1.25 m", "roll-width: 1.27 m")))
        .as("what only the workshop asks")
        .isEmpty();
  }

  private static List<String> lacksOf(String from, String to) {
    return SignedSample.standing(signed(with(RECORDS, from, to))).lacks().stream()
        .map(Lack::name)
        .toList();
  }

  @Test
  void whatTheAssessmentLacksIsTold() {
    assertThat(lacksOf("    proposed: {by: nora, on: 2026-01-30}\n", ""))
        .containsExactly("PROPOSER_UNKNOWN");
    assertThat(lacksOf("require: {stiffness: 1.0, strength", "require: {strength"))
        .containsExactly("ASKS_TOO_LITTLE");
    assertThat(lacksOf("    less-because: {strength: the load is shared with the stay}\n", ""))
        .containsExactly("LIMIT_UNEXPLAINED");
    assertThat(lacksOf("numbers: {stiffness: 1.1", "numbers: {stiffness: 0.99"))
        .contains("ASSESSMENT_FAILS");
    assertThat(lacksOf("numbers: {stiffness: 1.1, ", "numbers: {")).contains("ASSESSMENT_OPEN");
  }

  /** Whoever proposed or builds is passed over among those who may sign. */
  @Test
  void whoMaySignIsAskedFor() {
    String unsigned = RECORDS.substring(0, RECORDS.indexOf("    sign-offs:"));
    assertThat(names(unsigned)).containsExactly("A. Osterlund", "T. Bryde");
    assertThat(names(with(unsigned, "proposed: {by: nora", "proposed: {by: office")))
        .containsExactly("T. Bryde");
    assertThat(
            names(
                with(
                    unsigned,
                    "takes: 1 d, grade: structural",
                    "takes: 1 d, grade: structural, who: [bryde]")))
        .containsExactly("A. Osterlund");
    assertThat(names(signed(RECORDS))).as("nobody need sign any more").isEmpty();
  }

  private static List<String> names(String records) {
    return SignedSample.standing(records).signers().stream()
        .map(signer -> signer.party().name())
        .toList();
  }

  private static final String AGAIN =
      """
            - by: office
              on: 2026-02-20
              covers: %s
              conditions: [{section: built, at-least: {plies: 1}}]
              evidence: [{file: there/letter.txt%s}]
      """;

  /** The first stands until its signer signs something else. */
  @Test
  void aLaterSignatureTakesTheFirstOnesPlaceOnlyWhereItIsOfAnotherStatement() {
    String letter = ", sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    String first = signed(RECORDS);
    String another = first + AGAIN.formatted("f".repeat(12), letter);
    assertThat(SignedSample.standing(another).isApproved()).as("of other records").isFalse();
    String same = first + AGAIN.formatted("COVERS", "");
    assertThat(SignedSample.standing(signed(same)).signatures().get(1).lacks())
        .containsExactly(Lack.NO_LETTER);
    assertThat(SignedSample.standing(signed(same)).isApproved())
        .as("of the same records, without its letter")
        .isTrue();
  }

  /** What the first did not ask for, the later does. */
  @Test
  void aLaterSignatureOnAConditionThatIsNotMetTakesTheFirstOnesPlace() {
    String first = signed(RECORDS);
    String letter = ", sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    String again = AGAIN.formatted("COVERS", letter);
    assertThat(SignedSample.standing(signed(first + again)).isApproved()).isTrue();
    SubstitutionStanding unmet =
        SignedSample.standing(signed(first + with(again, "plies: 1", "plies: 3")));
    assertThat(unmet.lacks()).containsExactly(Lack.SUPERSEDED, Lack.CONDITION_UNMET);
    SubstitutionStanding unchecked =
        SignedSample.standing(signed(first + with(again, "plies: 1", "web: 3 mm")));
    assertThat(unchecked.lacks()).containsExactly(Lack.SUPERSEDED, Lack.CONDITION_UNCHECKED);
    SubstitutionStanding otherwise =
        SignedSample.standing(
            signed(
                first
                    + with(
                        again,
                        "covers: COVERS\n",
                        "covers: COVERS\n        saw: {verdict: fails}\n")));
    assertThat(otherwise.lacks()).containsExactly(Lack.SUPERSEDED, Lack.VERDICT_TURNED);
  }

  /** Asked to sign anew, somebody would ask what was asked last. */
  @Test
  void theStatementToSignAnewHasTheLastConditionsOfItsSigner() {
    String twice = RECORDS.replace("COVERS", "0".repeat(12)) + AGAIN.formatted("f".repeat(12), "");
    Signer office = SignedSample.standing(twice).signers().get(0);
    assertThat(office.party().id()).isEqualTo("office");
    assertThat(office.statement().text()).contains("plies: 1").doesNotContain("no knot within");
  }
}
