package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * A delivery, come or on its way.
 *
 * @param received the day it came; empty while it is on its way
 * @param expected the day it shall come
 * @param note number of the delivery note
 * @param packed what the delivery note says is in it
 * @param counted what was found in it; nothing says that it is not counted yet
 * @param sentBack what of it went back to the sender
 */
public record Delivery(
    String id,
    Optional<LocalDate> received,
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
    static Packed read(Fields f) {
      return new Packed(f.ref("item"), f.quantity("qty", Unit.EACH), At.of(f));
    }
  }

  /**
   * A line of the count.
   *
   * @param qty found in all, good or not
   * @param damaged of these, damaged
   * @param wrong of these, not what was ordered
   * @param evidence of this item alone; what the delivery itself names is of all it brought
   */
  public record Counted(
      Ref item,
      Quantity qty,
      Optional<Quantity> damaged,
      Optional<Quantity> wrong,
      Optional<String> remark,
      List<Evidence> evidence,
      At at) {
    static Counted read(Fields f) {
      Quantity qty = f.quantity("qty", Unit.EACH);
      return new Counted(
          f.ref("item"),
          qty,
          f.maybeQuantity("damaged", qty.unit()),
          f.maybeQuantity("wrong", qty.unit()),
          f.maybeText("remark"),
          Evidence.list(f, "evidence"),
          At.of(f));
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
    static SentBack read(Fields f) {
      return new SentBack(
          f.day("on"),
          f.ref("item"),
          f.quantity("qty", Unit.EACH),
          f.maybeText("by"),
          f.maybeText("remark"),
          Evidence.list(f, "evidence"),
          At.of(f));
    }
  }

  static Delivery read(Fields f) {
    return new Delivery(
        f.id(),
        f.maybeDay("received"),
        f.maybeDay("expected"),
        f.ref("from"),
        f.maybeText("note"),
        f.each("packed", Packed::read),
        f.each("counted", Counted::read),
        f.each("sent-back", SentBack::read),
        Evidence.list(f, "evidence"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.DELIVERIES;
  }
}
