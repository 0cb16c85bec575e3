package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is still to come, and by which rates; what the sums lack. */
class ToComeTest {
  private static Facts day(String yaml) {
    return Facts.of(Sample.ledger(yaml), Sample.TODAY);
  }

  private static LineState line(String yaml) {
    return Account.on(day(yaml)).line("a").orElseThrow();
  }

  private static final String LINE = "budget: [{line: a, title: A, amount: 1000}]\n";

  private static final String NEED =
      LINE
          + """
          kit: [{id: stave, what: stave, qty: 4 m, price: 10 EUR/m}]
          tasks: [{id: plane, what: Plane, takes: 1 d, budget: a, uses: [{item: stave, qty: 14 m}]}]
          """;

  private static String bought(String... spends) {
    StringBuilder all = new StringBuilder("spending:\n");
    for (String each : spends) {
      all.append("  - {line: a, what: x, ").append(each).append("}\n");
    }
    return all.toString();
  }

  /** 14 m are needed and 4 m are in the kit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the last price by day, not by record | id: b, on: 2026-02-02, amount: 24, item: stave,"
            + " qty: 2 m, state: paid | id: a, on: 2026-02-01, amount: 22, item: stave, qty: 2 m,"
            + " state: paid | 72.00 EUR", // 6 m at 12
        "an order brings it, its payment nothing more | id: o, on: 2026-02-01, amount: 40, item:"
            + " stave, qty: 4 m, state: ordered | id: p, on: 2026-02-02, amount: 40, item: stave,"
            + " qty: 4 m, state: paid, pays: o | 60.00 EUR",
        "of an order that does not say what, the payment does | id: o, on: 2026-02-01, amount: 40,"
            + " state: ordered | id: p, on: 2026-02-02, amount: 40, item: stave, qty: 4 m, state:"
            + " paid, pays: o | 60.00 EUR",
        "an order given up brings nothing | id: o, on: 2026-02-01, amount: 40, item: stave, qty: 4"
            + " m, state: ordered, withdrawn: 2026-02-20 | | 100.00 EUR",
        "a refund brings nothing | id: o, on: 2026-02-01, amount: 90, state: paid | id: r, on:"
            + " 2026-02-05, amount: 4, item: stave, qty: 4 m, state: refunded, refunds: o | 100.00"
            + " EUR",
        "without a quantity it brings nothing | id: o, on: 2026-02-01, amount: 90, item: stave,"
            + " state: paid | | 100.00 EUR",
        "no quantity is no price | id: o, on: 2026-02-01, amount: 90, item: stave, qty: 0 m, state:"
            + " paid | | 100.00 EUR",
        "what comes in place of missing goods is in the promise | id: o, on: 2026-02-01, amount:"
            + " 60, item: stave, qty: 5 m, state: paid, because: short | | 108.00 EUR", // 9 m at 12
      })
  void whatIsBoughtIsNotToComeAndTheRestCostsItsLastPrice(
      String why, String first, String second, String cost) {
    String short_ =
        "shortages: [{id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed}]\n";
    Remaining left =
        line(NEED + short_ + (second == null ? bought(first) : bought(first, second))).remaining();
    assertThat(left.likely()).as(why).hasToString(cost);
    assertThat(left.basis()).isEqualTo(Remaining.Basis.NEEDS);
  }

  /** 14 kg are needed. */
  @Test
  void stockThatNamesItsPurchaseIsCountedOnce() {
    String yaml =
        LINE
            + """
            materials: [{id: resin, kind: resin, density: 1100 kg/m3, price: 10 EUR/kg, source: invented}]
            tasks: [{id: glue, what: Glue, takes: 1 d, budget: a, uses: [{material: resin, qty: 14 kg}]}]
            stock: [{id: can, what: resin, material: resin, qty: 4 kg%s}]
            """
            + bought("id: p, on: 2026-02-01, amount: 40, material: resin, qty: 4 kg, state: paid");
    assertThat(line(yaml.formatted(", bought: p")).remaining().likely()).hasToString("100.00 EUR");
    assertThat(line(yaml.formatted("")).remaining().likely()).hasToString("60.00 EUR");
  }

