package kitwright.ledger;

/** What in a piece of work can hurt somebody. */
public enum Hazard {
  SAW,
  DUST,
  RESIN,
  HEATER,
  LEAD,
  LIFTING,
  CRATE,
  ELECTRICAL,
  HEIGHT
}
