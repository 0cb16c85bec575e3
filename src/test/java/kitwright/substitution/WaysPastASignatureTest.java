package kitwright.substitution;

import static kitwright.substitution.SignedSample.COVERS;
import static kitwright.substitution.SignedSample.RECORDS;
import static kitwright.substitution.SignedSample.rules;
import static kitwright.substitution.SignedSample.signed;
import static kitwright.substitution.SignedSample.standing;
import static kitwright.substitution.SignedSample.with;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What somebody might do to get past a signature, and near each what may be done without asking.
 * Before anything is done nothing is found, and the part may be built.
 */
class WaysPastASignatureTest {
  private static final String SIGNED = signed(RECORDS);

  @Test
  void asSignedNothingIsFoundAndThePartMayBeBuilt() {
    assertThat(rules(SIGNED)).isEmpty();
    assertThat(standing(SIGNED).lacks()).isEmpty();
  }

  /** Changes of one text under the signature as it stands. */
  @ParameterizedTest(name = "{0}: {1} as {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          another thickness of what is used | 110 x 32 mm | 110 x 12 mm
          other words for what is used | larch board left from the floor | pine with knots
          a thinner bolt | bolt M12 x 140 A4-70 | bolt M6 x 40
          another glue bought | resorcinol glue 1 kg tin | white glue 1 kg tin
          more glue bought than said | state: paid, qty: 1 kg} | state: paid, qty: 2 kg}
          fewer boards | larch-a, qty: 4 each | larch-a, qty: 2 each
          other words for what is replaced | spruce stave 24 x 96 | spruce stave 18 x 60
          another drawing | drawing: D-31, price | drawing: D-32, price
          another grain of the stock | pieces: 5, material: larch, grain: along | pieces: 5, material: larch, grain: across
          another material of the stock | pieces: 5, material: larch, | pieces: 5, material: spruce,
          a condition loosened | at-least: {plies: 2} | at-least: {plies: 1}
          a condition dropped | `          - no knot within 100 mm of a scarf\n` | ``
          a condition reworded | within 100 mm of a scarf | within 10 mm of a scarf
          a lower requirement | stiffness: 1.0, strength: 0.9 | stiffness: 0.5, strength: 0.9
          a smaller load | tip-force: 900 N | tip-force: 500 N
          a shorter span | span: 1.15 m | span: 1.05 m
          a smaller safety factor | factor: 3, | factor: 1.5,
          another source of the load | source: drawing D-31} | source: a guess}
          another reason for less | the load is shared with the stay | it will do
          a thinner layer | thickness: 26 mm | thickness: 25 mm
          fewer plies | plies: 2 | plies: 1
          another glue in the joint | bond-strength: 8 MPa | bond-strength: 3 MPa
          no glue in the joint | `, glue: glue}` | `}`
          a weaker timber | E: 12.4 GPa | E: 11.4 GPa
          a weaker fibre | E: 73 GPa | E: 70 GPa
          another mix of the resin | mix-ratio: 0.32 | mix-ratio: 0.22
          another hardener | density: 970 kg/m3 | density: 900 kg/m3
          another source of a value | E: 12.4 GPa, bending-strength: 90 MPa, source: a handbook | E: 12.4 GPa, bending-strength: 90 MPa, source: hearsay
          another number of the sum | numbers: {stiffness: 1.1 | numbers: {stiffness: 1.2
          another engineer for the sum | by: bryde | by: office
          another sum | there/sum.pdf | gone/sum.pdf
          another day of the sum | on: 2026-02-05 | on: 2026-02-06
          another proposer | proposed: {by: nora | proposed: {by: ivo
          another held task | hold: close | hold: paint
          another name of the held task | what: Close the bowsprit | what: Sand the bowsprit
          a lower grade of the held task | takes: 1 d, grade: structural | takes: 1 d, grade: finish
          another reason for it | why: larch staves, thinner walls | why: spruce as drawn
          another name of the signer | name: A. Osterlund | name: B. Osterlund
          another role of the signer | role: designer | role: surveyor
          """)
  void whatWasSignedIsNotChangedUnnoticed(String what, String from, String to) {
    String changed = with(SIGNED, text(from), text(to));
    assertThat(standing(changed).lacks(Lack.STALE)).as(what).isTrue();
    assertThat(rules(changed)).contains("signature-stale", "hold-point-near");
  }

  /** Changes that leave what was signed as it is. */
  @ParameterizedTest(name = "{0}: {1} as {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          a decimal more | thickness: 26 mm | thickness: 26.0 mm
          no space before the unit | thickness: 26 mm | thickness: 26mm
          another unit of length | thickness: 26 mm | thickness: 0.026 m
          another unit of stress | E: 12.4 GPa | E: 12400 MPa
          another unit of weight | areal-weight: 290 g/m2 | areal-weight: 0.29 kg/m2
          another unit of size | 2450 x 110 x 32 mm | 245 x 11 x 3.2 cm
          per cent for a share | strength: 0.9, reserve | strength: 90 %, reserve
          an unseen sign in a text | why: larch staves | why: larch\u200b staves
          two spaces for one | why: larch staves | why: larch  staves
          quotes | why: larch staves, thinner walls | why: "larch staves, thinner walls"
          another order of keys | {tip-force: 900 N, span: 1.15 m, | {span: 1.15 m, tip-force: 900 N,
          another order of measures | {stiffness: 1.0, strength: 0.9, reserve: 1.0} | {reserve: 1.0, strength: 0.9, stiffness: 1.0}
          a comment | hold: close | hold: close # the last moment
          the sum moved to another file | there/sum.pdf | there/moved/sum.pdf
          fewer boards in the shed | pieces: 5 | pieces: 4
          another price | price: 11 EUR/m | price: 12 EUR/m
          another quantity promised | price: 11 EUR/m, | price: 11 EUR/m, crate: C2,
          a longer task | what: Close the bowsprit, takes: 1 d | what: Close the bowsprit, takes: 3 d
          somebody for the task | takes: 1 d, grade: structural | takes: 1 d, who: [nora], grade: structural
          another width of the roll | roll-width: 1.25 m | roll-width: 1.27 m
          a longer pot life | pot-life: 35 min | pot-life: 40 min
          a right that ends later | until: 2026-12-31 | until: 2027-12-31
          another contact of somebody else | bryde@sund.example | t.bryde@sund.example
          a kit item that is not used | bolt M10 x 120, qty: 8 | bolt M10 x 110, qty: 8
          another day of signing | on: 2026-02-12 | on: 2026-02-13
          """)
  void whatWasNotSignedMayBeChanged(String what, String from, String to) {
    String changed = with(SIGNED, text(from), text(to));
    assertThat(standing(changed).lacks()).as(what).isEmpty();
    assertThat(rules(changed)).isEmpty();
  }

  private static String text(String cell) {
    return cell == null ? "" : cell.replace("\\n", "\n").replace("\\u200b", "\u200b");
  }

  private static void shows(String records, String... expected) {
    assertThat(standing(records).isApproved()).isFalse();
    assertThat(rules(records)).contains(expected);
  }

  private static void isBuilt(String records) {
    assertThat(standing(records).lacks()).isEmpty();
  }

  // --- the grade belongs to the part

  @Test
  void theGradeCannotBeTalkedDownAndSignedByTheProposer() {
    String records =
        with(
            with(
                with(RECORDS, "grade: structural\n", "grade: finish\n"),
                "by: office\n",
                "by: nora\n"),
            "        covers: COVERS\n",
            "");
    shows(records, "grade-too-low", "signer-not-entitled", "signed-by-proposer");
    String alone =
        with(
            with(
                records,
                "price: 11 EUR/m, material: spruce, grade: structural",
                "price: 11 EUR/m, material: spruce"),
            "takes: 1 d, grade: structural",
            "takes: 1 d");
    shows(alone, "grade-too-low");
    assertThat(standing(alone).grading().because()).containsExactly("its assessment states a load");
  }

  @Test
  void whatCarriesNothingMayBeSaidToByWhoeverIsEntitled() {
    String finish =
        with(
            with(
                with(
                    with(RECORDS, "grade: structural\n", "grade: finish\n"),
                    "price: 11 EUR/m, material: spruce, grade: structural",
                    "price: 11 EUR/m, material: spruce"),
                "takes: 1 d, grade: structural",
                "takes: 1 d"),
            "method: external\n",
            """
            method: external
                not-structural: {by: BY, on: 2026-02-06, why: it holds a flag}
            """);
    isBuilt(signed(with(finish, "by: BY", "by: bryde")));
    assertThat(rules(signed(with(finish, "by: BY", "by: bryde")))).isEmpty();
    assertThat(rules(signed(with(finish, "by: BY", "by: ivo")))).containsExactly("grade-too-low");
    assertThat(rules(signed(with(finish, "by: BY", "by: nora")))).containsExactly("grade-too-low");
  }

  // --- who may sign

  @Test
  void whoeverBuildsHelpsLendsOrSellsReleasesNothingStructural() {
    for (String who : List.of("nora", "ivo", "pell", "kit-maker")) {
      String records = with(RECORDS, "by: office\n", "by: " + who + "\n");
      String entitled =
          records
              .replace("role: builder, may-sign: [finish]", "role: builder, may-sign: [structural]")
              .replace("role: helper}", "role: helper, may-sign: [structural]}")
              .replace("role: lender}", "role: lender, may-sign: [structural]}")
              .replace("role: supplier}", "role: supplier, may-sign: [structural]}");
      shows(signed(entitled), "right-unfit", "signer-not-entitled");
    }
    isBuilt(signed(with(RECORDS, "by: office\n", "by: bryde\n")));
  }

  @Test
  void aStructuralSubstitutionNamesWhoProposedIt() {
    shows(
        signed(with(RECORDS, "    proposed: {by: nora, on: 2026-01-30}\n", "")),
        "proposer-missing");
    isBuilt(signed(with(RECORDS, "proposed: {by: nora", "proposed: {by: ivo")));
  }

  @Test
  void whoeverProposedOrBuildsDoesNotRelease() {
    shows(
        signed(with(RECORDS, "proposed: {by: nora", "proposed: {by: office")),
        "signed-by-proposer");
    shows(
        signed(
            with(
                RECORDS,
                "takes: 1 d, grade: structural",
                "takes: 1 d, who: [office], grade: structural")),
        "signed-by-builder");
    isBuilt(
        signed(
            with(
                RECORDS,
                "takes: 1 d, grade: structural",
                "takes: 1 d, who: [nora, ivo], grade: structural")));
  }

  @Test
  void aSecondIdMakesNoSecondPerson() {
    String twin =
        "  - {id: twin, name: \"NÓRA\", role: engineer, may-sign: [structural]}\n"
            + "  - {id: pell,";
    shows(
        signed(with(with(RECORDS, "  - {id: pell,", twin), "by: office\n", "by: twin\n")),
        "person-twice",
        "signed-by-proposer",
        "signed-by-builder");
    String other = twin.replace("NÓRA", "Nora B");
    isBuilt(signed(with(with(RECORDS, "  - {id: pell,", other), "by: office\n", "by: twin\n")));
    String neighbour =
        twin.replace("NÓRA", "N. Holm").replace("role:", "contact: Bryde@sund.example, role:");
    assertThat(rules(signed(with(RECORDS, "  - {id: pell,", neighbour)))).contains("person-twice");
  }

  @Test
  void aRightHasItsDays() {
    shows(signed(with(RECORDS, "since: 2026-01-01", "since: 2026-02-13")), "signer-not-entitled");
    shows(signed(with(RECORDS, "until: 2026-12-31", "until: 2026-02-11")), "signer-not-entitled");
    isBuilt(
        signed(
            with(
                RECORDS,
                "since: 2026-01-01, until: 2026-12-31",
                "since: 2026-02-12, until: 2026-02-12")));
  }

  @Test
  void anotherSignerDoesNotTakeOverTheDigits() {
    shows(with(SIGNED, "by: office\n", "by: bryde\n"), "signature-stale");
  }

  @Test
  void whoWasRemovedHasNotSigned() {
    String gone = SIGNED.replaceFirst("  - \\{id: office,.*\n", "");
    shows(gone, "signer-not-entitled", "signature-stale", "reference-dangling");
  }

  // --- the letter

  @Test
  void aStructuralSignatureKeepsItsLetterWithItsHash() {
    String letter =
        "        evidence: [{file: there/letter.txt, sha256:"
            + " e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}]\n";
    shows(with(SIGNED, letter, ""), "signature-without-letter");
    shows(
        with(SIGNED, letter, "        evidence: [there/letter.txt]\n"), "signature-without-letter");
    shows(
        with(SIGNED, letter, letter.replace("e3b0c4", "e3b0c5")),
        "signature-letter-altered",
        "evidence-altered");
    shows(
        with(SIGNED, letter, letter.replace("there/", "gone/")),
        "signature-letter-altered",
        "evidence-absent");
    isBuilt(with(SIGNED, letter, letter.replace("there/letter", "there/moved-letter")));
  }

  // --- what is asked

  @Test
  void aStructuralPartIsAskedForStiffnessStrengthAndReserve() {
    for (String asked :
        List.of(
            "{stiffness: 1.0, reserve: 1.0}",
            "{strength: 1.0, reserve: 1.0}",
            "{stiffness: 1.0, strength: 1.0}")) {
      shows(
          signed(
              with(RECORDS, "{stiffness: 1.0, strength: 0.9, reserve: 1.0}", asked)
                  .replace(
                      "strength: 0.95, reserve: 1.4, mass: 1.2}",
                      "strength: 1.05, reserve: 1.4, mass: 1.2}")),
          "assessment-asks-too-little");
    }
    shows(
        signed(with(RECORDS, "    require: {stiffness: 1.0, strength: 0.9, reserve: 1.0}\n", "")),
        "assessment-asks-too-little");
    isBuilt(
        signed(
            with(RECORDS, "strength: 0.9, reserve", "moment: 1.0, reserve")
                .replace("strength: 0.95", "moment: 1.2")));
  }

  @Test
  void aLimitBelowOneGivesItsReason() {
    shows(
        signed(
            with(RECORDS, "    less-because: {strength: the load is shared with the stay}\n", "")),
        "limit-unexplained");
    shows(
        signed(with(RECORDS, "stiffness: 1.0, strength: 0.9", "stiffness: 0.01, strength: 0.9")),
        "limit-unexplained");
    isBuilt(
        signed(
            with(
                with(RECORDS, "stiffness: 1.0, strength: 0.9", "stiffness: 0.9, strength: 0.9"),
                "less-because: {",
                "less-because: {stiffness: it is stiff enough, ")));
  }

  // --- the hold point

  @Test
  void workGoesOnOnlyUnderTheStatementThatWasSigned() {
    String begun =
        with(
            SIGNED,
            "takes: 1 d, grade: structural",
            "takes: 1 d, started: 2026-02-20, grade: structural");
    assertThat(rules(begun)).isEmpty();
    shows(
        with(begun, "thickness: 26 mm", "thickness: 27 mm"),
        "signature-stale",
        "hold-point-passed");
    String early =
        with(
            SIGNED,
            "takes: 1 d, grade: structural",
            "takes: 1 d, started: 2026-02-11, grade: structural");
    assertThat(rules(early)).contains("hold-point-passed");
  }

  // --- what the signer saw

  @Test
  void anotherFigureIsToldAndATurnedVerdictIsAStop() {
    assertThat(
            rules(
                with(
                    SIGNED,
                    "saw: {verdict: passes, stiffness: 1.1",
                    "saw: {verdict: passes, stiffness: 1.2")))
        .containsExactly("signed-results-differ");
    assertThat(
            rules(
                with(
                    SIGNED,
                    "saw: {verdict: passes, stiffness: 1.1",
                    "saw: {verdict: passes, stiffness: 1.1004")))
        .isEmpty();
    shows(with(SIGNED, "saw: {verdict: passes", "saw: {verdict: fails"), "signed-verdict-turned");
  }

  // --- the digits themselves

  @Test
  void digitsAreOfThisStatementAndLongEnough() {
    String digits = SignedSample.statement(RECORDS).fingerprint().digits();
    isBuilt(RECORDS.replace(COVERS, digits.substring(0, 12)));
    isBuilt(RECORDS.replace(COVERS, "\"" + digits.toUpperCase(java.util.Locale.ROOT) + "\""));
    shows(RECORDS.replace(COVERS, digits.substring(1)), "signature-stale");
    shows(with(RECORDS, "        covers: COVERS\n", ""), "signature-covers-nothing");
  }

  @Test
  void aSignatureOfTheFirstFormCountsAndIsToldToCoverLess() {
    var ledger = kitwright.Sample.ledger(RECORDS.replace(COVERS, "0".repeat(12)));
    String first = Fingerprint.ofFirstForm(ledger.substitutions().get(0), ledger).digits();
    String records = RECORDS.replace(COVERS, first);
    assertThat(rules(records)).containsExactly("signature-covers-less");
    shows(with(records, "thickness: 26 mm", "thickness: 27 mm"), "signature-stale");
    assertThat(rules(with(records, "bolt M12 x 140 A4-70", "bolt M6 x 40")))
        .as("what the first form leaves out goes unnoticed, which is why it is told")
        .containsExactly("signature-covers-less");
  }
}
