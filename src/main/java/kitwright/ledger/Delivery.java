package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * A delivery, come or on its way.
 *
 * @param received the day it came; empty while it is on its way
 * @param sent the day it left, where the sender has said so
 * @param expected the day it shall come
 * @param note number of the delivery note
 * @param packed what the delivery note says is in it
 * @param counted what was found in it; nothing says that it is not counted yet
 * @param sentBack what of it went back to the sender
 */
public record Delivery(
    String id,
    Optional<LocalDate> received,
    Optional<LocalDate> sent,
    Optional<LocalDate> expected,
    Ref from,
    Optional<String> note,
    List<Packed> packed,
    List<Counted> counted,
    List<SentBack> sentBack,
    List<Evidence> evidence,
    At at)
    implements Entry {
  /** A line of the delivery note. */
  public record Packed(Ref item, Quantity qty, At at) {
    static Packed read(Keys k) {
      return new Packed(
          k.key("item", "the item of the kit", "plank").ref(Kind.KIT),
          k.key("qty", "how much of it the note says", "12 each").quantity(),
          k.at());
    }
  }

  /**
   * A line of the count.
   *
   * @param qty found in all, good or not
   * @param damaged of these, damaged
   * @param wrong of these, not what was ordered
   * @param undersize of these, too small to be built with
   * @param evidence of this item alone; what the delivery itself names is of all it brought
   */
  public record Counted(
      Ref item,
      Quantity qty,
      Optional<Quantity> damaged,
      Optional<Quantity> wrong,
      Optional<Quantity> undersize,
      Optional<String> remark,
      List<Evidence> evidence,
      At at) {
    static Counted read(Keys k) {
      Ref item = k.key("item", "the item of the kit", "plank").ref(Kind.KIT);
      Quantity qty = k.key("qty", "found in all, good or not", "10 each").quantity();
      return new Counted(
          item,
          qty,
          k.key("damaged", "of these, damaged", "1 each").maybePartOf(qty),
          k.key("wrong", "of these, not what was ordered", "1 each").maybePartOf(qty),
          k.key("undersize", "of these, too small to be built with", "1 each").maybePartOf(qty),
          k.key("remark", "what else there is to say", "two are split").maybeText(),
          k.key("evidence", "files that show this item alone", "[evidence/plank.jpg]")
              .each("file", Evidence::read),
          k.at());
    }
  }

  /**
   * Goods that went back to the sender.
   *
   * @param on the day they left
   * @param by how they were sent
   */
  public record SentBack(
      LocalDate on,
      Ref item,
      Quantity qty,
      Optional<String> by,
      Optional<String> remark,
      List<Evidence> evidence,
      At at) {
    static SentBack read(Keys k) {
      return new SentBack(
          k.key("on", "the day it left", "2026-02-16").notBefore("received").happened(),
          k.key("item", "the item of the kit", "plank").ref(Kind.KIT),
          k.key("qty", "how much of it", "1 each").quantity(),
          k.key("by", "how it was sent", "carrier").maybeText(),
          k.key("remark", "what else there is to say", "with the carrier’s slip").maybeText(),
          k.key("evidence", "files that show it", "[evidence/slip.jpg]")
              .each("file", Evidence::read),
          k.at());
    }
  }

  static Delivery read(Keys k) {
    return new Delivery(
        k.id("delivery-2026-02-09-first"),
        k.key("received", "the day it came; leave it out while it is on its way", "2026-02-09")
            .begins("TODAY")
            .notBefore("sent")
            .maybeHappened(),
        k.key("sent", "the day it left the sender, as they say", "2026-01-28").maybeHappened(),
        k.key("expected", "the day it shall come; it stands all that day", "2026-04-16")
            .notBefore("sent")
            .maybePlanned(),
        k.key("from", "who sent it", "kit-maker").ref(Kind.PARTIES),
        k.key("note", "the number of the delivery note", "DN 0001").maybeText(),
        k.key("packed", "what the delivery note says is in it").each(Packed::read),
        k.key("counted", "what was found in it; leave it out while it is not counted")
            .each(Counted::read),
        k.key("sent-back", "what of it went back to the sender").each(SentBack::read),
        k.key("evidence", "files that show all it brought", "[evidence/crate-1.jpg]")
            .each("file", Evidence::read),
        k.at());
  }

  /** Whether it came and was counted: what has no day when it came has no counts. */
  public boolean isCounted() {
    return received.isPresent() && !counted.isEmpty();
  }

  @Override
  public Kind kind() {
    return Kind.DELIVERIES;
  }
}
