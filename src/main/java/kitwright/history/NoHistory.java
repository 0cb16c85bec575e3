package kitwright.history;

/** Why the past cannot be told: git is not there, or not here, or lacks what was asked for. */
public final class NoHistory extends Exception {
  private static final long serialVersionUID = 1L;
  private final String what;
  private final String mend;

  NoHistory(String what, String mend) {
    super(what + " " + mend);
    this.what = what;
    this.mend = mend;
  }

  /** What stands in the way, as a sentence. */
  public String what() {
    return what;
  }

  /** How to put it right. */
  public String mend() {
    return mend;
  }
}
