package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;
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
 * @param repair what must be made good on it
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
    Optional<Repair> repair,
    At at)
    implements Entry {

  /**
   * Damage that is owed to the lender.
   *
   * @param found the day it was seen
   * @param cost what making it good will cost, as one amount or low, likely, high
   * @param by the day by which it shall be done
   * @param done the day it was made good
   */
  public record Repair(
      String what,
      LocalDate found,
      Optional<ThreePoint<Money>> cost,
      Optional<Ref> line,
      Optional<LocalDate> by,
      Optional<LocalDate> done,
      List<Evidence> evidence,
      At at) {
    static Repair read(Fields f) {
      return new Repair(
          f.text("what"),
          f.day("found"),
          f.maybeThreePoint("cost", text -> Money.parse(text, f.currency())),
          f.maybeRef("line"),
          f.maybeDay("by"),
          f.maybeDay("done"),
          Evidence.list(f, "evidence"),
          At.of(f));
    }

    /** Whether it is seen and not made good by the end of a day. */
    public boolean isOwedOn(LocalDate day) {
      return !found.isAfter(day) && done.filter(made -> !made.isAfter(day)).isEmpty();
    }
  }

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
        f.maybeGroup("repair", Repair::read),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.BORROWED;
  }
}
