package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Parts to be cut from stock.
 *
 * @param from the stock it may draw on
 * @param kerf of the saw; where rip and cross-cut differ, {@code ripKerf} is the rip saw's
 * @param trim taken off each edge first
 * @param keep the smallest remnant worth keeping
 * @param first whether a panel is first ripped along or across
 * @param done the day it was cut
 */
public record Cut(
    String id,
    Optional<Ref> task,
    List<Ref> from,
    Quantity kerf,
    Optional<Quantity> ripKerf,
    Optional<Quantity> trim,
    Optional<Size> keep,
    Optional<Quantity> keepLength,
    Optional<First> first,
    List<Part> parts,
    Optional<LocalDate> done,
    At at)
    implements Entry {
  /** The direction of the first cuts. */
  public enum First {
    ALONG,
    ACROSS
  }

  /** How the grain of a part shall run against the piece's length. */
  public enum Grain {
    ALONG,
    ACROSS,
    ANY
  }

  /**
   * A part wanted.
   *
   * @param scarf where it may be joined from two lengths: run of the scarf, times the thickness
   * @param butt where it may be butt-joined
   * @param priority 1 first
   */
  public record Part(
      String mark,
      Quantity length,
      Optional<Quantity> width,
      Optional<Quantity> thickness,
      int qty,
      Optional<Grain> grain,
      Optional<BigDecimal> scarf,
      boolean butt,
      Optional<Integer> priority,
      Optional<String> face,
      At at) {
    static Part read(Fields f) {
      return new Part(
          f.text("mark"),
          f.measure("length", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("width", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("thickness", Unit.ONE, Dimension.LENGTH),
          f.maybeCount("qty").orElse(1),
          f.maybeChoice("grain", Grain.class),
          f.maybeNumber("scarf"),
          f.flag("butt"),
          f.maybeCount("priority"),
          f.maybeText("face"),
          At.of(f));
    }
  }

  static Cut read(Fields f) {
    return new Cut(
        f.id(),
        f.maybeRef("task"),
        f.refs("from"),
        f.measure("kerf", Unit.ONE, Dimension.LENGTH),
        f.maybeMeasure("rip-kerf", Unit.ONE, Dimension.LENGTH),
        f.maybeMeasure("trim", Unit.ONE, Dimension.LENGTH),
        f.maybeSize("keep"),
        f.maybeMeasure("keep-length", Unit.ONE, Dimension.LENGTH),
        f.maybeChoice("first", First.class),
        f.each("parts", Part::read),
        f.maybeDay("done"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.CUTS;
  }
}
