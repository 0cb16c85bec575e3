package kitwright.substitution;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Party;
import kitwright.ledger.RecordRule;
import kitwright.value.Word;

/** Fires where somebody has the right to sign structural work who builds, helps, lends or sells. */
public final class RightUnfit implements RecordRule<Party> {
  @Override
  public List<Party> records(Facts day) {
    return day.written().parties();
  }

  @Override
  public void examine(Party party, Facts day, Findings out) {
    if (!Rights.fits(party.role(), Grade.STRUCTURAL)
        && party.maySign().stream().anyMatch(right -> right.grade() == Grade.STRUCTURAL)) {
      out.add(
          warn(
              party.at().of("may-sign"),
              party.name()
                  + " is a "
                  + Word.key(party.role())
                  + " and has the right to sign structural work.",
              "Role and right do not fit: no such signature counts.",
              "Take “structural” out of “may-sign”; or, if the role is wrong, write designer,"
                  + " engineer or surveyor.",
              List.of(party.named())));
    }
  }
}
