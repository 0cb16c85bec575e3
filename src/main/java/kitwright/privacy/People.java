package kitwright.privacy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;

/**
 * Everybody whom the records name and who did not say {@code public: yes}.
 *
 * @param why what a name of theirs gives away
 */
record People(String name, String why) {
  static List<People> in(Ledger ledger) {
    List<People> all = new ArrayList<>();
    for (Party party : ledger.parties()) {
      if (!party.isPublic()) {
        all.add(new People(party.name(), "the name of " + party.id()));
        all.add(new People(party.id(), "the id of a party"));
      }
    }
    ledger.spending().stream()
        .map(Spend::to)
        .flatMap(Optional::stream)
        .filter(payee -> ledger.parties().stream().noneMatch(party -> isPublic(party, payee)))
        .distinct()
        .forEach(payee -> all.add(new People(payee, "somebody who was paid")));
    return all;
  }

  private static boolean isPublic(Party party, String payee) {
    return party.isPublic() && (party.id().equals(payee) || party.name().equals(payee));
  }
}
