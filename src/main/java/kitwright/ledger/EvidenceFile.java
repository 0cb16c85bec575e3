package kitwright.ledger;

import java.util.Optional;

/**
 * What was found where evidence is said to be.
 *
 * @param sha256 of a file that is there, 64 hexadecimal digits
 */
public record EvidenceFile(State state, Optional<String> sha256) {
  /** Whether it is there. */
  public enum State {
    PRESENT,
    ABSENT,
    /** The path leads out of the ledger; it was not opened. */
    OUTSIDE,
    /** A folder or a device. */
    NOT_A_FILE,
    UNREADABLE
  }

  static EvidenceFile without(State state) {
    return new EvidenceFile(state, Optional.empty());
  }
}
