package kitwright.substitution;

import java.util.List;
import java.util.Locale;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where somebody has signed a substitution of a grade that they are not entitled to sign. */
public final class SignerNotEntitled implements Rule {
  @Override
  public String name() {
    return "signer-not-entitled";
  }

  @Override
  public void examine(Facts day, Findings out) {
    VoidSignatures.each(
        Standings.on(day),
        Lack.NOT_ENTITLED,
        (standing, signature) -> out.add(finding(standing, signature, day.ledger())));
  }

  private Finding finding(Standing standing, Signature signature, Ledger ledger) {
    String who = VoidSignatures.signer(signature, ledger);
    return new Finding(
        name(),
        VoidSignatures.weight(standing.substitution()),
        signature.signOff().at().of("by"),
        who
            + " is not entitled to sign a "
            + standing.substitution().grade().name().toLowerCase(Locale.ROOT)
            + " substitution such as "
            + standing.substitution().id()
            + ".",
        "The signature does not count, so the substitution is not approved.",
        "Have it signed by somebody whose “may-sign” holds this grade; or, if they are entitled,"
            + " say so there.",
        List.of(standing.substitution().named()));
  }
}
