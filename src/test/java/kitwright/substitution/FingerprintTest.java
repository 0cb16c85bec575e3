package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** What a signature of the first form covers, and what it does not. */
class FingerprintTest {
  private static final String RECORDS =
      """
      stock:
        - {id: larch-a, what: larch, size: 2450 x 110 x 32 mm, pieces: 5, material: larch-own}
      materials:
        - {id: larch-own, kind: timber, density: 560 kg/m3}
      assessments:
        - {id: ext, method: external, by: office, on: 2026-02-01, require: {strength: 1}, numbers: {strength: 1.1}, evidence: [{file: there/a.pdf, says: the sheet}]}
      substitutions:
        - {id: sub, instead-of: {what: spruce, qty: 8 m}, use: [{stock: larch-a, qty: 4}], grade: finish, why: here, assessment: ext, withdrawn: 2026-03-01, sign-offs: [{by: nora, on: 2026-02-12}]}
      """;

  private static Fingerprint of(String yaml) {
    Ledger ledger = Sample.ledger(yaml);
    return Fingerprint.ofFirstForm(ledger.substitutions().get(0), ledger);
  }

  private static final Fingerprint PLAIN = of(RECORDS);

  @Test
  void isASha256OfTheCanonicalText() throws Exception {
    Ledger ledger = Sample.ledger(RECORDS);
    String text = FirstForm.text(ledger.substitutions().get(0), ledger);
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    assertThat(PLAIN.digits()).isEqualTo(HexFormat.of().formatHex(digest)).hasSize(64);
  }

  @Test
  void aPrefixOfTwelveDigitsOrMoreMatches() {
    assertThat(PLAIN.matches(PLAIN.digits())).isTrue();
    assertThat(PLAIN.matches(PLAIN.brief())).isTrue();
    assertThat(PLAIN.matches(PLAIN.digits().substring(0, 11))).isFalse();
    String other = PLAIN.digits().charAt(0) == '0' ? "1" : "0";
    assertThat(PLAIN.matches(other + PLAIN.digits().substring(1))).isFalse();
  }

  @Test
  void signaturesAndALaterWithdrawalAreNotCovered() {
    assertThat(of(RECORDS.replace(", withdrawn: 2026-03-01", ""))).isEqualTo(PLAIN);
    assertThat(of(RECORDS.replace("on: 2026-02-12}", "on: 2026-02-13, conditions: [dry]}")))
        .isEqualTo(PLAIN);
  }

  @Test
  void evidenceIsCoveredByItsContentNotByItsPath() {
    assertThat(of(RECORDS.replace("there/a.pdf", "there/moved/b.pdf"))).isEqualTo(PLAIN);
    assertThat(of(RECORDS.replace("there/a.pdf", "gone/a.pdf"))).isNotEqualTo(PLAIN);
    assertThat(
            of(
                RECORDS.replace(
                    "file: there/a.pdf", "file: there/a.pdf, sha256: " + "0".repeat(64))))
        .isNotEqualTo(PLAIN);
  }

  @Test
  void theMaterialOfTheStockIsCoveredItsAmountIsNot() {
    assertThat(of(RECORDS.replace("pieces: 5", "pieces: 1"))).isEqualTo(PLAIN);
    assertThat(of(RECORDS.replace(", material: larch-own", ""))).isNotEqualTo(PLAIN);
    assertThat(of(RECORDS.replace("560 kg/m3", "460 kg/m3"))).isNotEqualTo(PLAIN);
  }

  @Test
  void aBuiltInMaterialIsCoveredByItsRow() {
    String builtIn = Sample.ledger(RECORDS).builtInMaterials().get(0).id();
    String named = RECORDS.replace("material: larch-own}", "material: " + builtIn + "}");
    String overridden = named.replace("id: larch-own", "id: " + builtIn);
    assertThat(of(named)).isNotEqualTo(of(overridden));
  }

  @Test
  void neighbouringTextsCannotBeShiftedIntoEachOther() {
    String one = RECORDS.replace("what: spruce, qty: 8 m", "what: \"a}4:why\", qty: 8 m");
    String two = RECORDS.replace("what: spruce, qty: 8 m", "what: a, qty: 8 m");
    assertThat(of(one)).isNotEqualTo(of(two));
  }
}
