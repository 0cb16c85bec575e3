package kitwright.money;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rate;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;

/** Fires where a rate is zero or less, or turns a currency into itself. */
public final class RateImpossible implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    day.written().rates().forEach(rate -> examine(rate, out));
    Currency home = day.written().build().currency();
    day.written()
        .spending()
        .forEach(spend -> spend.rate().ifPresent(rate -> examine(spend, rate, home, out)));
  }

  private void examine(Rate rate, Findings out) {
    if (rate.rate().signum() <= 0) {
      out.add(notAboveZero(rate, rate.rate()));
    } else if (rate.from().equals(rate.to())) {
      out.add(ofOneCurrency(rate, "from", rate.from()));
    }
  }

  private void examine(Spend spend, BigDecimal rate, Currency home, Findings out) {
    if (rate.signum() <= 0) {
      out.add(notAboveZero(spend, rate));
    } else if (spend.amount().currency().equals(home) && rate.compareTo(BigDecimal.ONE) != 0) {
      out.add(ofOneCurrency(spend, "rate", home));
    }
  }

  private Finding notAboveZero(Entry entry, BigDecimal rate) {
    return stop(
        entry.at().of("rate"),
        "The rate " + rate.toPlainString() + " of the " + entry.named() + " is not above zero.",
        "It is left out, as if it were not there.",
        "Write how much of the second currency one of the first is worth, such as 0.54321.",
        List.of(entry.named()));
  }

  private Finding ofOneCurrency(Entry entry, String key, Currency currency) {
    return warn(
        entry.at().of(key),
        "The " + entry.named() + " gives a rate from " + currency + " into " + currency + ".",
        "It is left out: a currency is always worth itself.",
        "Name the currency that the money was really in, or take the rate out.",
        List.of(entry.named()));
  }
}
