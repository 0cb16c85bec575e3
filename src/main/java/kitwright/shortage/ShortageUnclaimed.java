package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Days;
import kitwright.value.Quantity;

/**
 * Fires where the supplier owes something and no claim names it, even if the builder has helped
 * himself since.
 */
public final class ShortageUnclaimed implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    ShortageStandings.on(day).all().stream()
        .filter(standing -> !standing.unclaimed().isNone())
        .forEach(standing -> out.add(finding(standing, day)));
  }

  private Finding finding(ShortageStanding standing, Facts day) {
    Shortage shortage = standing.shortage();
    Quantity all = shortage.qty();
    Quantity unclaimed = standing.claims().isEmpty() ? all : standing.unclaimed();
    String worth = standing.value(unclaimed).map(value -> " (worth " + value + ")").orElse("");
    String part = unclaimed.compareAmount(all) < 0 ? unclaimed.told() + " of " : "";
    String notice =
        Notice.of(shortage, ShortageStandings.on(day), day.ledger())
            .map(each -> " " + each.told(day.day()) + ".")
            .orElse(" How long that may wait depends on contract and country.");
    return warn(
        shortage.at().record(),
        "Found short "
            + Days.ago(standing.age())
            + " and in no claim: "
            + part
            + all.told(shortage.item().id())
            + worth
            + ".",
        "The supplier does not know, and the right to have it may run out." + notice,
        "Write a claim that names "
            + shortage.id()
            + (part.isEmpty() ? "" : ", with its “qty: " + unclaimed + "”")
            + ", or add it to one that is not sent yet.",
        List.of(shortage.named()));
  }
}
