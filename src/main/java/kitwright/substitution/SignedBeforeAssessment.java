package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a signature is older than the assessment that it should rest on. */
public final class SignedBeforeAssessment implements Rule {
  @Override
  public String name() {
    return "signed-before-assessment";
  }

  @Override
  public void examine(Facts day, Findings out) {
    VoidSignatures.each(
        Standings.on(day),
        Lack.BEFORE_ASSESSMENT,
        (standing, signature) -> out.add(finding(standing, signature, day.ledger())));
  }

  private Finding finding(Standing standing, Signature signature, Ledger ledger) {
    String who = VoidSignatures.signer(signature, ledger);
    return new Finding(
        name(),
        VoidSignatures.weight(standing.substitution()),
        signature.signOff().at().of("on"),
        who
            + " signed "
            + standing.substitution().id()
            + " on "
            + signature.signOff().on()
            + ", before its assessment was made"
            + standing
                .substitution()
                .assessment()
                .flatMap(ledger::assessment)
                .flatMap(Assessment::on)
                .map(day -> " (" + day + ")")
                .orElse("")
            + ".",
        "What was signed was not yet worked out, so the signature does not count.",
        "Show the assessment to the signer and have it signed again.",
        List.of(standing.substitution().named()));
  }
}
