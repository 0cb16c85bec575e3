package kitwright.substitution;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Grade;
import kitwright.ledger.Substitution;

/**
 * How a substitution stands on a day. Worked out from the records, never typed by hand.
 *
 * @param grading the grade by which it is judged, and why where it says less itself
 * @param verdict of its assessment; empty where it has none
 * @param signatures given up to that day, in the order written
 * @param lacks what stands in the way; empty where it may be built
 * @param signers who may sign it today, in the ledger's order, and what
 */
public record SubstitutionStanding(
    Substitution substitution,
    Grading grading,
    State state,
    Optional<Verdict> verdict,
    List<Signature> signatures,
    List<Lack> lacks,
    List<Signer> signers,
    HoldPoint hold) {
  /** The three ways it may stand. */
  public enum State {
    WITHDRAWN,
    /** Something is lacking. */
    WAITING,
    /** Assessed as its grade asks, and signed by somebody entitled. */
    APPROVED
  }

  public SubstitutionStanding {
    signatures = List.copyOf(signatures);
    lacks = List.copyOf(lacks);
    signers = List.copyOf(signers);
  }

  public boolean isApproved() {
    return state == State.APPROVED;
  }

  public boolean isWithdrawn() {
    return state == State.WITHDRAWN;
  }

  /** Whether this grade must be assessed before it may be signed. */
  public boolean needsAssessment() {
    return grade() == Grade.STRUCTURAL;
  }

  /** The grade of the part, which the substitution cannot talk down. */
  public Grade grade() {
    return grading.grade();
  }

  public boolean lacks(Lack lack) {
    return lacks.contains(lack);
  }

  /** What stands in the way, as one clause. */
  public String because() {
    return lacks.stream().map(Lack::words).collect(Collectors.joining("; "));
  }

  /** Who may sign it, by name: {@code A. Osterlund or T. Bryde}. */
  public String whoMaySign() {
    return signers.isEmpty()
        ? "somebody entitled (no party of the ledger is)"
        : signers.stream().map(signer -> signer.party().name()).collect(Collectors.joining(" or "));
  }

  /** The day of the first signature that counts. */
  public Optional<LocalDate> signedOn() {
    return signatures.stream()
        .filter(Signature::counts)
        .map(signature -> signature.signOff().on())
        .min(Comparator.naturalOrder());
  }
}
