package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.cutting.saw.Flaw;
import kitwright.ledger.Cut;
import kitwright.ledger.Stock;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * What a piece of stock gives after trimming.
 *
 * @param longest the longest stretch clear of flaws, tenths of a millimetre
 * @param width between the trimmed edges
 */
record Clearance(long longest, long width) {
  static Clearance of(Stock stock, Cut cut) {
    Size size = stock.size().orElseThrow();
    long trim = trim(cut);
    long end = Tenths.side(size.length()) - trim;
    long kerf = Tenths.atLeast(cut.kerf());
    long from = trim;
    List<Long> stretches = new ArrayList<>();
    for (Flaw flaw : flaws(stock)) {
      stretches.add(Math.min(flaw.from(), end) - from);
      from = Math.max(from, Math.max(flaw.to(), flaw.from() + kerf));
    }
    long longest =
        Stream.concat(stretches.stream(), Stream.of(end - from)).mapToLong(n -> n).max().orElse(0);
    return new Clearance(
        Math.max(0, longest), Math.max(0, Tenths.side(size.width()) - 2 * edgeTrim(cut)));
  }

  /** Off each end. */
  static long trim(Cut cut) {
    return cut.trim().map(Tenths::atLeast).orElse(0L);
  }

  /** Off each long edge. */
  static long edgeTrim(Cut cut) {
    return cut.edgeTrim().or(cut::trim).map(Tenths::atLeast).orElse(0L);
  }

  /** What it says of its number, where that does not tell how many pieces of its size there are. */
  static Optional<String> uncounted(Stock stock) {
    return stock
        .qty()
        .filter(qty -> !isNumber(qty) || stock.pieces().filter(n -> !isSame(qty, n)).isPresent())
        .map(qty -> qty + stock.pieces().map(n -> ", and pieces: " + n).orElse(""));
  }

  private static boolean isNumber(Quantity qty) {
    return qty.unit().dimension() == Dimension.COUNT || qty.unit() == Unit.SHEET;
  }

  private static boolean isSame(Quantity qty, int pieces) {
    return qty.amount().compareTo(BigDecimal.valueOf(pieces)) == 0;
  }

  /** A flaw of it that cannot lie where its record says: turned round, or beyond its end. */
  static Optional<Stock.Flaw> unclear(Stock stock) {
    long end = Tenths.side(stock.size().orElseThrow().length());
    return stock.flaws().stream()
        .filter(
            flaw -> flaw.from().compareAmount(flaw.to()) >= 0 || Tenths.atMost(flaw.from()) >= end)
        .findFirst();
  }

  /** Its flaws, the nearest first, within its length; asked where none is unclear. */
  static List<Flaw> flaws(Stock stock) {
    long end = Tenths.side(stock.size().orElseThrow().length());
    return stock.flaws().stream()
        .map(
            flaw ->
                new Flaw(
                    Tenths.atMost(flaw.from()),
                    Math.min(end, Tenths.atLeast(flaw.to())),
                    flaw.what().orElse("")))
        .sorted(Comparator.comparingLong(Flaw::from))
        .toList();
  }
}
