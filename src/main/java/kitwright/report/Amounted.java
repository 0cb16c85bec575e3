package kitwright.report;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** Every amount and price that a ledger states, as a bare number. */
final class Amounted {
  private Amounted() {}

  static Stream<BigDecimal> in(Ledger ledger) {
    Stream<Money> build =
        Stream.of(ledger.build().contingency(), ledger.build().ownHour()).flatMap(Optional::stream);
    Stream<Money> budget =
        ledger.budget().stream()
            .flatMap(
                line ->
                    Stream.concat(
                        Stream.of(line.amount()),
                        line.remaining().stream().flatMap(Amounted::all)));
    Stream<Money> spending =
        ledger.spending().stream()
            .flatMap(
                each ->
                    Stream.concat(
                        Stream.of(each.amount()),
                        Stream.of(each.tax(), each.duty()).flatMap(Optional::stream)));
    Stream<Money> options =
        ledger.shortages().stream()
            .flatMap(each -> each.options().stream())
            .map(Shortage.Option::cost)
            .flatMap(Optional::stream)
            .flatMap(Amounted::all);
    Stream<Money> settled =
        ledger.claims().stream()
            .flatMap(each -> each.settled().flatMap(Claim.Settlement::amount).stream());
    Stream<Money> worth = ledger.borrowed().stream().flatMap(each -> each.worth().stream());
    return Stream.concat(
        Stream.of(build, budget, spending, options, settled, worth)
            .flatMap(money -> money)
            .map(Money::amount),
        prices(ledger));
  }

  private static Stream<BigDecimal> prices(Ledger ledger) {
    return Stream.of(
            ledger.kit().stream().map(each -> each.price()),
            ledger.stock().stream().map(each -> each.worth()),
            ledger.borrowed().stream().map(each -> each.hireRate()),
            ledger.materials().stream().map(each -> each.price()))
        .flatMap(prices -> prices)
        .flatMap(Optional::stream)
        .map(price -> price.amount());
  }

  private static Stream<Money> all(ThreePoint<Money> guess) {
    return Stream.of(guess.low(), guess.likely(), guess.high());
  }
}
