package kitwright.ledger;

/** How much hangs on a substitution, and so who may sign it. */
public enum Grade {
  /** Lives depend on it. */
  STRUCTURAL,
  /** Steering, electrics, gas, fuel, plumbing. */
  SYSTEMS,
  /** Looks and comfort only. */
  FINISH
}
