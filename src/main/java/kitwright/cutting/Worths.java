package kitwright.cutting;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.ledger.Ledger;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Stock;
import kitwright.spending.Exchange;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * What pieces of stock are worth in the build's currency, so that plans can be compared. What has
 * no worth, or none that can be converted, is counted by its size at what its kin are worth; where
 * nothing has a worth, size alone is compared.
 *
 * @param money of one piece, by the id of its stock; empty where nothing has a worth
 * @param units the same in whole units for the search, or the size
 * @param notes what was assumed, a sentence each
 */
record Worths(Map<String, BigDecimal> money, Map<String, Long> units, List<String> notes) {
  /** The search counts in no more than this for a piece. */
  private static final BigDecimal MOST_UNITS = BigDecimal.valueOf(1_000_000_000L);

  Worths {
    money = Map.copyOf(money);
    units = Map.copyOf(units);
    notes = List.copyOf(notes);
  }

  boolean isPriced() {
    return !money.isEmpty();
  }

  static Worths of(List<Stock> pieces, Ledger ledger, LocalDate day) {
    Map<String, BigDecimal> known = new LinkedHashMap<>();
    List<String> notes = new ArrayList<>();
    Exchange exchange = Exchange.of(ledger);
    for (Stock stock : pieces) {
      own(stock, ledger, exchange, day)
          .ifPresentOrElse(
              worth -> known.put(stock.id(), worth),
              () ->
                  why(stock, ledger)
                      .ifPresent(why -> notes.add("The worth of " + stock.id() + why)));
    }
    Map<String, BigDecimal> all = new LinkedHashMap<>(known);
    if (!known.isEmpty()) {
      for (Stock stock : pieces) {
        if (!known.containsKey(stock.id())) {
          BigDecimal guess = likeKin(stock, pieces, known);
          all.put(stock.id(), guess);
          notes.add(
              stock.id()
                  + " has no worth that can be used; it is counted at "
                  + Money.rounded(guess, exchange.home())
                  + ", by its size and what is known of the others.");
        }
      }
    }
    return new Worths(all, all.isEmpty() ? sizes(pieces) : units(all, exchange), notes);
  }

  /** In home money; empty where none is stated, or what is stated cannot be used. */
  private static Optional<BigDecimal> own(
      Stock stock, Ledger ledger, Exchange exchange, LocalDate day) {
    return stock
        .worth()
        .flatMap(
            worth ->
                exchange
                    .quote(worth.currency(), exchange.home(), day)
                    .flatMap(
                        quote ->
                            amount(worth, stock, ledger)
                                .map(
                                    amount ->
                                        amount
                                            .multiply(quote.times())
                                            .divide(quote.over(), MathContext.DECIMAL128))));
  }

  /** Why a stated worth cannot be used, in words that go on after what it is the worth of. */
  static Optional<String> unusable(Stock stock, Ledger ledger, LocalDate day) {
    return own(stock, ledger, Exchange.of(ledger), day).isPresent()
        ? Optional.empty()
        : why(stock, ledger);
  }

  /** Of a worth that is stated and cannot be used. */
  private static Optional<String> why(Stock stock, Ledger ledger) {
    String home = ledger.build().currency().getCurrencyCode();
    return stock
        .worth()
        .map(
            worth ->
                amount(worth, stock, ledger).isPresent()
                    ? ", " + worth + ", has no rate to " + home + "."
                    : ", " + worth + ", does not fit its size: " + lacking(worth, stock) + ".");
  }

  private static String lacking(Price worth, Stock stock) {
    boolean thick = stock.size().orElseThrow().thickness().isPresent();
    return switch (worth.per().orElseThrow().dimension()) {
      case VOLUME -> "it has no thickness";
      case MASS -> thick ? "its material has no density here" : "it has no thickness";
      default -> "it is not for a piece, a length, an area, a volume or a weight";
    };
  }

  /** Of one piece: by the piece, metre, square metre, cubic metre or weight. */
  private static Optional<BigDecimal> amount(Price price, Stock stock, Ledger ledger) {
    Size size = stock.size().orElseThrow();
    if (price.per().isEmpty()) {
      return Optional.of(price.amount());
    }
    Unit per = price.per().get();
    return switch (per.dimension()) {
      case COUNT -> Optional.of(price.amount());
      case LENGTH -> Optional.of(times(price, new Quantity(size.length(), Unit.MM)));
      case AREA -> Optional.of(times(price, new Quantity(area(size), Unit.MM2)));
      case VOLUME -> size.thickness().map(t -> times(price, new Quantity(litres(size, t), Unit.L)));
      case MASS ->
          size.thickness()
              .flatMap(
                  t ->
                      density(stock, ledger)
                          .map(
                              d ->
                                  times(
                                      price,
                                      new Quantity(
                                          litres(size, t).multiply(d).movePointLeft(3), Unit.KG))));
      default -> Optional.empty();
    };
  }

  private static BigDecimal times(Price price, Quantity quantity) {
    return price.amount().multiply(quantity.in(price.per().orElseThrow()).amount());
  }

  private static Optional<BigDecimal> density(Stock stock, Ledger ledger) {
    return stock
        .material()
        .flatMap(ledger::material)
        .map(material -> material.properties().get(MaterialProperty.DENSITY))
        .map(density -> density.in(Unit.KG_PER_M3).amount());
  }

  private static BigDecimal area(Size size) {
    return size.length().multiply(size.width());
  }

  private static BigDecimal litres(Size size, BigDecimal thickness) {
    return area(size).multiply(thickness).movePointLeft(6);
  }

  /** By area at what stock of the same material and thickness is worth, else at what all is. */
  private static BigDecimal likeKin(
      Stock stock, List<Stock> pieces, Map<String, BigDecimal> known) {
    List<Stock> priced = pieces.stream().filter(each -> known.containsKey(each.id())).toList();
    List<Stock> kin =
        priced.stream().filter(each -> likeness(each).equals(likeness(stock))).toList();
    List<Stock> by = kin.isEmpty() ? priced : kin;
    BigDecimal worth =
        by.stream()
            .map(each -> known.getOrDefault(each.id(), BigDecimal.ZERO))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal sizes =
        by.stream()
            .map(each -> area(each.size().orElseThrow()))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return worth.multiply(area(stock.size().orElseThrow())).divide(sizes, MathContext.DECIMAL128);
  }

  private static String likeness(Stock stock) {
    return stock.material().map(Object::toString).orElse("")
        + " "
        + stock.size().flatMap(Size::thickness).map(BigDecimal::stripTrailingZeros);
  }

  private static Map<String, Long> sizes(List<Stock> pieces) {
    Map<String, Long> sizes = new HashMap<>();
    for (Stock stock : pieces) {
      long area = area(stock.size().orElseThrow()).movePointLeft(2).longValue();
      sizes.put(stock.id(), Math.max(1, area));
    }
    return sizes;
  }

  /** In the smallest money there is, or coarser where that would be too many. */
  private static Map<String, Long> units(Map<String, BigDecimal> money, Exchange exchange) {
    BigDecimal most = money.values().stream().reduce(BigDecimal.ONE, BigDecimal::max);
    int shift = Math.max(0, exchange.home().getDefaultFractionDigits());
    while (most.movePointRight(shift).compareTo(MOST_UNITS) > 0) {
      shift--;
    }
    int by = shift;
    return money.entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey,
                each ->
                    each.getValue()
                        .movePointRight(by)
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValueExact()));
  }
}
