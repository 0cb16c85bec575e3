package kitwright.assessment.sheet;

/** How far a value may be leaned on. */
public enum Trust {
  /** Somebody has said where it comes from. */
  SOURCED("has a source"),
  /** Worked out here from other values, by a rule that the sheet names. */
  DERIVED("worked out by a published rule"),
  /** Taken by common practice; no published rule says it. */
  ASSUMED("assumed, no published rule"),
  /** Made up, in a build that is made up itself. */
  DEMONSTRATED("invented, as the whole build is"),
  /** Made up for a demonstration. */
  INVENTED("invented for a demonstration"),
  /** Its source is named, but nobody has looked the value up in it. */
  UNCONFIRMED("not confirmed in its source"),
  /** Nobody says where it comes from. */
  UNSOURCED("has no source");

  private final String words;

  Trust(String words) {
    this.words = words;
  }

  /** As a sheet tells it. */
  public String words() {
    return words;
  }

  /** Whether a structural check may lean on it. */
  public boolean holds() {
    return this == SOURCED || this == DERIVED || this == DEMONSTRATED;
  }
}
