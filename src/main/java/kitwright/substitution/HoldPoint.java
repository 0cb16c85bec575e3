package kitwright.substitution;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Place;
import kitwright.value.Ref;

/**
 * The task that must not start before the signature, and whether it did.
 *
 * @param task empty where the substitution names none
 * @param begun the first day on which the held task is known to be under way; empty where it has
 *     not started, or its record tells progress but no day
 * @param finished whether the held task has ended, so that nothing can be stopped any more
 * @param at where that is written
 */
public record HoldPoint(
    Optional<Ref> task,
    State state,
    Optional<LocalDate> begun,
    boolean finished,
    Optional<Place> at) {
  /** How it stands. */
  public enum State {
    /** The substitution names no held task. */
    NONE,
    /** The task has not started, and what it closes up may not be built today. */
    HOLDS,
    /** What it closes up may be built today, and it did not start before that was signed. */
    RELEASED,
    /** Started after a signature, but what was signed has changed since or does not pass. */
    OVERTAKEN,
    /** Started without a signature, or before it, or on a day that nothing tells. */
    PASSED
  }

  /** Whether work went on that nobody entitled has released as it now stands. */
  public boolean isBreached() {
    return state == State.PASSED || state == State.OVERTAKEN;
  }
}
