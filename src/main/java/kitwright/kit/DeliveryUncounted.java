package kitwright.kit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where a delivery came days ago and nobody has counted it. */
public final class DeliveryUncounted implements Rule {
  /** Three days: what carriers allow for telling of damage that could not be seen at the door. */
  private static final long PATIENCE = 3;

  @Override
  public void examine(Facts day, Findings out) {
    for (Delivery delivery : day.ledger().deliveries()) {
      Optional<LocalDate> received = delivery.received();
      if (received.isPresent() && delivery.counted().isEmpty()) {
        long days = ChronoUnit.DAYS.between(received.get(), day.day());
        if (days >= PATIENCE) {
          out.add(finding(delivery, days, day.ledger().party(delivery.from())));
        }
      }
    }
  }

  private Finding finding(Delivery delivery, long days, Optional<Party> supplier) {
    String notice =
        supplier
            .flatMap(Party::notice)
            .map(time -> "; the supplier wants to be told within " + time + " of receipt")
            .orElse("");
    return warn(
        delivery.at().of("received"),
        "The delivery " + delivery.id() + " came " + Days.ago(days) + " and nobody has counted it.",
        "What is missing or damaged is not known, and every day makes it harder to claim"
            + notice
            + ".",
        "Open the crates with the count sheet in hand and write what you find under “counted”.",
        List.of(delivery.named()));
  }
}
