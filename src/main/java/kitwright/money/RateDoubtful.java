package kitwright.money;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.value.Decimal;

/**
 * Fires where a rate looks as if it were written the wrong way round, or lies far from the one
 * before it. Compared is each with the last one of its pair, whichever way round that stands; and
 * where there is none a currency without a minor unit is held to be worth less than one that has
 * two (ISO 4217: yen, won, peso of Chile and their like).
 */
public final class RateDoubtful implements Rule {
  /** So many times more or less within a ledger's years is no market's doing (from memory). */
  private static final double FAR = 1.5;

  /** Nearer to each other than this, a rate and its inverse cannot be told apart. */
  private static final double NEAR = 0.08;

  /** A rate as somebody wrote it: one {@code from} is so many {@code to}. */
  private record Said(LocalDate on, Currency from, Currency to, BigDecimal rate, Entry by) {
    /** The same whichever way round it stands. */
    Set<Currency> pair() {
      return Set.of(from, to);
    }

    boolean isBack(Said other) {
      return from.equals(other.to) && to.equals(other.from);
    }

    /** The logarithm of this rate, counted the way round in which another stands. */
    double log(Said as) {
      double log = Math.log(rate.doubleValue());
      return isBack(as) ? -log : log;
    }
  }

  @Override
  public void examine(Facts day, Findings out) {
    Map<Set<Currency>, Said> before = new HashMap<>();
    for (Said said : said(day.written())) {
      Said last = before.get(said.pair());
      Optional<Finding> fault = last == null ? byMinorUnit(said) : against(said, last);
      fault.ifPresent(out::add);
      if (fault.isEmpty()) {
        before.put(said.pair(), said);
      }
    }
  }

  /** Published rates first, then those of single spends, each by day. */
  private static List<Said> said(Ledger ledger) {
    Currency home = ledger.build().currency();
    Stream<Said> rates =
        ledger.rates().stream().map(r -> new Said(r.on(), r.from(), r.to(), r.rate(), r));
    Stream<Said> spends =
        ledger.spending().stream()
            .flatMap(
                s ->
                    s.rate().stream()
                        .map(r -> new Said(s.on(), s.amount().currency(), home, r, s)));
    return Stream.concat(
            rates.sorted(Comparator.comparing(Said::on)),
            spends.sorted(Comparator.comparing(Said::on)))
        .filter(said -> said.rate().signum() > 0 && !said.from().equals(said.to()))
        .toList();
  }

  private Optional<Finding> against(Said said, Said last) {
    double apart = Math.abs(said.log(said) - last.log(said));
    double turned = Math.abs(said.log(said) + last.log(said));
    boolean wrongWay = apart > NEAR && turned < apart / 3;
    if (!wrongWay && apart < Math.log(FAR)) {
      return Optional.empty();
    }
    String other =
        "one "
            + last.from()
            + " as "
            + Decimal.print(last.rate())
            + " "
            + last.to()
            + " ("
            + last.by().at().record()
            + ")";
    return Optional.of(
        finding(
            said,
            (wrongWay ? "; it looks the wrong way round beside " : "; that is far from ") + other));
  }

  private Optional<Finding> byMinorUnit(Said said) {
    boolean less = digits(said.from()) == 0 && digits(said.to()) == 2;
    boolean more = digits(said.from()) == 2 && digits(said.to()) == 0;
    double rate = said.rate().doubleValue();
    return (less && rate > 1) || (more && rate < 1)
        ? Optional.of(
            finding(
                said,
                "; it looks the wrong way round: one "
                    + (less ? said.from() : said.to())
                    + " is worth less"))
        : Optional.empty();
  }

  private static int digits(Currency currency) {
    return currency.getDefaultFractionDigits();
  }

  private Finding finding(Said said, String why) {
    return warn(
        said.by().at().of("rate"),
        "The "
            + said.by().named()
            + " takes one "
            + said.from()
            + " as "
            + Decimal.print(said.rate())
            + " "
            + said.to()
            + why
            + ".",
        "Every amount that goes by it is told that much too high or too low.",
        "Write how many "
            + said.to()
            + " one "
            + said.from()
            + " was worth, as the bank has it; if it stands the other way round, divide 1 by it.",
        List.of(said.by().named()));
  }
}
