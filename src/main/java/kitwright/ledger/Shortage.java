package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Something the kit should have held and did not, as it was found.
 *
 * @param options the ways out that the builder sees
 * @param decided which was chosen
 * @param line the budget line that its cost falls on, where no spend and no task tells
 */
public record Shortage(
    String id,
    Ref item,
    Quantity qty,
    LocalDate found,
    Cause cause,
    List<Option> options,
    Optional<Decision> decided,
    Optional<Ref> line,
    List<Evidence> evidence,
    Optional<String> remark,
    At at)
    implements Entry {
  /** Why it is missing. */
  public enum Cause {
    NOT_PACKED,
    DAMAGED,
    WRONG,
    UNDERSIZE,
    USED_UP
  }

  /** What kind of way out. */
  public enum Way {
    WAIT,
    BUY,
    SUBSTITUTE,
    /** The work goes on without it: nothing has to come. */
    DO_WITHOUT
  }

  /**
   * A way out.
   *
   * @param id needed only where two of a kind must be told apart
   * @param cost money, as one amount or low, likely, high
   * @param hours of the builder's own work
   * @param arrives the day the thing is at hand
   */
  public record Option(
      Optional<String> id,
      Way way,
      Optional<ThreePoint<Money>> cost,
      Optional<Quantity> hours,
      Optional<LocalDate> arrives,
      Optional<Ref> substitution,
      Optional<Ref> from,
      Optional<String> note,
      At at) {
    static Option read(Fields f) {
      return new Option(
          f.maybeText("id"),
          f.choice("kind", Way.class, Way.WAIT),
          f.maybeThreePoint("cost", text -> Money.parse(text, f.currency())),
          f.maybeMeasure("hours", Unit.HOUR, Dimension.TIME),
          f.maybeDay("arrives"),
          f.maybeRef("substitution"),
          f.maybeRef("from"),
          f.maybeText("note"),
          At.of(f));
    }

    /** How a decision names it: its id, or its kind. */
    public String name() {
      return id.orElse(Fields.word(way));
    }
  }

  /** Which way out was chosen, by whom, and why. */
  public record Decision(String option, LocalDate on, Ref by, Optional<String> why, At at) {
    static Decision read(Fields f) {
      return new Decision(f.text("option"), f.day("on"), f.ref("by"), f.maybeText("why"), At.of(f));
    }
  }

  static Shortage read(Fields f) {
    return new Shortage(
        f.id(),
        f.ref("item"),
        f.quantity("qty", Unit.EACH),
        f.day("found"),
        f.choice("cause", Cause.class, Cause.NOT_PACKED),
        f.each("options", Option::read),
        f.maybeGroup("decided", Decision::read),
        f.maybeRef("line"),
        Evidence.list(f, "evidence"),
        f.maybeText("remark"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.SHORTAGES;
  }
}
