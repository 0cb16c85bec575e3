package kitwright.substitution;

import java.util.List;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Substitution;

/** Who may sign a substitution. */
public final class Signers {
  private Signers() {}

  /**
   * The names of those who are entitled to its grade, in the ledger's order; of a structural one,
   * without its proposer. Empty where nobody of the ledger may.
   */
  public static List<String> of(Substitution substitution, Ledger ledger) {
    return ledger.parties().stream()
        .filter(
            party ->
                party.maySign().stream().anyMatch(right -> right.grade() == substitution.grade()))
        .filter(party -> substitution.grade() != Grade.STRUCTURAL || !proposed(party, substitution))
        .map(Party::name)
        .toList();
  }

  private static boolean proposed(Party party, Substitution substitution) {
    return substitution
        .proposed()
        .filter(proposal -> proposal.by().id().equals(party.id()))
        .isPresent();
  }
}
