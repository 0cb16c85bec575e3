package kitwright.substitution;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.Verdict;
import kitwright.ledger.Grade;
import kitwright.ledger.Substitution;

/**
 * How a substitution stands on a day. Worked out from the records, never typed by hand.
 *
 * @param fingerprint of what the ledger says now
 * @param verdict of its assessment; empty where it has none
 * @param signatures given up to that day, in the order written
 * @param lacks what stands in the way; empty where it may be built
 */
public record Standing(
    Substitution substitution,
    State state,
    Fingerprint fingerprint,
    Optional<Verdict> verdict,
    List<Signature> signatures,
    List<Lack> lacks,
    HoldPoint hold) {
  /** The three ways it may stand. */
  public enum State {
    WITHDRAWN,
    /** Something is lacking. */
    WAITING,
    /** Assessed as its grade asks, and signed by somebody entitled. */
    APPROVED
  }

  public Standing {
    signatures = List.copyOf(signatures);
    lacks = List.copyOf(lacks);
  }

  public boolean isApproved() {
    return state == State.APPROVED;
  }

  public boolean isWithdrawn() {
    return state == State.WITHDRAWN;
  }

  /** Whether this grade must be assessed before it may be signed. */
  public boolean needsAssessment() {
    return substitution.grade() == Grade.STRUCTURAL;
  }

  public boolean lacks(Lack lack) {
    return lacks.contains(lack);
  }

  /** The day of the first signature that counts. */
  public Optional<LocalDate> signedOn() {
    return signatures.stream()
        .filter(Signature::counts)
        .map(signature -> signature.signOff().on())
        .min(Comparator.naturalOrder());
  }
}
