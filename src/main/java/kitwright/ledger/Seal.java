package kitwright.ledger;

/** What a check of a signature came to that a signer's own key made over a statement. */
public enum Seal {
  /** The key of the party made it over the very text. */
  GOOD,
  /** Another key, another text, another purpose, or no such signature at all. */
  BAD,
  /** Nobody has looked: there is no program here that could. It never counts as good. */
  NOT_CHECKED
}
