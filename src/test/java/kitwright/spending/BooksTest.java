package kitwright.spending;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Spend;
import org.junit.jupiter.api.Test;

/** What counts of each payment, order and refund. Each sum by hand. */
class BooksTest {
  private static final String ORDER = "id: o, on: 2026-01-10, state: ordered, amount: 100";
  private static final String FIRST = "id: p, on: 2026-01-11, state: paid, amount: 60, pays: o";
  private static final String SECOND = "id: q, on: 2026-01-20, state: paid, amount: 40, pays: o";

  private static Facts day(String... spends) {
    String lines =
        Arrays.stream(spends)
            .map(line -> "  - {" + line + ", line: a, what: mast}\n")
            .collect(Collectors.joining());
    return Facts.of(
        Sample.ledger(
            """
            budget: [{line: a, title: A, amount: 900}]
            rates: [{on: 2026-01-01, from: USD, to: EUR, rate: 0.90, source: bank}]
            spending:
            """
                + lines),
        Sample.TODAY);
  }

  private static String refund(String id, String of, String on, String amount) {
    return "id: %s, on: %s, state: refunded, amount: %s, refunds: %s".formatted(id, on, amount, of);
  }

  private static Spend spend(Facts day, String id) {
    return day.ledger().<Spend>find(Kind.SPENDING, id).orElseThrow();
  }

  private static String back(Facts day, String id) {
    return Books.on(day).givenBack(spend(day, id), Optional.empty()).toString();
  }

  private static String spent(Facts day) {
    return Books.on(day).tally("a").spent().toString();
  }

  @Test
  void ofAnOrderWhatIsNotPaidIsStillToBePaid() {
    assertThat(Books.on(day(ORDER, FIRST)).tally("a").ordered()).hasToString("40.00 EUR");
    assertThat(Books.on(day(ORDER, FIRST, SECOND)).tally("a").ordered()).hasToString("0.00 EUR");
    assertThat(Books.on(day(ORDER, FIRST + ", in-full: yes")).tally("a").ordered())
        .hasToString("0.00 EUR");
    assertThat(Books.on(day(ORDER, FIRST)).paid(spend(day(ORDER, FIRST), "o")))
        .hasToString("60.00 EUR");
  }

  @Test
  void anOrderAndItsPaymentsAreOnePurchase() {
    Facts named = day(ORDER, FIRST, SECOND, refund("r", "p", "2026-02-01", "25"));
    assertThat(back(named, "o")).isEqualTo("25.00 EUR");
    assertThat(back(named, "p")).isEqualTo("25.00 EUR");
    assertThat(back(named, "q")).as("it names the other payment").isEqualTo("0.00 EUR");
    assertThat(spent(named)).isEqualTo("75.00 EUR");
  }

  /** 50 of the order: the payment of 60 is asked, and 40 of the 50 may be the other’s. */
  @Test
  void whatNamesTheOrderGivesBackTheOtherPaymentsFirst() {
    Facts order = day(ORDER, FIRST, SECOND, refund("r", "o", "2026-02-01", "50"));
    assertThat(back(order, "p")).isEqualTo("10.00 EUR");
    assertThat(back(order, "q")).as("60 of the other").isEqualTo("0.00 EUR");
    Facts both =
        day(
            ORDER,
            FIRST,
            SECOND,
            refund("r", "q", "2026-02-01", "30"),
            refund("s", "o", "2026-02-02", "50"));
    assertThat(back(both, "p")).as("10 are left of the other").isEqualTo("40.00 EUR");
    assertThat(back(both, "o")).isEqualTo("80.00 EUR");
  }

  @Test
  void onlyWhatCameBeforeADayHadComeByThen() {
    Facts day = day(ORDER, FIRST, refund("r", "p", "2026-02-01", "25"));
    Books books = Books.on(day);
    assertThat(books.givenBack(spend(day, "p"), Optional.of(LocalDate.of(2026, 2, 1))))
        .hasToString("0.00 EUR");
    assertThat(books.givenBack(spend(day, "p"), Optional.of(LocalDate.of(2026, 2, 2))))
        .hasToString("25.00 EUR");
  }

