package kitwright.report.words;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Value;
import kitwright.value.Money;

/**
 * A column of money: where all amounts are of one currency, its head names it and the cells are
 * bare figures.
 */
public record Amounts(List<Money> all, Optional<Currency> only) {

  public static Amounts of(List<Money> all) {
    Set<Currency> currencies = all.stream().map(Money::currency).collect(Collectors.toSet());
    return new Amounts(
        List.copyOf(all),
        currencies.size() == 1 ? Optional.of(currencies.iterator().next()) : Optional.empty());
  }

  public Column column(String title) {
    return Column.right(title + only.map(c -> ", " + c.getCurrencyCode()).orElse(""));
  }

  public Cell cell(Optional<Money> amount) {
    return amount.map(this::cell).orElseGet(Cell::none);
  }

  public Cell cell(Money amount) {
    return Cell.text(only.isPresent() ? Say.amount(amount) : Say.money(amount))
        .with(new Value.Cash(amount).beside());
  }

  /** Amounts of several currencies in one cell. */
  public Cell cell(List<Money> amounts) {
    return amounts.size() > 1
        ? Cell.text(Say.monies(amounts)).with(Value.of(amounts).beside())
        : cell(amounts.stream().findFirst());
  }

  /** One sum a currency, by its code. */
  public List<Money> sums() {
    TreeMap<String, Money> sums = new TreeMap<>();
    all.forEach(a -> sums.merge(a.currency().getCurrencyCode(), a, Money::plus));
    return List.copyOf(sums.values());
  }

  /** The sums for a last row. */
  public Cell total() {
    return cell(sums());
  }
}
