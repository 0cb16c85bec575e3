package kitwright.substitution;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;

/** Fires where somebody has signed structural work and nothing shows that they may. */
public final class RightUnproved implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Set<String> signed =
        SubstitutionStandings.on(day).all().stream()
            .filter(standing -> !standing.isWithdrawn() && standing.grade() == Grade.STRUCTURAL)
            .flatMap(standing -> standing.signatures().stream())
            .map(signature -> signature.signOff().by().id())
            .collect(Collectors.toSet());
    day.ledger().parties().stream()
        .filter(party -> signed.contains(party.id()))
        .filter(party -> Rights.fits(party.role(), Grade.STRUCTURAL))
        .forEach(party -> examine(party, out));
  }

  private void examine(Party party, Findings out) {
    party.maySign().stream()
        .filter(right -> right.grade() == Grade.STRUCTURAL && right.letter().isEmpty())
        .forEach(
            right ->
                out.add(
                    note(
                        right.at().record(),
                        party.name()
                            + " has signed structural work, and nothing shows that they may.",
                        "Whoever reads the signature later has only the word “structural” to go"
                            + " by.",
                        "Write the right with its letter, in place of “structural” under"
                            + " “may-sign”: {grade: structural, since: …, letter: {file: …, sha256:"
                            + " …}}.",
                        List.of(party.named()))));
  }
}
