package kitwright.substitution;

import java.util.function.BiConsumer;
import kitwright.finding.Severity;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Substitution;
import kitwright.value.Ref;

/** Walks over signatures that do not count, where no other signature makes up for them. */
final class VoidSignatures {
  private VoidSignatures() {}

  /** Visits each signature with that lack, unless the substitution has one that counts. */
  static void each(Standings substitutions, Lack lack, BiConsumer<Standing, Signature> visit) {
    substitutions.all().stream()
        .filter(standing -> !standing.isWithdrawn())
        .filter(standing -> standing.signatures().stream().noneMatch(Signature::counts))
        .forEach(
            standing ->
                standing.signatures().stream()
                    .filter(signature -> signature.lacks().contains(lack))
                    .forEach(signature -> visit.accept(standing, signature)));
  }

  /** The name of who signed, or what was written where nobody of that id is known. */
  static String signer(Signature signature, Ledger ledger) {
    Ref by = signature.signOff().by();
    return ledger.party(by).map(Party::name).orElse(by.id());
  }

  /** How much it weighs that a substitution of that grade is not signed. */
  static Severity weight(Substitution substitution) {
    return substitution.grade() == Grade.FINISH ? Severity.WARN : Severity.STOP;
  }
}