  @Test
  void theThingThatHasNoPriceIsNamedBesideWhatHas() {
    String yaml =
        NEED.replace("qty: 14 m}]}", "qty: 14 m}, {item: cleat, qty: 3}, {item: eye, qty: 2}]}")
            .replace(
                "EUR/m}]", "EUR/m}, {id: cleat, what: cleat, qty: 1}, {id: eye, what: e, qty: 1}]");
    assertThat(line(yaml).remaining().likely()).hasToString("100.00 EUR");
    assertThat(line(yaml).remaining().unpriced()).containsExactly("2 × cleat", "1 × eye");
    assertThat(Account.on(day(yaml)).whole().remaining().unpriced()).hasSize(2);
    String free = NEED.replace(", price: 10 EUR/m", "");
    assertThat(line(free).remaining().basis())
        .as("nothing that it lacks has a price")
        .isEqualTo(Remaining.Basis.BUDGET);
  }

  @Test
  void workThatIsGivenUpNeedsAndEarnsNothing() {
    assertThat(line(NEED.replace("takes: 1 d,", "takes: 1 d, withdrawn: 2026-02-01,")).remaining())
        .satisfies(
            left -> assertThat(left.basis()).isEqualTo(Remaining.Basis.BUDGET),
            left -> assertThat(left.likely()).hasToString("1000.00 EUR"));
    String half =
        LINE
            + """
            tasks:
              - {id: b, what: B, takes: 1 d, budget: a, started: 2026-02-01, finished: 2026-02-01}
              - {id: c, what: C, takes: 1 d, budget: a%s}
            """;
    assertThat(line(half.formatted("")).remaining().likely()).hasToString("500.00 EUR");
    assertThat(line(half.formatted(", withdrawn: 2026-02-01")).remaining().likely())
        .hasToString("0.00 EUR");
  }

  /** An order that a shortage brought about is not part of what the budget was made for. */
  @Test
  void ofWorkUnderWayOnlyTheOrdersThatWereForeseenAreTakenOff() {
    String yaml =
        LINE
            + """
            kit: [{id: stave, what: stave, qty: 4 m}]
            shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed}]
            tasks:
              - {id: b, what: B, takes: 1 d, budget: a, started: 2026-02-01, finished: 2026-02-01}
              - {id: c, what: C, takes: 1 d, budget: a}
            """;
    String order = "id: o, on: 2026-02-01, amount: 100, state: ordered";
    assertThat(line(yaml + bought(order)).remaining().likely()).hasToString("400.00 EUR");
    assertThat(line(yaml + bought(order + ", because: s")).remaining().likely())
        .hasToString("500.00 EUR");
    String other = yaml.replace("amount: 1000}]", "amount: 1000}, {line: b, title: B, amount: 9}]");
    assertThat(line(other + bought(order).replace("line: a", "line: b")).remaining().likely())
        .hasToString("500.00 EUR");
    assertThat(line(yaml + bought(order.replace("ordered", "paid"))).remaining().likely())
        .as("what is paid is not taken off what is not earned")
        .hasToString("500.00 EUR");
  }

  @Test
  void onNoLineStandsOnlyWhatThereIs() {
    String yaml =
        """
        kit: [{id: stave, what: stave, qty: 4 m}]
        shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, options: [{kind: buy, cost: %s}]}]
        """;
    assertThat(Account.on(day(LINE)).elsewhere()).isEmpty();
    assertThat(Account.on(day(LINE + yaml.formatted("0"))).elsewhere()).isEmpty();
    assertThat(Account.on(day(LINE + yaml.formatted("5"))).elsewhere().orElseThrow().waysOut())
        .hasToString("5.00 EUR");
    String undone =
        "spending: [{id: p, on: 2026-02-01, line: z, what: x, amount: 5, state: paid}, {id: r, on:"
            + " 2026-02-02, line: z, what: x, amount: 5, state: refunded, refunds: p}]\n";
    assertThat(Account.on(day(LINE + undone)).elsewhere().orElseThrow().forecast())
        .as("it came and went")
        .hasToString("0.00 EUR");
  }

