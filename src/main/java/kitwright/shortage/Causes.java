package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitwright.kit.Position;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/**
 * What a count lacks, cause by cause: some damaged, some wrong, the rest not packed. Of what was
 * counted good and sent back no cause is known.
 */
public final class Causes {
  /** So much that is short for one cause. */
  public record Part(Shortage.Cause cause, Quantity qty) {
    /** What its record is called. */
    public String id(KitItem item, LocalDate found) {
      return "short-" + found + "-" + item.id() + "-" + word(cause);
    }

    /** The record, ready to paste. */
    String record(KitItem item, LocalDate found) {
      String word = word(cause);
      return "{id: "
          + id(item, found)
          + ", item: "
          + item.id()
          + ", qty: "
          + qty
          + ", found: "
          + found
          + ", cause: "
          + word
          + "}";
    }
  }

  private Causes() {}

  public static String word(Shortage.Cause cause) {
    return switch (cause) {
      case NOT_PACKED -> "not-packed";
      case DAMAGED -> "damaged";
      case WRONG -> "wrong";
      case UNDERSIZE -> "undersize";
      case USED_UP -> "used-up";
    };
  }

  /** What is not recorded yet of an item. */
  public static List<Part> of(Balance balance) {
    Quantity left = balance.unrecorded();
    List<Part> parts = new ArrayList<>();
    for (Shortage.Cause cause :
        List.of(Shortage.Cause.DAMAGED, Shortage.Cause.UNDERSIZE, Shortage.Cause.WRONG)) {
      Quantity part = shown(balance.position(), cause).less(recorded(balance, cause)).min(left);
      left = left.less(part);
      add(parts, cause, part);
    }
    add(parts, Shortage.Cause.NOT_PACKED, left.less(sentBackGood(balance)));
    return parts;
  }

  /** Of that, what was counted good and sent back all the same: its cause nobody has written. */
  static Quantity sentBackGood(Balance balance) {
    Position position = balance.position();
    return position.sentBack().less(position.noGood()).min(balance.unrecorded());
  }

  private static void add(List<Part> parts, Shortage.Cause cause, Quantity qty) {
    if (!qty.isNone()) {
      parts.add(new Part(cause, qty));
    }
  }

  /** What the counts show of a cause. */
  static Quantity shown(Position position, Shortage.Cause cause) {
    return switch (cause) {
      case NOT_PACKED -> position.promised().less(position.counted());
      case DAMAGED -> position.damaged();
      case WRONG -> position.wrong();
      case UNDERSIZE -> position.undersize();
      case USED_UP -> position.promised();
    };
  }

  /** What is recorded of a cause; undersize pieces may have been counted among the wrong ones. */
  static Quantity recorded(Balance balance, Shortage.Cause cause) {
    Quantity own = written(balance, cause);
    return cause == Shortage.Cause.WRONG
        ? own.plus(written(balance, Shortage.Cause.UNDERSIZE).less(balance.position().undersize()))
        : own;
  }

  private static Quantity written(Balance balance, Shortage.Cause cause) {
    Quantity none = Quantity.none(balance.position().promised().unit());
    return balance.shortages().stream()
        .map(ShortageStanding::shortage)
        .filter(shortage -> shortage.cause() == cause)
        .map(Shortage::qty)
        .filter(qty -> qty.convertsTo(none))
        .reduce(none, Quantity::plus);
  }
}
