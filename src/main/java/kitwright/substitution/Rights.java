package kitwright.substitution;

import java.time.LocalDate;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.value.Ref;

/** Who may sign which grade on which day. */
final class Rights {
  private Rights() {}

  /**
   * Whether somebody in that role can hold the right: who builds or sells releases nothing
   * structural.
   */
  static boolean fits(Party.Role role, Grade grade) {
    return grade != Grade.STRUCTURAL
        || switch (role) {
          case DESIGNER, ENGINEER, SURVEYOR -> true;
          case BUILDER, HELPER, LENDER, SUPPLIER -> false;
        };
  }

  static boolean maySign(Party party, Grade grade, LocalDate day) {
    return fits(party.role(), grade)
        && party.maySign().stream().anyMatch(right -> right.grade() == grade && right.holdsOn(day));
  }

  static boolean maySign(Ref party, Grade grade, LocalDate day, Ledger ledger) {
    return ledger.party(party).filter(found -> maySign(found, grade, day)).isPresent();
  }
}
