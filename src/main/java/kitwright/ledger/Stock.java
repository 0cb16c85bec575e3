package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * Something at hand that is not of the kit's list: bought, or an off-cut.
 *
 * @param qty so much of it; empty where it is pieces of a size
 * @param keepFor tasks it is kept for
 * @param worth what one piece or unit is worth to the builder
 * @param flaws strips across the length that no part may use
 * @param since the day it came to be
 */
public record Stock(
    String id,
    String what,
    Optional<Quantity> qty,
    Optional<Size> size,
    Optional<Integer> pieces,
    Optional<Ref> material,
    List<Ref> keepFor,
    Optional<Price> worth,
    Optional<String> grain,
    List<Flaw> flaws,
    Optional<LocalDate> since,
    Optional<Ref> bought,
    At at)
    implements Entry {
  /** What follows where something takes of what nothing here is called. */
  static final String TAKEN =
      "How much is left of what it may mean nobody can tell before this is put right.";

  /** A strip across the piece that must not be used: knots, splits, screw holes. */
  public record Flaw(Quantity from, Quantity to, Optional<String> what, At at) {
    static Flaw read(Keys k) {
      return new Flaw(
          k.key("from", "where it begins, along the length", "400 mm")
              .measure(Unit.MM, Dimension.LENGTH),
          k.key("to", "where it ends, along the length", "460 mm")
              .measure(Unit.MM, Dimension.LENGTH),
          k.key("what", "what it is", "a knot").maybeText(),
          k.at());
    }
  }

  static Stock read(Keys k) {
    return new Stock(
        k.id("oak-plank"),
        k.key("what", "what it is, in a few words", "oak board left from the engine beds").text(),
        k.key("qty", "how much there is, where it is no piece of a size", "3 kg")
            .begins("1 each")
            .maybeQuantity(),
        k.key(
                "size",
                "length x width x thickness of a piece, the length first",
                "4300 x 125 x 22 mm")
            .maybeSize(),
        k.key("pieces", "how many pieces of that size", "3").maybeCount(),
        k.key("material", "its material, an id of the table of materials", "sitka-spruce")
            .maybeRef(Kind.MATERIALS),
        k.key("keep-for", "tasks it is kept for, so that no other plan takes it", "[lay-sole]")
            .refs(Kind.TASKS),
        k.key("worth", "what one piece or unit is worth to you", "24 EUR").maybePrice(),
        k.key("grain", "how the grain runs, against the length", "along").maybeText(),
        k.key("flaws", "strips across the length that no part may use").each(Flaw::read),
        k.key("since", "the day it came to be", "2026-02-02")
            .begins("TODAY")
            .ever()
            .opens()
            .maybeHappened(),
        k.key("bought", "the spend that bought it", "spend-2026-02-12-screws")
            .maybeRef(Kind.SPENDING),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.STOCK;
  }

  /** How much there is: the quantity, or so many pieces. */
  public Quantity amount() {
    return qty.orElseGet(() -> new Quantity(BigDecimal.valueOf(pieces.orElse(1)), Unit.EACH));
  }
}
