package kitwright.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where a delivery counts an item on more than one line. */
public final class CountedTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Delivery delivery : day.written().deliveries()) {
      Map<String, Delivery.Counted> first = new HashMap<>();
      for (Delivery.Counted counted : delivery.counted()) {
        Delivery.Counted before = first.putIfAbsent(counted.item().id(), counted);
        if (before != null) {
          out.add(finding(delivery, before, counted));
        }
      }
    }
  }

  private Finding finding(Delivery delivery, Delivery.Counted before, Delivery.Counted again) {
    String item = again.item().id();
    return warn(
        again.at().record(),
        "The "
            + delivery.named()
            + " counts "
            + item
            + " again; line "
            + before.at().record().line()
            + " has it already.",
        "Both lines are added: "
            + before.qty().told()
            + " and "
            + again.qty().told()
            + ". If one was typed twice, a missing part looks as if it were there.",
        "Join the two lines into one “qty”, or correct the item of one of them.",
        List.of(delivery.named(), "kit item " + item));
  }
}
