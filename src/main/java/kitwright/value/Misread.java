package kitwright.value;

/**
 * A text that could not be read as the value wanted. Caught at once by the reader, which turns it
 * into a finding with its place; carries no stack.
 */
public final class Misread extends Exception {
  private static final long serialVersionUID = 1L;
  private final String what;
  private final String mend;

  /**
   * @param what what is wrong, one sentence without a full stop
   * @param mend how to write it, one sentence without a full stop
   */
  public Misread(String what, String mend) {
    super(what, null, false, false);
    this.what = what;
    this.mend = mend;
  }

  /** What is wrong. */
  public String what() {
    return what;
  }

  /** How to write it. */
  public String mend() {
    return mend;
  }
}
