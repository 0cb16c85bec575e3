package kitwright.cutting.solve;

/** Counts the steps of one search against its {@link Effort}. */
final class Work {
  private static final long BETWEEN_QUESTIONS = 2_000_000;

  private final Effort effort;
  private long spent;
  private long nextQuestion = BETWEEN_QUESTIONS;
  private boolean stopped;

  Work(Effort effort) {
    this.effort = effort;
  }

  void spend(long steps) {
    spent += steps;
    if (spent >= nextQuestion) {
      nextQuestion = spent + BETWEEN_QUESTIONS;
      stopped = stopped || effort.enough().getAsBoolean();
    }
  }

  boolean isOver() {
    return stopped || spent >= effort.steps();
  }

  /** Whether the value of the stock is no matter. */
  boolean isForPartsAlone() {
    return effort.partsAlone();
  }

  long spent() {
    return spent;
  }

  /**
   * A count of its own for one try, of {@code percent} of what is left; what it spends must be
   * spent here as well.
   */
  Work part(int percent) {
    return new Work(effort.of(Math.max(0, effort.steps() - spent) / 100 * percent));
  }

  /** The same count with less to go: {@code percent} of what is left may be spent on one phase. */
  long share(int percent) {
    return spent + Math.max(0, effort.steps() - spent) / 100 * percent;
  }
}