  private static final String WITHOUT =
      """
      budget: [{line: a, title: A, amount: 1000, remaining: 0}]
      kit: [{id: stave, what: stave, qty: 4 m}, {id: oar, what: oar, qty: 2}]
      shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, line: a, options: [{kind: do-without, cost: 60}], decided: {option: do-without, on: 2026-02-02, by: office}}]
      tasks: [{id: t, what: T, takes: 1 d, uses: [{item: %s, qty: 1 %s}]%s}]
      """;

  @ParameterizedTest
  @CsvSource({
    "stave, m, '', 60.00 EUR",
    "stave, m, ', started: 2026-02-03, finished: 2026-02-04', 0.00 EUR",
    "stave, m, ', withdrawn: 2026-02-04', 0.00 EUR",
    "oar, each, '', 60.00 EUR", // nothing tells which work does without it
  })
  void whatDoingWithoutCostsIsToComeUntilTheWorkIsDone(
      String item, String unit, String state, String cost) {
    assertThat(line(WITHOUT.formatted(item, unit, state)).waysOut()).hasToString(cost);
  }

  private static final String OTHERWISE =
      """
      budget: [{line: a, title: A, amount: 1000, remaining: 0}]
      kit: [{id: stave, what: stave, qty: 4 m}]
      stock: [{id: larch, what: larch, qty: 9 m}]
      tasks: [{id: t, what: T, takes: 1 d, budget: a%s}]
      substitutions: [{id: sub, for: s, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty: 4 m}], hold: t, grade: finish, why: larch is here%s}]
      shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, line: a, options: [{kind: substitute, substitution: sub, cost: 60}], decided: {option: substitute, on: 2026-02-02, by: office}}]
      """;

  private static final String SIGNED = ", sign-offs: [{by: nora, on: 2026-02-12}]";

  @ParameterizedTest
  @CsvSource({
    "false, '', 60.00 EUR",
    "true, '', 60.00 EUR",
    "true, ', started: 2026-02-13, finished: 2026-02-14', 0.00 EUR",
    "true, ', withdrawn: 2026-02-14', 0.00 EUR",
  })
  void whatBuildingOtherwiseCostsIsToComeUntilTheHeldWorkIsDone(
      boolean signed, String state, String cost) {
    assertThat(line(OTHERWISE.formatted(state, signed ? SIGNED : "")).waysOut()).hasToString(cost);
  }

  /** Not held, it is built by the work that asks for the part; of no such work nothing is known. */
  @ParameterizedTest
  @CsvSource({
    "'', '', 60.00 EUR",
    "'', ', started: 2026-02-13, finished: 2026-02-14', 60.00 EUR",
    "', uses: [{item: stave, qty: 4 m}]', '', 60.00 EUR",
    "', uses: [{item: stave, qty: 4 m}]', ', started: 2026-02-13, finished: 2026-02-14', 0.00 EUR",
  })
  void whatBuildingOtherwiseWithoutAHeldTaskCostsIsToComeUntilItsWorkIsKnownToBeDone(
      String uses, String state, String cost) {
    String signed = OTHERWISE.formatted(uses + state, SIGNED);
    assertThat(line(signed.replace(" hold: t,", "")).waysOut()).hasToString(cost);
    assertThat(
            line(signed.replace(" hold: t,", "").replace("substitution: sub, cost", "cost"))
                .waysOut())
        .as("the option does not say which: the one that answers the shortage")
        .hasToString(cost);
  }

  /** The only way out that is listed is taken once it is signed, decided or not. */
  @Test
  void whatBuildingOtherwiseCostsIsToComeThoughNobodyWroteTheDecision() {
    String signed = OTHERWISE.formatted("", SIGNED).replaceFirst(", decided: \\{.*?}", "");
    assertThat(line(signed).waysOut()).hasToString("60.00 EUR");
    assertThat(line(signed.replace("cost: 60}]", "cost: 60}, {kind: buy, cost: 40}]")).waysOut())
        .as("nothing is taken yet")
        .hasToString("40.00 EUR");
  }

