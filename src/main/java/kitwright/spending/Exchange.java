package kitwright.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rate;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/**
 * The dated rates of a ledger. For a pair the latest rate on or before the day holds, whichever way
 * round it is written; on one day the direct one goes before its inverse. Where the pair has none,
 * two rates through a third currency are taken: the euro before the build's own currency before all
 * others by their code. Rates of zero or less are left out (rule {@code rate-impossible}); of two
 * for one day and pair the first by file and line holds (rule {@code rate-twice}).
 */
public final class Exchange {
  private static final Currency EURO = Currency.getInstance("EUR");

  private record Pair(Currency from, Currency to) {}

  private static final Facts.Fact<Exchange> FACT = day -> of(day.ledger());

  private final Currency home;
  private final LocalDate started;
  private final Map<Pair, NavigableMap<LocalDate, Quote>> quotes = new HashMap<>();
  private final List<Currency> between;

  private Exchange(Currency home, LocalDate started, List<Rate> rates) {
    this.home = home;
    this.started = started;
    List<Rate> sound =
        rates.stream()
            .filter(rate -> rate.rate().signum() > 0 && !rate.from().equals(rate.to()))
            .sorted(Comparator.comparing(rate -> rate.at().record()))
            .toList();
    sound.forEach(rate -> put(Quote.direct(rate), rate.on()));
    sound.forEach(rate -> put(Quote.inverse(rate), rate.on()));
    between = between(sound);
  }

  /** The rates of the day’s ledger, into its build's currency. */
  public static Exchange on(Facts day) {
    return FACT.on(day);
  }

  /** The rates of a ledger, into its build's currency. */
  public static Exchange of(Ledger ledger) {
    return new Exchange(ledger.build().currency(), ledger.build().started(), ledger.rates());
  }

  private void put(Quote quote, LocalDate on) {
    quotes
        .computeIfAbsent(new Pair(quote.from(), quote.to()), pair -> new TreeMap<>())
        .putIfAbsent(on, quote);
  }

  private List<Currency> between(List<Rate> rates) {
    Set<Currency> others = new TreeSet<>(Comparator.comparing(Currency::getCurrencyCode));
    rates.forEach(
        rate -> {
          others.add(rate.from());
          others.add(rate.to());
        });
    List<Currency> all = new ArrayList<>(List.of(EURO, home));
    all.addAll(others);
    return all.stream().distinct().toList();
  }

  /** The build's currency, which everything is summed in. */
  public Currency home() {
    return home;
  }

  /** The rate from one currency into another on a day. */
  public Optional<Quote> quote(Currency from, Currency to, LocalDate on) {
    if (from.equals(to)) {
      return Optional.of(Quote.same(from));
    }
    return latest(from, to, on).or(() -> cross(from, to, on));
  }

  private Optional<Quote> latest(Currency from, Currency to, LocalDate on) {
    return Optional.ofNullable(quotes.get(new Pair(from, to)))
        .map(dated -> dated.floorEntry(on))
        .map(Map.Entry::getValue);
  }

  private Optional<Quote> cross(Currency from, Currency to, LocalDate on) {
    return between.stream()
        .filter(via -> !via.equals(from) && !via.equals(to))
        .flatMap(
            via ->
                latest(from, via, on)
                    .flatMap(first -> latest(via, to, on).map(first::then))
                    .stream())
        .findFirst();
  }

  /** An amount in another currency on a day. */
  public Conversion convert(Money amount, Currency to, LocalDate on) {
    return quote(amount.currency(), to, on)
        .<Conversion>map(quote -> new Conversion.Known(amount, quote.of(amount), quote))
        .orElseGet(() -> new Conversion.NoRate(amount, to, on));
  }

  /** An amount in the build's currency on a day. */
  public Conversion home(Money amount, LocalDate on) {
    return convert(amount, home, on);
  }

  /**
   * An amount in the build's currency, by the rate written on its record where there is one.
   *
   * @param recorded units of the build's currency for one of the amount's; not for an amount that
   *     is in the build's currency already
   */
  public Conversion home(Money amount, LocalDate on, Optional<BigDecimal> recorded) {
    if (recorded.isEmpty() || recorded.get().signum() <= 0 || amount.currency().equals(home)) {
      return home(amount, on);
    }
    Quote quote = Quote.recorded(amount.currency(), home, recorded.get());
    return new Conversion.Known(amount, quote.of(amount), quote);
  }

  /**
   * The rate that the budget was made with: that of the day the build started, or else the first
   * one known after it.
   */
  public Optional<Quote> planned(Currency from) {
    return quote(from, home, started)
        .or(
            () ->
                quotes.values().stream()
                    .flatMap(dated -> dated.tailMap(started, true).keySet().stream())
                    .distinct()
                    .sorted()
                    .flatMap(day -> quote(from, home, day).stream())
                    .findFirst());
  }

  /**
   * A payment or refund in the currency of the order or payment that it belongs to. One in another
   * currency goes through the build's: by its own rate, else by the dated one of its day; and from
   * there by the order's own rate, else by the dated one of that day, or of the day asked.
   *
   * @return empty where a rate is missing
   */
  public Optional<Money> inOrder(Spend part, Spend order, LocalDate asked) {
    Currency into = order.amount().currency();
    if (part.amount().currency().equals(into)) {
      return Optional.of(part.amount());
    }
    Optional<Money> atHome = home(part.amount(), part.on(), part.rate()).money();
    if (into.equals(home)) {
      return atHome;
    }
    return atHome.flatMap(
        amount ->
            order
                .rate()
                .filter(rate -> rate.signum() > 0)
                .map(rate -> Quote.recorded(into, home, rate).back().of(amount))
                .or(() -> convert(amount, into, part.on()).money())
                .or(() -> convert(amount, into, asked).money()));
  }
}
