package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was bought in place of what is missing. Four bolts are short; today is 2 March 2026. */
class PurchasesTest {
  private static final String SHORT =
      """
      budget: [{line: l, title: L, amount: 900}]
      materials: [{id: epoxy, kind: resin, density: 1.15 g/cm3, source: test}]
      kit: [{id: bolt, what: bolt, qty: 10}]
      deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}]
      shortages:
        - {id: b, item: bolt, qty: 4, found: 2026-01-06, cause: not-packed%s}
      """;
  private static final String BUY =
      ", options: [{kind: buy}, {kind: wait}], decided: {option: %s, on: 2026-01-07, by: nora}";

  private static String spend(String id, String state, String more) {
    return "{id: "
        + id
        + ", on: 2026-01-20, line: l, what: w, amount: 90, state: "
        + state
        + ", "
        + more
        + "}";
  }

  private static String told(String decided, String... spends) {
    Facts day =
        Facts.of(
            Sample.ledger(
                SHORT.formatted(decided) + "spending: [" + String.join(", ", spends) + "]\n"),
            Sample.TODAY);
    Balance balance = ShortageStandings.on(day).balances().get(0);
    ShortageStanding standing = balance.shortages().get(0);
    List<String> here =
        standing.covers().stream().map(c -> c.by().id() + " " + c.qty().told()).toList();
    List<String> coming =
        standing.coming().stream()
            .map(
                c ->
                    c.by().id()
                        + " "
                        + c.qty().told()
                        + " "
                        + c.on().map(Object::toString).orElse("some day"))
            .toList();
    List<String> spare =
        balance.spare().stream().map(c -> c.by().id() + " " + c.qty().told()).toList();
    List<String> more =
        balance.spareToCome().stream().map(c -> c.by().id() + " " + c.qty().told()).toList();
    return "here "
        + here
        + ", coming "
        + coming
        + ", spare "
        + spare
        + (more.isEmpty() ? "" : " and " + more);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "item: bolt, qty: 3; here [p 3], coming [], spare []",
        "item: bolt, qty: 6; here [p 4], coming [], spare [p 2]",
        "replaces: b; here [p 4], coming [], spare []", // all of it where it does not say
        "replaces: b, qty: 3; here [p 3], coming [], spare []",
        "item: bolt, because: b; here [p 4], coming [], spare []",
        "because: b, qty: 3; here [], coming [], spare []", // caused by it, of something else
        "item: bolt; here [], coming [], spare []", // nobody says how many
        "item: bolt, qty: 3 kg; here [], coming [], spare []",
        "item: bolt, qty: 3, expected: 2026-04-01; here [], coming [p 3 2026-04-01], spare []",
        "item: bolt, qty: 6, expected: 2026-04-01; here [], coming [p 4 2026-04-01], spare [] and"
            + " [p 2]",
        "item: bolt, qty: 3, expected: 2026-04-01, came: 2026-02-20; here [p 3], coming [], spare"
            + " []"
      })
  void whatWasPaidIsHereUnlessItWasToComeLater(String more, String told) {
    assertThat(told("", spend("p", "paid", more))).isEqualTo(told);
  }

  @Test
  void soManyWhereBuyingWasDecidedAreOfTheMissingThing() {
    String three = spend("p", "paid", "because: b, qty: 3");
    assertThat(told(BUY.formatted("buy"), three)).startsWith("here [p 3]");
    assertThat(told(BUY.formatted("wait"), three)).startsWith("here []");
    assertThat(told(BUY.formatted("buy"), spend("p", "paid", "because: b")))
        .as("nobody says how many")
        .startsWith("here []");
    assertThat(
            told(BUY.formatted("buy"), spend("p", "paid", "because: b, qty: 3, material: epoxy")))
        .as("a material is something else")
        .startsWith("here []");
  }

  private static String refund(String id, String more) {
    return "{id: "
        + id
        + ", on: 2026-02-01, line: l, what: back, state: refunded, refunds: p, "
        + more
        + "}";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "amount: 45; ; here [p 3]", // a part of the money, of no piece that is named
        "amount: 90; ; here []",
        "amount: 45; amount: 45; here []", // all of it, in two parts
        "amount: 45; amount: 44; here [p 3]",
        "amount: 30, qty: 1; ; here [p 2]",
        "amount: 30, qty: 1; amount: 30, qty: 1; here [p 1]",
        "amount: 90, qty: 1; ; here [p 2]", // it says how many
        "amount: 30, qty: 1; amount: 45; here [p 2]",
        "amount: 10 NZD; ; here []", // nobody can compare
        "amount: 30, qty: 1 kg; ; here [p 3]"
      })
  void whatWentBackForItsMoneyCoversNothing(String one, String two, String told) {
    String bought = spend("p", "paid", "item: bolt, qty: 3");
    assertThat(
            two == null || two.isBlank()
                ? told("", bought, refund("q", one))
                : told("", bought, refund("q", one), refund("r", two)))
        .startsWith(told);
  }

  @Test
  void anOrderIsHereAsFarAsItsPaymentsAre() {
    String order = spend("o", "ordered", "item: bolt, qty: 4, expected: 2026-04-01");
    assertThat(told("", order)).isEqualTo("here [], coming [o 4 2026-04-01], spare []");
    assertThat(told("", order, spend("p", "paid", "pays: o, qty: 1, came: 2026-02-02")))
        .isEqualTo("here [p 1], coming [o 3 2026-04-01], spare []");
    assertThat(told("", order, spend("p", "paid", "pays: o")))
        .as("all that is left of it")
        .isEqualTo("here [], coming [p 4 2026-04-01], spare []");
    assertThat(
            told(
                "",
                order,
                spend("p", "paid", "pays: o, qty: 3, came: 2026-02-02"),
                spend("q", "paid", "pays: o, qty: 3, came: 2026-02-03")))
        .as("no more than was ordered")
        .isEqualTo("here [p 3, q 1], coming [], spare []");
  }

  @Test
  void whatCameWithThePaymentOfTheRestCameWithTheDepositToo() {
    String order = spend("o", "ordered", "item: bolt, qty: 4, expected: 2026-04-01");
    String deposit = spend("p", "paid", "pays: o");
    assertThat(told("", order, deposit, spend("q", "paid", "pays: o, came: 2026-02-20")))
        .isEqualTo("here [p 4], coming [], spare []");
    assertThat(told("", order, deposit, spend("q", "paid", "pays: o, qty: 1, came: 2026-02-20")))
        .as("it says of how much")
        .startsWith("here [], coming [p 4 2026-04-01]");
  }

  @Test
  void whatAPaymentTellsIsToldOfItsOrder() {
    String order = spend("o", "ordered", "expected: 2026-04-01");
    assertThat(told("", order, spend("p", "paid", "pays: o, item: bolt, qty: 2")))
        .isEqualTo("here [], coming [p 2 2026-04-01], spare []");
    assertThat(told("", order, spend("p", "paid", "pays: o, replaces: b")))
        .isEqualTo("here [], coming [p 4 2026-04-01], spare []");
  }

  @Test
  void anOrderWithoutADayComesSomeDayOrWhenItsWayOutSays() {
    String order = spend("o", "ordered", "item: bolt, qty: 4, because: b");
    assertThat(told("", order)).isEqualTo("here [], coming [o 4 some day], spare []");
    assertThat(
            told(
                BUY.formatted("buy").replace("kind: buy", "kind: buy, arrives: 2026-04-05"), order))
        .isEqualTo("here [], coming [o 4 2026-04-05], spare []");
    assertThat(
            told(
                BUY.formatted("wait").replace("kind: wait", "kind: wait, arrives: 2026-04-05"),
                order))
        .as("the way out is another")
        .contains("o 4 some day");
  }

  @Test
  void whatWasBoughtBeforeItWasFoundWasBoughtForElse() {
    String early = spend("p", "paid", "item: bolt, qty: 4").replace("2026-01-20", "2026-01-05");
    assertThat(told("", early)).isEqualTo("here [], coming [], spare [p 4]");
    assertThat(told("", early.replace("2026-01-05", "2026-01-06"))).startsWith("here [p 4]");
    assertThat(told("", early.replace("qty: 4", "qty: 4, because: b")))
        .as("it says what for")
        .startsWith("here [p 4]");
  }
}
