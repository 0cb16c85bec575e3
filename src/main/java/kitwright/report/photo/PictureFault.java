package kitwright.report.photo;

/** Why a photo cannot be shown, in one sentence. */
public final class PictureFault extends Exception {
  private static final long serialVersionUID = 1;

  PictureFault(String sentence) {
    super(sentence);
  }

  public String sentence() {
    return String.valueOf(getMessage());
  }
}
