package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a signature does not say which version of the record it covers. */
public final class SignatureCoversNothing implements Rule {
  @Override
  public String name() {
    return "signature-covers-nothing";
  }

  @Override
  public void examine(Facts day, Findings out) {
    VoidSignatures.each(
        Standings.on(day),
        Lack.COVERS_NOTHING,
        (standing, signature) -> out.add(finding(standing, signature, day.ledger())));
  }

  private Finding finding(Standing standing, Signature signature, Ledger ledger) {
    String who = VoidSignatures.signer(signature, ledger);
    return new Finding(
        name(),
        Severity.WARN,
        signature.signOff().at().of("by"),
        who
            + " signed "
            + standing.substitution().id()
            + ", but the signature quotes no fingerprint.",
        "Nobody can prove later what was signed, so the signature does not count.",
        "If the record is what was signed, add covers: "
            + standing.fingerprint().brief()
            + " to the sign-off.",
        List.of(standing.substitution().named()));
  }
}
