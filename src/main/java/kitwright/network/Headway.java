package kitwright.network;

import java.time.LocalDate;
import java.util.function.Function;

/** How far a task has come. */
public sealed interface Headway {
  /** Not begun. */
  Headway WAITING = new Waiting();

  <R> R match(Function<Waiting, R> waiting, Function<Begun, R> begun, Function<Done, R> done);

  /** Not begun. */
  record Waiting() implements Headway {
    @Override
    public <R> R match(Function<Waiting, R> w, Function<Begun, R> b, Function<Done, R> d) {
      return w.apply(this);
    }
  }

  /**
   * Begun and not finished.
   *
   * @param on the day it began
   * @param progress share done, 0 to 1; 0 where nobody has said, so that all of it is still ahead
   */
  record Begun(LocalDate on, double progress) implements Headway {
    public Begun {
      if (!(progress >= 0 && progress <= 1)) {
        throw new IllegalArgumentException("progress lies between 0 and 1: " + progress);
      }
    }

    @Override
    public <R> R match(Function<Waiting, R> w, Function<Begun, R> b, Function<Done, R> d) {
      return b.apply(this);
    }
  }

  /**
   * Finished.
   *
   * @param from the day it began
   * @param to the day it was finished, by that day's closing
   */
  record Done(LocalDate from, LocalDate to) implements Headway {
    public Done {
      if (to.isBefore(from)) {
        throw new IllegalArgumentException("finished on " + to + ", before it began on " + from);
      }
    }

    @Override
    public <R> R match(Function<Waiting, R> w, Function<Begun, R> b, Function<Done, R> d) {
      return d.apply(this);
    }
  }
}
