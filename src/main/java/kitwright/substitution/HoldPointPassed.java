package kitwright.substitution;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where work that a substitution holds went on, and nobody entitled has released it. */
public final class HoldPointPassed implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn())
        .filter(standing -> standing.hold().isBreached())
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(SubstitutionStanding standing) {
    HoldPoint hold = standing.hold();
    String task = hold.task().orElseThrow().id();
    return new Finding(
        name(),
        standing.grade() == Grade.FINISH ? Severity.WARN : Severity.STOP,
        hold.at().orElseThrow(),
        "The task "
            + task
            + begun(hold)
            + ", but "
            + standing.substitution().id()
            + (hold.state() == HoldPoint.State.OVERTAKEN ? overtaken(standing) : unsigned(standing))
            + ".",
        follows(standing),
        mend(hold, standing.signedOn().isPresent()),
        List.of(standing.substitution().named(), "task " + task));
  }

  private static String begun(HoldPoint hold) {
    return (hold.finished() ? " has ended, begun" : " is under way, begun")
        + hold.begun().map(day -> " on " + Days.named(day)).orElse(" on a day that nothing tells");
  }

  private static String unsigned(SubstitutionStanding standing) {
    return firstInGoodFaith(standing)
        .map(
            day ->
                standing.hold().begun().isPresent()
                    ? " was signed only on " + Days.named(day)
                    : " was signed on " + Days.named(day) + ", perhaps only after that")
        .orElse(
            standing.signatures().isEmpty()
                ? " is not signed"
                : ": no signature under it counts (" + standing.because() + ")");
  }

  private static String overtaken(SubstitutionStanding standing) {
    return " does not stand today, though it was signed on "
        + Days.named(firstInGoodFaith(standing).orElseThrow())
        + ": "
        + standing.because();
  }

  private static Optional<LocalDate> firstInGoodFaith(SubstitutionStanding standing) {
    return standing.signatures().stream()
        .filter(Signature::countedWhenGiven)
        .map(signature -> signature.signOff().on())
        .min(LocalDate::compareTo);
  }

  private static String follows(SubstitutionStanding standing) {
    HoldPoint hold = standing.hold();
    if (hold.state() == HoldPoint.State.OVERTAKEN) {
      return "What "
          + (hold.finished() ? "was" : "is being")
          + " closed up is not what may be built: "
          + (standing.lacks(Lack.STALE)
              ? "it was signed under an older statement."
              : "it is signed, but not shown to do what was drawn.");
    }
    return "The hold point was passed: the part "
        + (hold.finished() ? "was" : "may be")
        + " closed up before anybody entitled "
        + (hold.finished() ? "had" : "has")
        + " looked at it.";
  }

  private static String mend(HoldPoint hold, boolean signed) {
    return (hold.finished()
            ? "Ask the signer whether it may stay closed or must be opened up; build nothing on it"
                + " until then;"
            : "Stop the task, and ask the signer whether it may be inspected as it is or must be"
                + " opened up;")
        + " withdraw the substitution if the part was built as drawn."
        + (hold.begun().isEmpty()
            ? " Write the day on which it began under “started”."
            : signed ? " That it began before the signature stays told." : "");
  }
}
