package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;

/** Fires where a signature that counts quotes digits of the first form, which covers less. */
public final class SignatureCoversLess implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      boolean made =
          standing.signatures().stream()
              .anyMatch(signature -> signature.counts() && !signature.earlierForm());
      if (!standing.isWithdrawn() && !made) {
        standing.signatures().stream()
            .filter(Signature::counts)
            .filter(Signature::earlierForm)
            .forEach(signature -> out.add(finding(standing, signature, day.ledger())));
      }
    }
  }

  private Finding finding(SubstitutionStanding standing, Signature signature, Ledger ledger) {
    String id = standing.substitution().id();
    return note(
        signature.signOff().at().of("covers"),
        "The signature of "
            + ledger
                .party(signature.signOff().by())
                .map(Party::name)
                .orElse(signature.signOff().by().id())
            + " under "
            + id
            + " is of an older form, which covers less.",
        "It counts, but covers neither the words and sizes of what is replaced and used, nor its"
            + " own conditions and signer: a change of these goes unnoticed.",
        "When you next write to the signer, have the statement signed that “kitwright fingerprint "
            + id
            + " --statement” prints; its digits are "
            + signature.statement().fingerprint().brief()
            + ".",
        List.of(standing.substitution().named()));
  }
}
