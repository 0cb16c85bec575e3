package kitwright.history;

/** What a change is about, in the order in which a builder wants to hear of it. */
public enum Matter {
  /** How far work has come. */
  WORK,
  /** What was counted good. */
  COUNTED,
  /** What is missing, and how far that has come. */
  MISSING,
  /** What was asked of the supplier. */
  CLAIMED,
  /** What may be built as substituted. */
  SIGNED,
  /** What was spent and where each line will end. */
  MONEY,
  /** When work will be done. */
  DAYS,
  /** What was borrowed and given back. */
  TOOLS,
  /** Every record that is new, gone or says something else. */
  RECORDS
}