  @Test
  void whatBuildingOtherwiseCostsIsToComeWhereItHoldsATaskThatNobodyKnows() {
    String astray = OTHERWISE.formatted("", SIGNED).replace("hold: t", "hold: tt");
    assertThat(
            Account.on(Facts.of(Sample.read(astray, new Findings()).orElseThrow(), Sample.TODAY))
                .line("a")
                .orElseThrow()
                .waysOut())
        .hasToString("60.00 EUR");
  }

  /** Nobody has said what it costs: nothing, where all that it takes is here. */
  @ParameterizedTest
  @CsvSource({
    "substitute, 9 m, 1",
    "substitute, 3 m, 0", // some of it must be bought
    "wait, 9 m, 1",
    "do-without, 9 m, 1",
    "buy, 9 m, 0"
  })
  void aWayOutWithoutACostIsFreeOnlyWhereNothingMustBeBought(String kind, String here, int ways) {
    String yaml =
        OTHERWISE
            .formatted("", "")
            .replace("cost: 60", "none")
            .replaceFirst("options: .*", "options: [{kind: " + kind + ", substitution: sub}]}]")
            .replace("qty: 9 m", "qty: " + here);
    assertThat(Account.on(day(yaml)).ways()).hasSize(ways);
  }

  @Test
  void theLineOfAWayOutIsItsOwnElseThatOfTheHeldWork() {
    String no = OTHERWISE.formatted("", "").replace(", line: a, options", "%s, options");
    assertThat(line(no.formatted("")).waysOut()).as("of the held work").hasToString("60.00 EUR");
    assertThat(line(no.formatted(", line: nowhere")).waysOut())
        .as("a line that is not in the budget is none")
        .hasToString("60.00 EUR");
  }

  @Test
  void ofARangeTheLeastAndTheMostOfAllWaysOutAreTold() {
    String yaml =
        LINE
            + """
            kit: [{id: stave, what: stave, qty: 4 m}]
            shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, line: a, options: [{kind: buy, cost: [50, 80, 95]}, {kind: buy, cost: [70, 75, 90]}]}]
            """;
    OpenShortage open = Account.on(day(yaml)).ways().get(0);
    assertThat(List.of(open.least(), open.likely(), open.most()))
        .extracting(Object::toString)
        .containsExactly("50.00 EUR", "75.00 EUR", "95.00 EUR");
  }

  private static final String RATES =
      """
      rates:
        - {on: 2026-01-05, from: NZD, to: EUR, rate: 0.50, source: x}
        - {on: 2026-02-01, from: NZD, to: EUR, rate: 0.60, source: x}
        - {on: 2026-02-01, from: GBP, to: EUR, rate: 1.15, source: x}
        - {on: 2026-02-01, from: USD, to: EUR, rate: 0.92, source: x}
        - {on: 2026-02-01, from: CHF, to: EUR, rate: 1.05, source: x}
      """;

  private static List<String> rates(String yaml) {
    return RateUsed.on(day(RATES + yaml)).stream()
        .map(each -> each.quote().from() + ": " + String.join(", ", each.of()))
        .toList();
  }

