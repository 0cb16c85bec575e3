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
import kitwright.yaml.Fields;

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
  /** A strip across the piece that must not be used: knots, splits, screw holes. */
  public record Flaw(Quantity from, Quantity to, Optional<String> what, At at) {
    static Flaw read(Fields f) {
      return new Flaw(
          f.measure("from", Unit.MM, Dimension.LENGTH),
          f.measure("to", Unit.MM, Dimension.LENGTH),
          f.maybeText("what"),
          At.of(f));
    }
  }

  static Stock read(Fields f) {
    return new Stock(
        f.id(),
        f.text("what"),
        f.maybeQuantity("qty", Unit.EACH),
        f.maybeSize("size"),
        f.maybeCount("pieces"),
        f.maybeRef("material"),
        f.refs("keep-for"),
        f.maybePrice("worth"),
        f.maybeText("grain"),
        f.each("flaws", Flaw::read),
        f.maybeDay("since"),
        f.maybeRef("bought"),
        At.of(f));
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