  @Test
  void whatNobodyHadPaidByThenDoesNotComeBack() {
    Facts early = day(ORDER, FIRST, SECOND, refund("r", "o", "2026-01-15", "100"));
    assertThat(Books.on(early).refused())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.left()).as("of the first payment alone").hasToString("60.00 EUR");
              assertThat(each.isOfUnpaid()).isFalse();
            });
    assertThat(spent(early)).isEqualTo("40.00 EUR");
    Facts unpaid = day(ORDER, refund("r", "o", "2026-02-01", "100"));
    assertThat(Books.on(unpaid).refused())
        .singleElement()
        .satisfies(each -> assertThat(each.isOfUnpaid()).isTrue());
    assertThat(Books.on(unpaid).returned())
        .singleElement()
        .satisfies(
            each -> {
              assertThat(each.came()).hasToString("0.00 EUR");
              assertThat(each.isWhole()).isFalse();
            });
    Facts sameDay = day(ORDER, FIRST, refund("r", "p", "2026-01-11", "60"));
    assertThat(Books.on(sameDay).refused()).isEmpty();
  }

  /** Of an order paid on two lines, by days and not as the files are read: 40 of the first, 10. */
  @Test
  void whatComesBackOfAnOrderIsTakenFromItsFirstPaymentFirst() {
    String[] spends = {
      "id: o, on: 2026-01-10, state: ordered, amount: 100, line: c",
      "id: q, on: 2026-01-20, state: paid, amount: 60, pays: o, line: b",
      "id: p, on: 2026-01-11, state: paid, amount: 40, pays: o, line: a",
      "id: r, on: 2026-02-01, state: refunded, amount: 50, refunds: o, line: c"
    };
    String lines =
        Arrays.stream(spends)
            .map(each -> "  - {" + each + ", what: mast}\n")
            .collect(Collectors.joining());
    Books books =
        Books.on(
            Facts.of(
                Sample.ledger(
                    """
                    budget:
                      - {line: a, title: A, amount: 900}
                      - {line: b, title: B, amount: 900}
                      - {line: c, title: C, amount: 900}
                    spending:
                    """
                        + lines),
                Sample.TODAY));
    assertThat(books.tally("a").refunded()).hasToString("40.00 EUR");
    assertThat(books.tally("b").refunded()).hasToString("10.00 EUR");
  }

  /** It named a refund, and was taken from what the line had paid for something else. */
  @Test
  void aRefundGivesBackNoRefund() {
    Facts day =
        day(
            ORDER,
            FIRST,
            refund("r", "p", "2026-02-01", "10"),
            refund("s", "r", "2026-02-02", "10"));
    assertThat(spent(day)).isEqualTo("50.00 EUR");
    assertThat(Books.on(day).refused()).extracting(Refused::isOfUnpaid).containsExactly(true);
  }

  @Test
  void whatHasNoRateIsRefusedByNobodyAndInNoSum() {
    Facts day = day(ORDER, FIRST, refund("r", "p", "2026-02-01", "10 GBP"));
    assertThat(Books.on(day).unvalued()).extracting(Spend::id).containsExactly("r");
    assertThat(Books.on(day).refused()).isEmpty();
    assertThat(Books.on(day).returned().get(0).came()).hasToString("10.00 GBP");
    assertThat(back(day, "p")).isEqualTo("0.00 EUR");
    assertThat(spent(day)).isEqualTo("60.00 EUR");
  }

  /** 90 of 100 USD were paid; 45 EUR / 0.90 = 50 USD came back, half of what each payment cost. */
  @Test
  void whatComesBackInOtherMoneyIsReckonedInThePurchases() {
    Facts day =
        day(
            "id: o, on: 2026-01-10, state: ordered, amount: 100 USD",
            "id: p, on: 2026-01-11, state: paid, amount: 81 EUR, pays: o",
            refund("r", "p", "2026-02-01", "45 USD"));
    assertThat(back(day, "o")).isEqualTo("45.00 USD");
    assertThat(back(day, "p")).as("45 of 90 USD, so half of 81").isEqualTo("40.50 EUR");
  }

  @Test
  void whatIsBelowZeroIsSetAside() {
    Facts day = day(ORDER, FIRST, "id: n, on: 2026-01-12, state: paid, amount: -5, pays: o");
    assertThat(Books.on(day).belowZero()).extracting(Spend::id).containsExactly("n");
    assertThat(spent(day)).isEqualTo("60.00 EUR");
  }

  private static String bare(String id, String on, String amount) {
    return "id: %s, on: %s, state: refunded, amount: %s".formatted(id, on, amount);
  }

  /** Of 60 paid by 15 January 20 had come back by name, so 40 are left, and 10 after the 30. */
  @Test
  void whatNamesNothingGivesBackWhatItsLineHadPaidByThen() {
    Facts day =
        day(
            FIRST,
            SECOND,
            refund("n", "p", "2026-01-12", "20"),
            bare("r", "2026-01-15", "30"),
            bare("s", "2026-01-16", "30"),
            bare("t", "2026-01-20", "40"));
    assertThat(Books.on(day).returned())
        .extracting(each -> each.refund().id() + " " + each.came())
        .containsExactly("n 20.00 EUR", "r 30.00 EUR", "s 10.00 EUR", "t 40.00 EUR");
    assertThat(spent(day)).isEqualTo("0.00 EUR");
    assertThat(spent(day(FIRST, bare("r", "2026-01-10", "30"))))
        .as("nothing was paid by then")
        .isEqualTo("60.00 EUR");
  }

  /** What names a payment comes first, though it came later: the line has no more to give. */
  @Test
  void whatNamesNothingLeavesWhatComesBackByNameLater() {
    Facts day = day(FIRST, bare("r", "2026-01-15", "30"), refund("n", "p", "2026-01-18", "60"));
    assertThat(spent(day)).isEqualTo("0.00 EUR");
    assertThat(Books.on(day).refused())
        .singleElement()
        .satisfies(each -> assertThat(each.refund().id()).isEqualTo("r"));
  }

  /** An order is no money that could come back. */
  @Test
  void ofAnOrderNothingComesBackByItsLine() {
    Facts day = day(ORDER, bare("r", "2026-01-15", "30"));
    assertThat(spent(day)).isEqualTo("0.00 EUR");
    assertThat(Books.on(day).refused().get(0).left()).hasToString("0.00 EUR");
  }

  /** The order's own line paid nothing: the first payment by its day gives back first. */
  @Test
  void theOrderOfTheRecordsDoesNotSayWhichLineGetsItBack() {
    String head =
        """
        budget: [{line: a, title: A, amount: 9}, {line: b, title: B, amount: 9}, {line: c, title: C, amount: 9}]
        spending:
        """;
    String order = "  - {line: a, what: x, " + ORDER + "}\n";
    String first = "  - {line: b, what: x, " + FIRST + "}\n";
    String second = "  - {line: c, what: x, " + SECOND + "}\n";
    String back = "  - {line: a, what: x, " + refund("r", "o", "2026-02-01", "70") + "}\n";
    for (String spends : java.util.List.of(first + second, second + first)) {
      Books books = Books.on(Facts.of(Sample.ledger(head + order + spends + back), Sample.TODAY));
      assertThat(books.tally("b").spent()).hasToString("0.00 EUR");
      assertThat(books.tally("c").spent()).as("of 40, ten").hasToString("30.00 EUR");
    }
  }

  private static Facts on(String day, String... spends) {
    return Facts.of(day(spends).written(), LocalDate.parse(day));
  }

  @Test
  void aSpendCountsFromItsDayAndAnOrderUntilTheDayItIsGivenUp() {
    assertThat(spent(on("2026-01-10", FIRST))).as("the day before").isEqualTo("0.00 EUR");
    assertThat(spent(on("2026-01-11", FIRST))).as("the day itself").isEqualTo("60.00 EUR");
    String up = ORDER + ", withdrawn: 2026-02-20";
    assertThat(Books.on(on("2026-02-19", up)).tally("a").ordered()).hasToString("100.00 EUR");
    assertThat(Books.on(on("2026-02-20", up)).tally("a").ordered()).hasToString("0.00 EUR");
  }

  /** 30 came back on 15 January, when only b had paid; c paid five days later. */
  @Test
  void whatComesBackOfAnOrderIsTakenFromWhoHadPaidByThen() {
    String yaml =
        """
        budget: [{line: a, title: A, amount: 9}, {line: b, title: B, amount: 9}, {line: c, title: C, amount: 9}]
        spending:
        """
            + "  - {line: a, what: x, "
            + ORDER
            + "}\n"
            + "  - {line: b, what: x, "
            + FIRST
            + "}\n"
            + "  - {line: c, what: x, "
            + SECOND
            + "}\n"
            + "  - {line: c, what: x, "
            + refund("r", "o", "2026-01-15", "30")
            + "}\n";
    Books books = Books.on(Facts.of(Sample.ledger(yaml), Sample.TODAY));
    assertThat(books.tally("b").spent()).hasToString("30.00 EUR");
    assertThat(books.tally("c").spent()).hasToString("40.00 EUR");
  }
}
