package kitwright.substitution;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where the held task was started before the substitution was signed. */
public final class HoldPointPassed implements Rule {
  private final Standings substitutions;

  public HoldPointPassed(Standings substitutions) {
    this.substitutions = substitutions;
  }

  @Override
  public String name() {
    return "hold-point-passed";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    substitutions.all().stream()
        .filter(standing -> !standing.isWithdrawn())
        .filter(standing -> standing.hold().state() == HoldPoint.State.PASSED)
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(Standing standing) {
    HoldPoint hold = standing.hold();
    String task = hold.task().orElseThrow().id();
    Optional<LocalDate> signed =
        standing.signatures().stream()
            .filter(Signature::countedWhenGiven)
            .map(signature -> signature.signOff().on())
            .min(LocalDate::compareTo);
    return new Finding(
        name(),
        standing.substitution().grade() == Grade.FINISH ? Severity.WARN : Severity.STOP,
        hold.at().orElseThrow(),
        "The task "
            + task
            + " is under way"
            + hold.begun().map(day -> " since " + day).orElse("")
            + ", but "
            + standing.substitution().id()
            + signed.map(day -> " was signed only on " + day).orElse(" is not signed")
            + ".",
        "The hold point was passed: the part may be closed up before anybody entitled has looked at it.",
        "Stop the task, and ask the signer whether it may be inspected as it is or must be opened up; "
            + "withdraw the substitution if the part was built as drawn.",
        List.of(standing.substitution().named(), "task " + task));
  }
}
