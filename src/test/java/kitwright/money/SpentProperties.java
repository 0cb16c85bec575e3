package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Money;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Laws of the account: money is neither made nor lost, whatever the records are. */
class SpentProperties {
  private static final List<Function<LineState, Money>> AMOUNTS =
      List.of(
          LineState::budget,
          LineState::paid,
          LineState::ordered,
          LineState::refunded,
          LineState::waysOut,
          LineState::tax,
          LineState::duty,
          LineState::byRate,
          LineState::spent,
          LineState::committed,
          LineState::toCome,
          LineState::forecast,
          LineState::over);

  private static Account account(List<String> spends) {
    return Account.on(Facts.of(RandomSpending.ledger(spends), Sample.TODAY));
  }

  private static Money sum(List<Money> parts) {
    return parts.stream().reduce(Money::plus).orElseThrow();
  }

  @Property(tries = 40)
  void theLinesAddUpToTheWhole(@ForAll long seed, @ForAll @IntRange(max = 40) int size) {
    Account account = account(RandomSpending.mixed(seed, size));
    for (Function<LineState, Money> amount : AMOUNTS) {
      assertThat(sum(account.all().stream().map(amount).toList()))
          .isEqualTo(amount.apply(account.whole()));
    }
  }

  @Property(tries = 40)
  void theCausesAddUpToTheOverrun(@ForAll long seed, @ForAll @IntRange(max = 40) int size) {
    Ledger ledger = RandomSpending.ledger(RandomSpending.mixed(seed, size));
    Account account = Account.on(Facts.of(ledger, Sample.TODAY));
    List<Why.Part> parts = Why.of(ledger, account);
    for (LineState line : account.all()) {
      Money zero = Money.zero(line.budget().currency());
      assertThat(
              parts.stream()
                  .filter(part -> part.line().equals(line.line()))
                  .map(Why.Part::amount)
                  .reduce(zero, Money::plus))
          .as(line.line())
          .isEqualTo(line.over());
    }
    assertThat(parts)
        .allSatisfy(
            part -> {
              assertThat(part.recoverable().signum()).isNotNegative();
              Money most = part.amount().max(Money.zero(part.amount().currency()));
              assertThat(part.recoverable().compareAmount(most)).isNotPositive();
            });
  }

  @Property(tries = 40)
  void theOrderOfTheRecordsChangesNothing(@ForAll long seed, @ForAll @IntRange(max = 40) int size) {
    List<String> spends = RandomSpending.mixed(seed, size);
    List<String> shuffled = new ArrayList<>(spends);
    Collections.shuffle(shuffled, new Random(seed));
    assertThat(account(shuffled).all()).isEqualTo(account(spends).all());
    assertThat(Why.of(RandomSpending.ledger(shuffled), account(shuffled)))
        .isEqualTo(Why.of(RandomSpending.ledger(spends), account(spends)));
  }

  @Property(tries = 40)
  void anOrderThatIsThenPaidCountsOnce(@ForAll long seed, @ForAll @IntRange(max = 30) int size) {
    List<String> before = new ArrayList<>(RandomSpending.home(seed, size));
    // A refund that was refused while too little was paid in all would be taken after the payment.
    before.removeIf(spend -> spend.contains("state: refunded"));
    before.add(
        "  - {id: big, on: 2026-02-01, line: crane, what: x, amount: 512.34, state: ordered}\n");
    List<String> after = new ArrayList<>(before);
    after.add(
        "  - {id: pay, on: 2026-02-10, line: crane, what: x, amount: 512.34, state: paid, pays:"
            + " big}\n");
    LineState open = account(before).whole();
    LineState paid = account(after).whole();
    assertThat(paid.committed()).isEqualTo(open.committed());
    assertThat(paid.forecast()).isEqualTo(open.forecast());
    assertThat(paid.paid().minus(open.paid())).hasToString("512.34 EUR");
  }

  @Property(tries = 40)
  void aRefundNeverMakesMoney(@ForAll long seed, @ForAll @IntRange(max = 60) int size) {
    Account account = account(RandomSpending.home(seed, size));
    assertThat(account.whole().spent().signum()).isNotNegative();
    BigDecimal refused =
        account.refused().stream()
            .map(each -> each.asked().minus(each.left()).amount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(refused.signum()).isNotNegative();
  }

  @Property(tries = 40)
  void laterRecordsDoNotChangeTheAccountOfAnEarlierDay(
      @ForAll long seed, @ForAll @IntRange(max = 40) int size) {
    List<String> spends = RandomSpending.home(seed, size);
    LocalDate day = LocalDate.of(2026, 1, 20);
    List<String> known =
        spends.stream()
            .filter(spend -> spend.contains("on: 2026-01-0") && !spend.contains("refunds: "))
            .toList();
    List<String> more = new ArrayList<>(known);
    more.addAll(spends.stream().filter(spend -> spend.contains("on: 2026-03-")).toList());
    assertThat(sorted(Account.on(Facts.of(RandomSpending.ledger(more), day))))
        .isEqualTo(sorted(Account.on(Facts.of(RandomSpending.ledger(known), day))));
  }

  private static List<LineState> sorted(Account account) {
    return account.all().stream().sorted(Comparator.comparing(LineState::line)).toList();
  }
}
