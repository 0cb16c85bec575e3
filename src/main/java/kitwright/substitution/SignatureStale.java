package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where what was signed has been changed since. */
public final class SignatureStale implements Rule {
  @Override
  public String name() {
    return "signature-stale";
  }

  @Override
  public void examine(Facts day, Findings out) {
    VoidSignatures.each(
        Standings.on(day),
        Lack.STALE,
        (standing, signature) -> out.add(finding(standing, signature, day.ledger())));
  }

  private Finding finding(Standing standing, Signature signature, Ledger ledger) {
    String who = VoidSignatures.signer(signature, ledger);
    return new Finding(
        name(),
        VoidSignatures.weight(standing.substitution()),
        signature.signOff().at().of("covers"),
        who
            + " signed another version of "
            + standing.substitution().id()
            + ": the signature covers "
            + brief(signature)
            + ", the record is now "
            + standing.fingerprint().brief()
            + ".",
        "The substitution, its assessment, a section, a material or a document has changed, and"
            + " nobody entitled has seen the change.",
        "Undo the change, or show it to the signer and add the new signature with covers: "
            + standing.fingerprint().brief()
            + ".",
        List.of(standing.substitution().named()));
  }

  private static String brief(Signature signature) {
    String covers = signature.signOff().covers().orElse("");
    return covers.substring(0, Math.min(covers.length(), 12));
  }
}
