package kitwright.cli;

/** The command cannot be carried out: told in one line, and the exit code is 2. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  Refusal(String what, String mend) {
    super(what + " " + mend, null, false, false);
  }

  /** What is wrong and how to mend it. */
  String said() {
    return String.valueOf(getMessage());
  }
}
