package kitwright.kit;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** A delivery that does not say when it came has no counts. */
public final class CountWithoutDay implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Delivery delivery : day.written().deliveries()) {
      if (delivery.received().isEmpty() && !delivery.counted().isEmpty()) {
        out.add(finding(delivery));
      }
    }
  }

  private Finding finding(Delivery delivery) {
    return stop(
        delivery.at().of("counted"),
        "The delivery " + delivery.id() + " is counted, but does not say when it came.",
        "None of its counts is in any sum: its items stand as never counted.",
        "Write “received:” with the day it came; if it is still on its way, write the lines of its"
            + " note under “packed”.",
        List.of(delivery.named()));
  }
}
