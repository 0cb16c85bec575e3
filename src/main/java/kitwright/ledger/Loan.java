package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;

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
    static Repair read(Keys k) {
      return new Repair(
          k.key("what", "the damage", "bent guide").text(),
          k.key("found", "the day it was seen", "2026-02-23").notBefore("on").happened(),
          k.key(
                  "cost",
                  "what making it good will cost: one amount, or low, likely, high",
                  "[10, 15, 30]")
              .maybeGuess(),
          k.key("line", "the budget line its cost falls on", "tools").maybeRef(Kind.BUDGET),
          k.key("by", "the day by which it shall be done", "2026-03-07")
              .notBefore("found")
              .maybePlanned(),
          k.key("done", "the day it was made good", "2026-03-05")
              .notBefore("found")
              .maybeHappened(),
          k.key("evidence", "files that show it", "[evidence/guide.jpg]")
              .each("file", Evidence::read),
          k.at());
    }

    /** Whether it is not made good. */
    public boolean isOwed() {
      return done.isEmpty();
    }
  }

  static Loan read(Keys k) {
    return new Loan(
        k.id("jigsaw"),
        k.key("tool", "what it is, in a few words", "jigsaw with a fine blade").text(),
        k.key("from", "who lends it", "neighbour").ref(Kind.PARTIES),
        k.key("on", "the day it came", "2026-02-16").begins("TODAY").ever().happened(),
        k.key("due", "the day it shall be back; late from the next day on", "2026-02-28")
            .notBefore("on")
            .maybePlanned(),
        k.key("returned", "the day it went back", "2026-02-23").notBefore("on").maybeHappened(),
        k.key(
                "condition",
                "its condition when it came; a photograph helps",
                "sole plate scratched, else good")
            .text(),
        k.key("back", "its condition when it went back", "as it came").maybeText(),
        k.key("worth", "what a new one costs", "120 EUR").maybeMoney(),
        k.key("hire-rate", "what hiring one would cost", "8 EUR/d").maybePrice(),
        k.key("needed-for", "the tasks that need it", "[lay-sole]").refs(Kind.TASKS),
        k.key(
                "repair",
                "what must be made good on it",
                "{what: bent guide, found: 2026-02-23, cost: 15 EUR, by: 2026-03-07}")
            .maybeGroup(Repair::read),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.BORROWED;
  }
}
