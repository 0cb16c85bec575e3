package kitwright.report.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Table;
import kitwright.ledger.Rate;
import kitwright.money.RateUsed;
import kitwright.spending.Quote;

/** The rates that sums were converted by, each as it is written. */
final class RatesTold {
  /** What is told of a rate that is not written so: the sums themselves are not made with it. */
  private static final MathContext DIGITS = new MathContext(8);

  private static final int FEW = 4;

  private RatesTold() {}

  static Table table(List<RateUsed> rates) {
    return new Table(
        "Rates of exchange",
        Column.columns(
            Column.data("from"),
            Column.data("to"),
            Column.data("one-is"),
            Column.head("Rate as written").named("as-written"),
            Column.left("Source"),
            Column.left("Of").named("of")),
        rates.stream().map(RatesTold::row).toList());
  }

  private static Row row(RateUsed each) {
    Quote quote = each.quote();
    BigDecimal one = one(quote);
    return Row.row(
        Cell.text(quote.from().getCurrencyCode()),
        Cell.text(quote.to().getCurrencyCode()),
        Cell.number(one.toPlainString(), one),
        Cell.text(asWritten(quote)),
        Cell.text(
            quote.used().stream()
                .flatMap(rate -> rate.source().stream())
                .distinct()
                .collect(Collectors.joining("; "))),
        Cell.several(few(each.of()), each.of()));
  }

  /** What one unit is worth, in the other currency. */
  static BigDecimal one(Quote quote) {
    return quote.times().divide(quote.over(), DIGITS).stripTrailingZeros();
  }

  static String asWritten(Quote quote) {
    return quote.used().isEmpty()
        ? "1 "
            + quote.from()
            + " = "
            + one(quote).toPlainString()
            + " "
            + quote.to()
            + ", on the record itself"
        : quote.used().stream().map(RatesTold::asWritten).collect(Collectors.joining("; "));
  }

  private static String asWritten(Rate rate) {
    return "1 "
        + rate.from()
        + " = "
        + rate.rate().toPlainString()
        + " "
        + rate.to()
        + " on "
        + rate.on();
  }

  private static String few(List<String> of) {
    return of.size() <= FEW
        ? String.join(", ", of)
        : String.join(", ", of.subList(0, FEW - 1)) + " and " + (of.size() - FEW + 1) + " more";
  }
}
