package kitwright.substitution;

import kitwright.ledger.Party;

/** Somebody who may sign a substitution today, and what they would sign. */
public record Signer(Party party, Statement statement) {}
