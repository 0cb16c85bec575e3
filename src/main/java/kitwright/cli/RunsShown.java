package kitwright.cli;

import java.util.function.DoubleConsumer;
import kitwright.finding.Ink;

/** Shows on a terminal how far a simulation is; a quick one shows nothing. */
final class RunsShown implements DoubleConsumer {
  private static final long PATIENCE = 700_000_000L;
  private static final String SAID = "\rsimulating, ";

  private final Session session;
  private final long start = System.nanoTime();
  private int shown = -1;

  RunsShown(Session session) {
    this.session = session;
  }

  @Override
  public synchronized void accept(double share) {
    int percent = (int) (share * 100);
    boolean terminal = session.screen().ink() == Ink.COLOUR;
    if (terminal && percent > shown && System.nanoTime() - start > PATIENCE) {
      shown = percent;
      session.err().print(SAID + percent + " %");
      session.err().flush();
    }
  }

  /** Takes away what was shown. */
  void clear() {
    if (shown >= 0) {
      session.err().print("\r" + " ".repeat(SAID.length() + 5) + "\r");
      session.err().flush();
    }
  }
}