  /** The kit's price, in francs, is used only where something of the kit must still be bought. */
  @Test
  void theRatesOfTheSumsAreNamedWithWhatTheyConverted() {
    String yaml =
        """
        budget: [{line: a, title: A, amount: 1000%s}, {line: b, title: B, amount: 100 NZD}]
        kit: [{id: stave, what: stave, qty: 4 m, price: 10 CHF/m}]
        tasks: [{id: plane, what: Plane, takes: 1 d, budget: a, uses: [{item: stave, qty: 14 m}]}]
        shortages: [{id: s, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, options: [{kind: buy, cost: 9 USD}]%s}]
        borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok, repair: {what: bent, found: 2026-02-10, cost: 9 GBP, line: a}}]
        spending:
          - {id: p, on: 2026-02-03, line: a, what: x, amount: 5 NZD, state: paid}
          - {id: q, on: 2026-02-04, line: a, what: x, amount: 6 NZD, state: paid}
          - {id: r, on: 2026-02-04, line: a, what: x, amount: 6, state: paid}
        """;
    assertThat(rates(yaml.formatted("", "")))
        .containsExactly(
            "NZD: the budget",
            "NZD: p, q",
            "USD: what is still to come",
            "GBP: what is still to come",
            "CHF: what is still to come");
    assertThat(rates(yaml.formatted(", remaining: 7 GBP", "")))
        .as("what is stated goes before the price of the kit")
        .containsExactly(
            "NZD: the budget",
            "NZD: p, q",
            "GBP: what is still to come",
            "USD: what is still to come");
    assertThat(
            rates(
                yaml.formatted("", "")
                    .replace("qty: 4 m, found: 2026-01-24", "qty: 4 m, found: 2026-04-24")))
        .as("the shortage is not found yet")
        .noneMatch(each -> each.startsWith("USD"));
  }

  @Test
  void theRatesOfSomeSpendsAreThoseAlone() {
    Account account =
        Account.on(
            day(
                RATES
                    + LINE
                    + bought(
                        "id: p, on: 2026-02-03, amount: 5 NZD, state: paid",
                        "id: q, on: 2026-02-03, amount: 5 GBP, state: paid",
                        "id: r, on: 2026-02-03, amount: 5, state: paid")));
    assertThat(account.spendsOn("a")).hasSize(3);
    assertThat(account.spendsOn("b")).isEmpty();
    assertThat(RateUsed.of(account.spendsOn("a").subList(1, 3)))
        .extracting(each -> each.quote().from() + " " + each.of())
        .containsExactly("GBP [q]");
  }

