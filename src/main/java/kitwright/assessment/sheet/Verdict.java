package kitwright.assessment.sheet;

import java.util.List;

/**
 * What a check comes to.
 *
 * @param reasons why, each a clause that can end a sentence: “stiffness is 0.91, where at least 1
 *     is required”; what fails where it fails, what is lacking where it cannot be told
 */
public record Verdict(Outcome outcome, List<String> reasons) {
  /** The three ways a check may end. */
  public enum Outcome {
    PASS,
    FAIL,
    CANNOT_TELL
  }

  public Verdict {
    reasons = List.copyOf(reasons);
  }

  /** Everything asked for is met. */
  public static Verdict pass() {
    return new Verdict(Outcome.PASS, List.of());
  }

  /** Something asked for is not met. */
  public static Verdict fail(List<String> reasons) {
    return new Verdict(Outcome.FAIL, reasons);
  }

  /** Something is lacking, so that nothing can be said. */
  public static Verdict cannotTell(List<String> reasons) {
    return new Verdict(Outcome.CANNOT_TELL, reasons);
  }

  public boolean passes() {
    return outcome == Outcome.PASS;
  }

  public boolean fails() {
    return outcome == Outcome.FAIL;
  }

  /** The reasons as one clause. */
  public String because() {
    return String.join("; ", reasons);
  }
}
