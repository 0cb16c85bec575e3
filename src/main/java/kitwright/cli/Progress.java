package kitwright.cli;

import java.util.function.IntBinaryOperator;

/**
 * How far long work has come, on one line that is written over and taken away at the end; only
 * where somebody watches. Told the steps done and all there are, it gives the number done.
 */
final class Progress implements IntBinaryOperator, AutoCloseable {
  /** Seldom enough to cost nothing. */
  private static final int STEPS = 50;

  private final Session session;
  private final String what;
  private int told;

  /**
   * @param what is done, such as {@code rows}
   */
  Progress(Session session, String what) {
    this.session = session;
    this.what = what;
  }

  @Override
  public int applyAsInt(int done, int all) {
    if (session.screen().live() && (done - told) * (long) STEPS >= all) {
      told = done;
      write("\r" + what + ": " + done + " of " + all + " ");
    }
    return done;
  }

  @Override
  public void close() {
    if (told > 0) {
      write("\r" + " ".repeat(what.length() + 24) + "\r");
    }
  }

  private void write(String line) {
    session.err().print(line);
    session.err().flush();
  }
}