  private static List<String> lacking(String yaml, String line) {
    return Lacks.ofLine(
        line, Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY));
  }

  /** Two lines; a spend that cannot be read says which of them it is on, or none can tell. */
  @Test
  void whatCannotBeReadIsLackingOnItsLineOrOnAllWhereNobodyCanTell() {
    String budget =
        "budget: [{line: aft, title: A, amount: 9}, {line: bow, title: B, amount: 9}]\n";
    String spend =
        "spending: [{id: p, on: 2026-02-03, line: %s, what: x, amount: 5%s, state: paid}]\n";
    String unread = budget + spend.formatted("aft", " lots");
    assertThat(lacking(unread, "aft")).containsExactly("spend p cannot be read");
    assertThat(lacking(unread, "bow")).isEmpty();
    String nobody = budget + spend.formatted("keel", " lots");
    assertThat(lacking(nobody, "aft")).hasSize(1);
    assertThat(lacking(nobody, "bow")).hasSize(1);
    String line = budget.replace("amount: 9}]", "amount: lots}]");
    assertThat(lacking(line, "bow")).containsExactly("budget line bow cannot be read");
    assertThat(lacking(line, "aft")).isEmpty();
    String idle = budget + "stock: [{id: aft, what: x, qty: lots}]\n";
    assertThat(lacking(idle, "aft")).as("stock is no money").isEmpty();
    assertThat(lacking(budget + spend.formatted("aft", ""), "aft")).isEmpty();
    String foreign = budget + spend.formatted("aft", " NZD");
    assertThat(lacking(foreign, "aft"))
        .containsExactly("there is no rate for 5.00 NZD of the spend p");
    assertThat(lacking(foreign, "bow")).isEmpty();
  }

  @Test
  void ofSpendingOnlyWhatIsOrMayHoldSpendingIsLacking() {
    String spend = LINE + "spending: [{id: p, on: 2026-02-03, line: a, what: x, amount: lots}]\n";
    String kit = LINE + "kit: [{id: stave, what: stave, qty: lots}]\n";
    String any = LINE + "spendings: [{id: p, on: 2026-02-03, line: a, what: x, amount: 5}]\n";
    assertThat(ofSpending(spend)).containsExactly("spend p cannot be read");
    assertThat(ofSpending(kit)).isEmpty();
    assertThat(ofSpending(any))
        .containsExactly(
            "“spendings” in sample.yaml on line 2 cannot be read, and may hold some of it");
  }

  private static List<String> ofSpending(String yaml) {
    return Lacks.ofSpending(
        Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY));
  }

  /** Two spends of a shortage, on two lines: what is still to come is where the first was. */
  @Test
  void theLineOfAWayOutIsElseThatOfTheFirstSpendByItsDay() {
    String yaml =
        """
        budget: [{line: a, title: A, amount: 100, remaining: 0}, {line: b, title: B, amount: 100, remaining: 0}]
        kit: [{id: eye, what: eye, qty: 4}]
        shortages: [{id: s, item: eye, qty: 4, found: 2026-01-24, cause: not-packed, options: [{kind: buy, cost: 50}]}]
        spending:
          - {id: x, on: 2026-02-09, line: a, what: courier, amount: 5, state: paid, because: s}
          - {id: y, on: %s, line: b, what: courier, amount: 5, state: paid, because: s}
        """;
    assertThat(ways(yaml.formatted("2026-02-08"))).containsExactly("0.00 EUR", "40.00 EUR");
    assertThat(ways(yaml.formatted("2026-02-10"))).containsExactly("40.00 EUR", "0.00 EUR");
    assertThat(ways(yaml.formatted("2026-02-09")))
        .as("of one day the first by its id")
        .containsExactly("40.00 EUR", "0.00 EUR");
  }

  private static List<String> ways(String yaml) {
    return Account.on(day(yaml)).lines().stream().map(each -> each.waysOut().toString()).toList();
  }

  @Test
  void theContingencyGrowsByNothingThatIsLeftOfTheBudget() {
    String build = "build: {name: S, currency: EUR, started: 2026-01-05, contingency: 500}\n";
    String line = "budget: [{line: a, title: A, amount: 1000, remaining: %d}]\n";
    assertThat(left(build + line.formatted(900))).hasToString("500.00 EUR");
    assertThat(left(build + line.formatted(1000))).hasToString("500.00 EUR");
    assertThat(left(build + line.formatted(1600))).hasToString("-100.00 EUR");
  }

  private static kitwright.value.Money left(String yaml) {
    return Account.on(day(yaml)).contingencyLeft().orElseThrow();
  }

  /**
   * Half of 1000 is not earned, and 600 of it are ordered: nothing more comes, and nothing back.
   */
  @Test
  void moreOrderedThanIsLeftBringsNothingBack() {
    String yaml =
        LINE
            + """
            tasks:
              - {id: b, what: B, takes: 1 d, budget: a, started: 2026-02-01, finished: 2026-02-01}
              - {id: c, what: C, takes: 1 d, budget: a}
            """;
    assertThat(
            line(yaml + bought("id: o, on: 2026-02-01, amount: 600, state: ordered"))
                .remaining()
                .likely())
        .hasToString("0.00 EUR");
  }

  /** What came back of another payment makes no repair dearer. */
  @Test
  void moreBackThanWasPaidForARepairAddsNothingToIt() {
    String yaml =
        LINE
            + "borrowed: [{id: saw, tool: saw, from: pell, on: 2026-02-01, condition: ok, repair:"
            + " {what: bent, found: 2026-02-10, cost: 45, line: a}}]\n";
    String paid = "id: p, on: 2026-02-11, amount: 30, state: paid";
    assertThat(line(yaml + bought(paid + ", repairs: saw")).repairs()).hasToString("15.00 EUR");
    assertThat(
            line(yaml
                    + bought(
                        paid,
                        "id: r, on: 2026-02-12, amount: 30, state: refunded, refunds: p,"
                            + " repairs: saw"))
                .repairs())
        .hasToString("45.00 EUR");
  }
}
