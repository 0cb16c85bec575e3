package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;

/** Fires where two parties look like one person, of whom one may sign. */
public final class PersonTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    List<Party> parties = day.ledger().parties();
    for (int later = 1; later < parties.size(); later++) {
      for (Party earlier : parties.subList(0, later)) {
        examine(earlier, parties.get(later), out);
      }
    }
  }

  private void examine(Party earlier, Party later, Findings out) {
    if (earlier.id().equals(later.id())
        || (earlier.maySign().isEmpty() && later.maySign().isEmpty())) {
      return;
    }
    boolean named = Persons.name(earlier).equals(Persons.name(later));
    Optional<String> contact = Persons.contact(later);
    if (named || (contact.isPresent() && contact.equals(Persons.contact(earlier)))) {
      out.add(
          warn(
              later.at().of(named ? "name" : "contact"),
              later.id()
                  + " has the same "
                  + (named ? "name" : "contact")
                  + " as "
                  + earlier.id()
                  + ", and may look like a second person.",
              named
                  ? "Both count as one: nobody proposes under one id and signs under the other."
                  : "If it is one person, nobody else has looked at what they proposed and signed.",
              "Keep one of the two ids; if they are two people, write "
                  + (named ? "each name in full" : "the contact of each")
                  + ", so that they can be told apart.",
              List.of(earlier.named(), later.named())));
    }
  }
}
