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
 * @param at where that is written
 */
public record HoldPoint(
    Optional<Ref> task, State state, Optional<LocalDate> begun, Optional<Place> at) {
  /** How it stands. */
  public enum State {
    /** The substitution names no held task. */
    NONE,
    /** The task has not started and waits for the signature. */
    HOLDS,
    /** Signed, and not started before. */
    RELEASED,
    /** Started without a signature, or before it. */
    PASSED
  }
}
