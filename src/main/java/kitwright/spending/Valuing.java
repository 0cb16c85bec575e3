package kitwright.spending;

import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Ref;

/** What spends are worth in the build's currency on a day, and what each belongs to. */
final class Valuing {
  private final Ledger ledger;
  private final Exchange exchange;
  private final LocalDate asOf;
  private final Map<Currency, Optional<Quote>> planned = new HashMap<>();

  Valuing(Ledger ledger, Exchange exchange, LocalDate asOf) {
    this.ledger = ledger;
    this.exchange = exchange;
    this.asOf = asOf;
  }

  /** The line that it counts on. */
  String line(String line) {
    return ledger.find(Kind.BUDGET, line).isPresent() ? line : Books.NO_LINE;
  }

  /** The whole or the open part of a spend; empty where a rate is missing. */
  Optional<Valued> of(Spend spend, Money part) {
    LocalDate day = Books.is(spend, Spend.State.ORDERED) ? asOf : spend.on();
    Optional<Conversion.Known> known = exchange.home(part, day, spend.rate()).known();
    if (known.isEmpty()) {
      return Optional.empty();
    }
    Money atPlan =
        planned
            .computeIfAbsent(part.currency(), exchange::planned)
            .map(quote -> quote.of(part))
            .orElse(known.get().result());
    Optional<Spend> origin = spend.pays().or(spend::refunds).flatMap(ledger::spend);
    return Optional.of(
        new Valued(
            spend,
            origin,
            answers(spend).or(() -> origin.flatMap(this::answers)),
            line(spend.line().id()),
            known.get().result(),
            atPlan,
            within(spend, spend.tax(), part, day),
            within(spend, spend.duty(), part, day),
            known.get().quote()));
  }

  /** The shortage that a spend answers: its own, or that of the substitution it was made for. */
  private Optional<Ref> answers(Spend spend) {
    return spend
        .because()
        .or(
            () ->
                spend
                    .substitution()
                    .flatMap(ledger::substitution)
                    .flatMap(substitution -> substitution.shortage()));
  }

  /** Of its tax or duty, what belongs to a part. */
  private Money within(Spend spend, Optional<Money> tax, Money part, LocalDate day) {
    return tax.flatMap(
            whole ->
                exchange.home(Share.of(whole, part, spend.amount()), day, spend.rate()).money())
        .orElse(Money.zero(exchange.home()));
  }
}
