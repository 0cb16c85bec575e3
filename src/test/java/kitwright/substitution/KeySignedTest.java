package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Ledger;
import kitwright.ledger.Seal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told of a signature by a key that does not count: what is lacking, and who gives it. */
class KeySignedTest {
  private static final String YAML =
      """
      parties:
        - {id: nora, name: Nora Tern, role: builder, may-sign: [finish]%s}
      substitutions:
        - {id: sub, instead-of: {what: trim, qty: 3 m}, grade: finish, why: oak is here, sign-offs: [{by: nora, on: 2026-02-12, signature: %s}]}
      """;

  private static final String KEY =
      ", signing-key: ssh-ed25519"
          + " AAAAC3NzaC1lZDI1NTE5AAAAIIHQ6hp1Y2FuZHlmbG9zc2NhbmR5Zmxvc3NjYW5keWZs";

  /** Files whose path begins with “there” are there in a sample. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "true | there/a.sig | The signature of a key under sub was not made by the key of Nora Tern"
            + " over this statement. | Ask Nora Tern whether they signed, and what; have the"
            + " statement signed that stands now.",
        "true | gone/a.sig | The signature of the key of Nora Tern under sub is not there:"
            + " “gone/a.sig”. | Put the file where “signature” names it, or have the statement"
            + " signed that stands now.",
        "false | there/a.sig | A key made a signature under sub, and the record of Nora Tern names"
            + " no key of theirs. | Have Nora Tern give you the line of their public key, and write"
            + " it under “signing-key” of the party nora."
      })
  void whatIsLackingIsNamed(boolean hasKey, String file, String what, String mend) {
    Ledger ledger = Sample.ledger(YAML.formatted(hasKey ? KEY : "", file));
    var signOff = ledger.substitutions().get(0).signOffs().get(0);
    Ledger checked = ledger.sealed(Map.of(signOff.at().record(), Seal.BAD));
    List<Finding> found =
        Sample.findings(
            new VoidSignature(VoidSignature.Why.KEY_FORGED), checked, LocalDate.of(2026, 3, 2));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).what()).isEqualTo(what);
    assertThat(found.get(0).mend()).isEqualTo(mend);
    assertThat(found.get(0).follows())
        .isEqualTo(
            "Nothing shows that Nora Tern made it over this text and for this purpose; it does not"
                + " count.");
  }
}
