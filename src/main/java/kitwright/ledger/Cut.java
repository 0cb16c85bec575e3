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
    static Part read(Keys k) {
      return new Part(
          k.key("mark", "what you write on the part", "board").text(),
          k.key("length", "its length, along the piece it is cut from", "1900 mm")
              .between("1 mm", "50 m")
              .measure(Unit.ONE, Dimension.LENGTH),
          k.key("width", "its width", "120 mm")
              .between("1 mm", "5 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("thickness", "its thickness", "22 mm")
              .between("0.1 mm", "1 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("qty", "how many; one where nothing is said", "4").maybeCount().orElse(1),
          k.key("grain", "how its grain shall run, against the length of the piece", "along")
              .maybeChoice(Grain.class),
          k.key(
                  "scarf",
                  "where it may be joined from two lengths: the run of the scarf, times the"
                      + " thickness",
                  "8")
              .maybeNumber(),
          k.key("butt", "whether it may be butt-joined", "yes").flag(),
          k.key("priority", "1 for what must be cut first", "1").maybeCount(),
          k.key("face", "which face shall show", "clear").maybeText(),
          k.at());
    }
  }

  static Cut read(Keys k) {
    return new Cut(
        k.id("sole-boards"),
        k.key("task", "the task it is for", "lay-sole").maybeRef(Kind.TASKS),
        k.key("from", "the stock it may draw on", "[oak-plank]").begins("[]").refs(Kind.STOCK),
        k.key("kerf", "what the saw turns into dust", "3 mm")
            .begins("3 mm")
            .between("0 mm", "12 mm")
            .measure(Unit.ONE, Dimension.LENGTH),
        k.key("rip-kerf", "the kerf of the rip saw, where it differs", "4 mm")
            .between("0 mm", "12 mm")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("trim", "what is taken off every edge first", "10 mm")
            .between("0 mm", "300 mm")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("keep", "the smallest remnant worth keeping, length x width", "300 x 100 mm")
            .maybeSize(),
        k.key("keep-length", "the shortest remnant worth keeping", "300 mm")
            .between("0 mm", "20 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("first", "whether a panel is first ripped along or across", "along")
            .maybeChoice(First.class),
        k.key("parts", "the parts wanted").begins("[]").each(Part::read),
        k.key("done", "the day it was cut", "2026-02-19").maybeHappened(),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.CUTS;
  }
}
