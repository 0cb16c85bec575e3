package kitwright.money;

import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kitwright.ledger.BudgetLine;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.spending.Exchange;
import kitwright.spending.Quote;
import kitwright.spending.Valued;

/**
 * A rate that sums were converted by.
 *
 * @param of what it converted, each a word or an id
 */
public record RateUsed(Quote quote, List<String> of) {
  public RateUsed {
    of = List.copyOf(of);
  }

  /** The rates of some spends, in their order. */
  public static List<RateUsed> of(List<Valued> spends) {
    Map<Quote, Set<String>> all = new LinkedHashMap<>();
    spends.forEach(each -> add(all, each.quote(), each.spend().id()));
    return told(all);
  }

  /** All rates of the day's sums: of the budget, of the spends, of what is still to come. */
  public static List<RateUsed> on(Facts day) {
    Exchange exchange = Exchange.on(day);
    Map<Quote, Set<String>> all = new LinkedHashMap<>();
    for (BudgetLine line : day.ledger().budget()) {
      exchange.planned(line.amount().currency()).ifPresent(quote -> add(all, quote, "the budget"));
    }
    Account.on(day).spends().forEach(each -> add(all, each.quote(), each.spend().id()));
    for (Currency currency : toCome(day)) {
      exchange
          .quote(currency, exchange.home(), day.day())
          .ifPresent(quote -> add(all, quote, "what is still to come"));
    }
    return told(all);
  }

  private static void add(Map<Quote, Set<String>> all, Quote quote, String of) {
    if (quote.how() != Quote.How.SAME) {
      all.computeIfAbsent(quote, any -> new LinkedHashSet<>()).add(of);
    }
  }

  private static List<RateUsed> told(Map<Quote, Set<String>> all) {
    List<RateUsed> told = new ArrayList<>();
    all.forEach((quote, of) -> told.add(new RateUsed(quote, List.copyOf(of))));
    return List.copyOf(told);
  }

  /** The currencies of what is foretold. */
  private static Set<Currency> toCome(Facts day) {
    Set<Currency> all = new LinkedHashSet<>();
    Stream.of(
            day.ledger().budget().stream().flatMap(line -> line.remaining().stream()),
            day.ledger().shortages().stream()
                .filter(isOpen(day))
                .flatMap(shortage -> shortage.options().stream())
                .flatMap(option -> option.cost().stream()),
            day.ledger().borrowed().stream()
                .flatMap(loan -> loan.repair().stream())
                .flatMap(repair -> repair.cost().stream()))
        .flatMap(ranges -> ranges)
        .map(range -> range.likely().currency())
        .forEach(all::add);
    boolean needs =
        Account.on(day).lines().stream()
            .anyMatch(line -> line.remaining().basis() == Remaining.Basis.NEEDS);
    if (needs) {
      day.ledger().kit().stream()
          .flatMap(item -> item.price().stream())
          .forEach(price -> all.add(price.currency()));
    }
    return all;
  }

  private static Predicate<Shortage> isOpen(Facts day) {
    Set<String> open = new LinkedHashSet<>();
    Account.on(day).ways().forEach(way -> open.add(way.shortage().id()));
    return shortage -> open.contains(shortage.id());
  }
}
