package kitwright.cutting;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.network.Headways;
import kitwright.value.Ref;

/** Fires where the work that a cut is for has ended, and nothing says that it was cut. */
public final class CutLeftOpen implements RecordRule<Cut> {
  @Override
  public List<Cut> records(Facts day) {
    return day.ledger().cutsToMake();
  }

  @Override
  public void examine(Cut cut, Facts day, Findings out) {
    cut.task()
        .filter(task -> Headways.on(day).hasEnded(task))
        .ifPresent(task -> out.add(finding(cut, task)));
  }

  private Finding finding(Cut cut, Ref task) {
    return warn(
        cut.at().record(),
        "The task "
            + task.id()
            + " has ended, but nothing says that its cut "
            + cut.id()
            + " was made.",
        "Its wood is told as if it lay on the rack still, and is kept from every other cut.",
        "“kitwright cut "
            + cut.id()
            + " --done --today DAY”, with the day on which it was cut, writes that and what the"
            + " plan takes: read it over. Take the cut out where it was never made.",
        List.of(cut.named(), "task " + task.id()));
  }
}
