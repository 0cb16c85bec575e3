package kitwright.kit;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where a done cut and the log of its day or work both say that they used the same stock. */
public final class UsedTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SameWood.Again each : SameWood.all(day.ledger())) {
      String stock = each.used().stock().orElseThrow().id();
      out.add(
          note(
              each.used().at().record(),
              "The cut "
                  + each.cut().id()
                  + " says that it took "
                  + each.qty().told(stock)
                  + " on "
                  + Days.named(each.on())
                  + ", and the log of "
                  + (each.log().day().equals(each.on())
                      ? "that day says so too."
                      : Days.named(each.log().day()) + " says that its work used so much."),
              "It is taken to be the same wood and counts once.",
              "Leave the line out of the log; if more was used, write into it the task that it went"
                  + " into, where that is another than the cut’s, or record the sum as “pieces” of"
                  + " the cut.",
              List.of(each.cut().named(), "stock " + stock, each.log().named())));
    }
  }
}
