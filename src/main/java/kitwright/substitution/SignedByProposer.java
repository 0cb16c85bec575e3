package kitwright.substitution;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a structural substitution is signed by the person who proposed it. */
public final class SignedByProposer implements Rule {
  private final Standings substitutions;

  public SignedByProposer(Standings substitutions) {
    this.substitutions = substitutions;
  }

  @Override
  public String name() {
    return "signed-by-proposer";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    VoidSignatures.each(
        substitutions,
        Lack.BY_PROPOSER,
        (standing, signature) -> out.add(finding(standing, signature, ledger)));
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
