package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Ref;
import kitwright.yaml.Fields;

/**
 * A borrowed tool.
 *
 * @param due the day it shall be back
 * @param condition as it was when it came
 * @param back its condition when it went back
 * @param worth what a new one costs
 * @param hireRate what hiring one would cost
 * @param neededFor the tasks that need it
 */
public record Loan(
    String id,
    String tool,
    Ref from,
    LocalDate on,
    Optional<LocalDate> due,
    Optional<LocalDate> returned,
    String condition,
    Optional<String> back,
    Optional<Money> worth,
    Optional<Price> hireRate,
    List<Ref> neededFor,
    At at)
    implements Entry {

  static Loan read(Fields f) {
    return new Loan(
        f.id(),
        f.text("tool"),
        f.ref("from"),
        f.day("on"),
        f.maybeDay("due"),
        f.maybeDay("returned"),
        f.text("condition"),
        f.maybeText("back"),
        f.maybeMoney("worth"),
        f.maybePrice("hire-rate"),
        f.refs("needed-for"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.BORROWED;
  }
}
