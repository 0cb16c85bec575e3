package kitwright.report.words;

import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.value.Ref;

/** What people and firms are called. */
public record Names(Ledger ledger) {
  /** The name of a party; its id where nobody of that id is known. */
  public String of(String id) {
    return ledger.parties().stream()
        .filter(party -> party.id().equals(id))
        .map(Party::name)
        .findFirst()
        .orElse(id);
  }

  /** The name of a party. */
  public String of(Ref party) {
    return of(party.id());
  }

  /** The builder: the first party of that role, or else the build. */
  public String builder() {
    return ledger.parties().stream()
        .filter(party -> party.role() == Party.Role.BUILDER)
        .map(Party::name)
        .findFirst()
        .orElse(ledger.build().name());
  }
}
