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
 * Parts to be cut from stock.
 *
 * @param from the stock it may draw on
 * @param kerf of the saw; where rip and cross-cut differ, {@code ripKerf} is the rip saw's
 * @param instead the substitution that the parts are for; its own wood may be used
 * @param trim taken off each edge first
 * @param edgeTrim taken off the long edges, where that differs from the ends
 * @param keep the smallest remnant worth keeping
 * @param first whether a panel is first ripped along or across
 * @param stages how many turns at the saw a part of a panel may take: 2, strips and parts; 3,
 *     blocks first
 * @param buy what could be bought for it
 * @param done the day it was cut
 * @param used how many pieces of which stock it took; not said where the log tells it
 */
public record Cut(
    String id,
    Optional<Ref> task,
    Optional<Ref> instead,
    List<Ref> from,
    Quantity kerf,
    Optional<Quantity> ripKerf,
    Optional<Quantity> trim,
    Optional<Quantity> edgeTrim,
    Optional<Size> keep,
    Optional<Quantity> keepLength,
    Optional<First> first,
    Optional<Integer> stages,
    List<Part> parts,
    List<Offer> buy,
    Optional<LocalDate> done,
    List<Taken> used,
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
   * @param oversize so much longer and wider it is sawn, to be planed off
   * @param material what it must be made of
   * @param from the stock it may come from, of that of the cut
   * @param scarf where it may be joined from two lengths: run of the scarf, times the thickness
   * @param butt where it may be butt-joined
   * @param priority 1 first
   */
  public record Part(
      String mark,
      Quantity length,
      Optional<Quantity> width,
      Optional<Quantity> thickness,
      Optional<Quantity> oversize,
      Optional<Ref> material,
      List<Ref> from,
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
          k.key("oversize", "so much longer and wider it is sawn, to be planed off", "4 mm")
              .between("0 mm", "100 mm")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key(
                  "material",
                  "what it must be made of; stock of anything else is left alone",
                  "larch")
              .maybeRef(Kind.MATERIALS),
          k.key(
                  "from",
                  "the stock it may come from, where not all of the cut’s will do",
                  "[oak-plank]")
              .refs(Kind.STOCK),
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

  /**
   * Something that could be bought for a cut.
   *
   * @param price of one piece, metre, square metre or kilogram
   * @param lead from ordering it to having it
   * @param supplier who has it
   */
  public record Offer(
      String what,
      Optional<Size> size,
      Optional<Price> price,
      Optional<Ref> material,
      Optional<Grain> grain,
      Optional<Quantity> lead,
      Optional<String> supplier,
      At at) {
    static Offer read(Keys k) {
      return new Offer(
          k.key("what", "what the supplier calls it", "oak board").text(),
          k.key("size", "length x width x thickness of a piece", "4000 x 150 x 25 mm").maybeSize(),
          k.key("price", "of a piece, or for a metre, square metre or kilogram", "38 EUR")
              .maybePrice(),
          k.key("material", "its material", "larch").maybeRef(Kind.MATERIALS),
          k.key("grain", "how its grain runs, against its length", "along")
              .maybeChoice(Grain.class),
          k.key("lead", "from ordering it to having it", "5 d")
              .between("0 d", "400 d")
              .maybeMeasure(Unit.DAY, Dimension.TIME),
          k.key("supplier", "who has it", "the sawmill").maybeText(),
          k.at());
    }
  }

  /** So many pieces of a stock that the cut took. */
  public record Taken(Ref stock, int pieces, At at) {
    static Taken read(Keys k) {
      return new Taken(
          k.key("stock", "which", "oak-plank").unknown(Stock.TAKEN).ref(Kind.STOCK),
          k.key("pieces", "how many pieces of it; one where nothing is said", "2")
              .maybeCount()
              .orElse(1),
          k.at());
    }
  }

  static Cut read(Keys k) {
    return new Cut(
        k.id("sole-boards"),
        k.key("task", "the task it is for", "lay-sole").maybeRef(Kind.TASKS),
        k.key(
                "for",
                "the substitution that the parts are for; its own wood may be used",
                "sub-rail")
            .maybeRef(Kind.SUBSTITUTIONS),
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
        k.key("edge-trim", "what is taken off the long edges, where that differs", "0 mm")
            .between("0 mm", "300 mm")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("keep", "the smallest remnant worth keeping, length x width", "300 x 100 mm")
            .maybeSize(),
        k.key("keep-length", "the shortest remnant worth keeping", "300 mm")
            .between("0 mm", "20 m")
            .maybeMeasure(Unit.ONE, Dimension.LENGTH),
        k.key("first", "whether a panel is first ripped along or across", "along")
            .maybeChoice(First.class),
        k.key(
                "stages",
                "turns at the saw for a part of a panel: 2 for strips and parts, 3 for blocks"
                    + " first",
                "2")
            .maybeCount(),
        k.key("parts", "the parts wanted").begins("[]").each(Part::read),
        k.key("buy", "what could be bought for it").each(Offer::read),
        k.key("done", "the day it was cut", "2026-02-19").maybeHappened(),
        k.key("used", "how many pieces of which stock it took").each(Taken::read),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.CUTS;
  }
}
