package kitwright.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.ledger.Stock;
import kitwright.value.Decimal;
import kitwright.value.Price;
import kitwright.value.Size;

/** What the rack holds after a cut was made: the records to write into the ledger. */
public final class Remnants {
  private Remnants() {}

  private record Rest(Stock from, Rect rect, String id) {}

  /** What each left-over is called, at the bench as in its record, in the order of the plan. */
  public static List<String> ids(CutPlan plan) {
    return rests(plan).stream().map(Rest::id).toList();
  }

  private static List<Rest> rests(CutPlan plan) {
    List<Rest> rests = new ArrayList<>();
    for (PieceCut piece : plan.pieces()) {
      for (Board.Piece left : piece.board().becoming(Use.Left.class).toList()) {
        String id = piece.stock().id() + "-" + plan.cut().id() + "-" + (rests.size() + 1);
        rests.add(new Rest(piece.stock(), left.rect(), id));
      }
    }
    return rests;
  }

  /** The keys that say the cut is done: the day and what it took, as they stand in its record. */
  public static List<String> keys(CutPlan plan, LocalDate day) {
    String used =
        plan.used().entrySet().stream()
            .map(each -> "{stock: " + each.getKey() + ", pieces: " + each.getValue() + "}")
            .collect(Collectors.joining(", "));
    return List.of("done: " + day, "used: [" + used + "]");
  }

  /** The stock records of the left-overs worth keeping; empty where there are none. */
  public static String records(CutPlan plan, LocalDate day) {
    String records =
        rests(plan).stream().map(rest -> record(rest, plan, day)).collect(Collectors.joining());
    return records.isEmpty() ? "" : "stock:\n" + records;
  }

  private static String record(Rest rest, CutPlan plan, LocalDate day) {
    Stock from = rest.from();
    return "  - id: "
        + rest.id()
        + "\n    what: left of "
        + from.id()
        + " after "
        + plan.cut().id()
        + "\n"
        + from.material().map(material -> "    material: " + material.id() + "\n").orElse("")
        + "    size: "
        + size(rest)
        + "\n    pieces: 1\n"
        + from.worth().map(worth -> "    worth: " + worth(worth, rest) + "\n").orElse("")
        + from.grain().map(grain -> "    grain: " + grain + "\n").orElse("")
        + "    since: "
        + day
        + "\n";
  }

  private static String size(Rest rest) {
    return Tenths.mm(rest.rect().length())
        + " x "
        + Tenths.mm(rest.rect().width())
        + rest.from().size().flatMap(Size::thickness).map(t -> " x " + Decimal.print(t)).orElse("")
        + " mm";
  }

  /** A price by measure stays as it is; that of a piece goes down with the area. */
  private static String worth(Price worth, Rest rest) {
    boolean byMeasure = worth.per().filter(per -> !per.symbol().equals("each")).isPresent();
    if (byMeasure) {
      return worth.toString();
    }
    Size size = rest.from().size().orElseThrow();
    BigDecimal whole = size.length().multiply(size.width());
    BigDecimal share = BigDecimal.valueOf(rest.rect().area(), 2);
    BigDecimal amount =
        worth
            .amount()
            .multiply(share)
            .divide(
                whole,
                Math.max(0, worth.currency().getDefaultFractionDigits()),
                RoundingMode.HALF_UP);
    return amount.toPlainString() + " " + worth.currency().getCurrencyCode();
  }
}
