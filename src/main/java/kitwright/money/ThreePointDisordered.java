package kitwright.money;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** Fires where low, likely and high do not rise. */
public final class ThreePointDisordered implements Rule {
  @Override
  public String name() {
    return "three-point-disordered";
  }

  @Override
  public void examine(Facts day, Findings out) {
    day.ledger()
        .budget()
        .forEach(
            line ->
                line.remaining().ifPresent(left -> money(line, line.at(), "remaining", left, out)));
    day.ledger()
        .shortages()
        .forEach(
            shortage ->
                shortage
                    .options()
                    .forEach(
                        option ->
                            option
                                .cost()
                                .ifPresent(
                                    cost -> money(shortage, option.at(), "cost", cost, out))));
    day.ledger().tasks().stream()
        .filter(
            task ->
                task.takes().low().compareAmount(task.takes().likely()) > 0
                    || task.takes().likely().compareAmount(task.takes().high()) > 0)
        .forEach(task -> out.add(disordered(task, task.at(), "takes", task.takes())));
  }

  private void money(Entry entry, At at, String key, ThreePoint<Money> range, Findings out) {
    boolean one =
        range.low().currency().equals(range.likely().currency())
            && range.likely().currency().equals(range.high().currency());
    if (!one
        || range.low().compareAmount(range.likely()) > 0
        || range.likely().compareAmount(range.high()) > 0) {
      out.add(disordered(entry, at, key, range));
    }
  }

  private Finding disordered(Entry entry, At at, String key, ThreePoint<?> range) {
    return new Finding(
        name(),
        Severity.STOP,
        at.of(key),
        "“"
            + key
            + "” of the "
            + entry.named()
            + " does not rise: "
            + range.low()
            + ", "
            + range.likely()
            + ", "
            + range.high()
            + ".",
        "No range can be worked out from it; the middle value alone is used.",
        "Write [low, likely, high] in one unit or currency, each at least as much as the one"
            + " before.",
        List.of(entry.named()));
  }
}
