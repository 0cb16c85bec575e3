package kitwright.cli;

import java.util.concurrent.TimeUnit;
import kitwright.cutting.CutPlan;
import kitwright.cutting.solve.Effort;
import kitwright.finding.Ink;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;

/**
 * Searches with more and more effort until the plan is proved or the time is up, and keeps the best
 * of all plans and bounds; so more time never tells less. On a terminal the seconds are shown.
 */
final class CutSearch {
  private static final long FIRST = 200_000_000L;

  private final Cut cut;
  private final Facts day;
  private final int seconds;
  private final Session session;
  private final long start = System.nanoTime();
  private long shown;

  CutSearch(Cut cut, Facts day, int seconds, Session session) {
    this.cut = cut;
    this.day = day;
    this.seconds = seconds;
    this.session = session;
  }

  CutPlan plan() {
    CutPlan best = CutPlan.of(cut, day, new Effort(FIRST, this::isEnough));
    long usual = Effort.usual().steps() - FIRST;
    for (long steps = FIRST * 4; !isOver(best, steps, usual); steps = next(steps, usual)) {
      best = best.orBetter(CutPlan.of(cut, day, new Effort(steps, this::isEnough)));
    }
    clear();
    return best;
  }

  private boolean isOver(CutPlan best, long steps, long usual) {
    return best.outcome().isProvedBest()
        || (seconds > 0 ? isLate() : steps > usual)
        || steps > Long.MAX_VALUE / 1000;
  }

  private static long next(long steps, long usual) {
    return steps < usual ? Math.min(usual, steps * 4) : steps * 4;
  }

  private boolean isLate() {
    return System.nanoTime() - start > TimeUnit.SECONDS.toNanos(seconds);
  }

  private boolean isEnough() {
    show();
    return seconds > 0 && isLate();
  }

  private void show() {
    long now = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start);
    if (session.screen().ink() == Ink.COLOUR && now > shown) {
      shown = now;
      session.err().print("\rsearching for " + cut.id() + ", " + now + " s");
      session.err().flush();
    }
  }

  private void clear() {
    if (shown > 0) {
      session.err().print("\r" + " ".repeat(40 + cut.id().length()) + "\r");
      session.err().flush();
    }
  }
}
