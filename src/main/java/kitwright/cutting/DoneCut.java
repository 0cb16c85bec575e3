package kitwright.cutting;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.cutting.solve.Effort;
import kitwright.kit.Positions;
import kitwright.kit.StockPosition;
import kitwright.kit.Use;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Stock;
import kitwright.value.Ref;
import kitwright.value.Size;

/**
 * What came of a cut that is done.
 *
 * @param took how many pieces of each stock, as its record or the log says; empty where neither
 *     does
 * @param left ids of the stock records that were made of its left-overs
 * @param planned what a plan for the same pieces comes to; empty where it cannot be told
 * @param came what came of them, if every part wanted was made
 */
public record DoneCut(
    Cut cut,
    Optional<Map<String, Integer>> took,
    List<String> left,
    Optional<Yield> planned,
    Optional<Shares> came) {

  /** Of the area of the pieces it took, in per cent. */
  public record Shares(double parts, double left, double waste) {}

  /** What is known of a done cut. */
  public static DoneCut of(Cut cut, Facts day, Effort effort) {
    List<Stock> left = left(cut, day);
    Optional<Map<String, Integer>> took =
        new OpenCuts(day.ledger()).isUnsaid(cut) ? Optional.empty() : Optional.of(took(cut, day));
    return new DoneCut(
        cut,
        took,
        left.stream().map(Stock::id).toList(),
        took.map(pieces -> planned(cut, pieces, day, effort).pieces())
            .filter(pieces -> !pieces.isEmpty())
            .map(Yield::of),
        took.flatMap(pieces -> came(cut, pieces, left, day)));
  }

  private static Map<String, Integer> took(Cut cut, Facts day) {
    Map<String, Integer> took = new LinkedHashMap<>();
    cut.used().forEach(taken -> took.merge(taken.stock().id(), taken.pieces(), Integer::sum));
    if (cut.at().has("used")) {
      return took;
    }
    for (Ref ref : cut.from()) {
      int pieces =
          Positions.on(day).ofStock(ref).map(StockPosition::uses).orElse(List.of()).stream()
              .filter(use -> isOf(use, cut))
              .mapToInt(use -> use.qty().amount().intValue())
              .sum();
      if (pieces > 0) {
        took.put(ref.id(), pieces);
      }
    }
    return took;
  }

  private static boolean isOf(Use use, Cut cut) {
    return use.task().isPresent()
        ? cut.task().filter(task -> task.id().equals(use.task().get().id())).isPresent()
        : cut.done().filter(use.on()::equals).isPresent();
  }

  private static CutPlan planned(Cut cut, Map<String, Integer> pieces, Facts day, Effort effort) {
    List<Rack.Free> free =
        cut.from().stream()
            .filter(ref -> pieces.getOrDefault(ref.id(), 0) > 0)
            .flatMap(
                ref ->
                    day
                        .ledger()
                        .stock(ref)
                        .filter(stock -> stock.size().isPresent())
                        .map(
                            stock -> new Rack.Free(stock, pieces.getOrDefault(ref.id(), 0), 1, ref))
                        .stream())
            .toList();
    return CutPlan.from(cut, new Rack(free, List.of()), day, effort);
  }

  /** Records that {@link Remnants} names, or that say so in their own id. */
  private static List<Stock> left(Cut cut, Facts day) {
    return day.ledger().stock().stream()
        .filter(
            stock ->
                cut.from().stream()
                    .anyMatch(from -> stock.id().startsWith(from.id() + "-" + cut.id() + "-")))
        .toList();
  }

  private static Optional<Shares> came(
      Cut cut, Map<String, Integer> took, List<Stock> left, Facts day) {
    double all = 0;
    for (Map.Entry<String, Integer> each : took.entrySet()) {
      Optional<Size> size =
          cut.from().stream()
              .filter(ref -> ref.id().equals(each.getKey()))
              .findFirst()
              .flatMap(day.ledger()::stock)
              .flatMap(Stock::size);
      all += size.map(s -> area(s) * each.getValue()).orElse(0.0);
    }
    boolean wide = cut.parts().stream().allMatch(part -> part.width().isPresent());
    if (all == 0 || !wide) {
      return Optional.empty();
    }
    double parts =
        cut.parts().stream()
            .mapToDouble(
                part -> 0.01 * Sawn.length(part) * Sawn.width(part).orElse(0L) * part.qty())
            .sum();
    double kept =
        left.stream()
            .mapToDouble(
                stock -> stock.size().map(DoneCut::area).orElse(0.0) * stock.pieces().orElse(1))
            .sum();
    return Optional.of(
        new Shares(percent(parts / all), percent(kept / all), percent((all - parts - kept) / all)));
  }

  private static double area(Size size) {
    BigDecimal area = size.length().multiply(size.width());
    return area.doubleValue();
  }

  private static double percent(double share) {
    return Math.round(share * 1000) / 10.0;
  }
}
