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
import kitwright.value.Word;

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
    static Option read(Keys k) {
      return new Option(
          k.key("id", "a name, where two ways of one kind must be told apart", "buy-teak")
              .maybeText(),
          k.key("kind", "what kind of way out it is", "buy").choice(Way.class, Way.WAIT),
          k.key("cost", "what it costs: one amount, or low, likely, high", "[90, 120, 200]")
              .maybeGuess(),
          k.key("hours", "your own work", "6 h")
              .between("0 h", "2000 h")
              .maybeMeasure(Unit.HOUR, Dimension.TIME),
          k.key("arrives", "the day it is at hand", "2026-04-20").notBefore("found").maybePlanned(),
          k.key("substitution", "which one it is, where it is one", "sub-rail")
              .maybeRef(Kind.SUBSTITUTIONS),
          k.key("from", "who would send or sell it", "yard").maybeRef(Kind.PARTIES),
          k.key("note", "what speaks for or against it", "comes with a new bush").maybeText(),
          k.at());
    }

    /** How a decision names it: its id, or its kind. */
    public String name() {
      return id.orElse(Word.key(way));
    }
  }

  /** Which way out was chosen, by whom, and why. */
  public record Decision(String option, LocalDate on, Ref by, Optional<String> why, At at) {
    static Decision read(Keys k) {
      return new Decision(
          k.key("option", "the way out, by its id or its kind", "buy").text(),
          k.key("on", "when it was decided", "2026-03-05").notBefore("found").happened(),
          k.key("by", "who decided", "me").ref(Kind.PARTIES),
          k.key("why", "why", "she sails without it").maybeText(),
          k.at());
    }
  }

  static Shortage read(Keys k) {
    return new Shortage(
        k.id("short-2026-03-02-keel"),
        k.key("item", "what is missing", "keel-bolts").ref(Kind.KIT),
        k.key("qty", "how much is missing, with its unit", "4 each").quantity(),
        k.key("found", "the day you noticed", "2026-03-02").begins("TODAY").happened(),
        k.key("cause", "why it is missing", "damaged").choice(Cause.class, Cause.NOT_PACKED),
        k.key(
                "options",
                "the ways out that you see",
                "[{kind: buy, cost: 310 EUR, arrives: 2026-02-20}]")
            .each(Option::read),
        k.key("decided", "which way out was chosen").maybeGroup(Decision::read),
        k.key("line", "the budget line its cost falls on, where no spend and no task tells", "hull")
            .maybeRef(Kind.BUDGET),
        k.key("evidence", "files that show it", "[evidence/crate-2.jpg]")
            .each("file", Evidence::read),
        k.key("remark", "what else there is to say", "the lid was open").maybeText(),
        k.at());
  }

  /** The way out that was chosen, where it is one of these. */
  public Optional<Option> chosen() {
    return decided.flatMap(
        made -> options.stream().filter(option -> option.name().equals(made.option())).findFirst());
  }

  @Override
  public Kind kind() {
    return Kind.SHORTAGES;
  }
}
