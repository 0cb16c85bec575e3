package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a structural substitution is signed by the person who proposed it. */
public final class SignedByProposer implements Rule {
  @Override
  public String name() {
    return "signed-by-proposer";
  }

  @Override
  public void examine(Facts day, Findings out) {
    VoidSignatures.each(
        Standings.on(day),
        Lack.BY_PROPOSER,
        (standing, signature) -> out.add(finding(standing, signature, day.ledger())));
  }

  private Finding finding(Standing standing, Signature signature, Ledger ledger) {
    String who = VoidSignatures.signer(signature, ledger);
    return new Finding(
        name(),
        VoidSignatures.weight(standing.substitution()),
        signature.signOff().at().of("by"),
        who
            + " proposed the structural substitution "
            + standing.substitution().id()
            + " and signed it as well.",
        "Nobody else has looked at it, so the signature does not count.",
        "Have a second person sign who is entitled to structural substitutions.",
        List.of(standing.substitution().named()));
  }
}
