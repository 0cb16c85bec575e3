package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/** When another way out would be ahead of the cheapest; every number by hand beside it. */
class TurningTest {
  private static List<Turning> turning(String hour, String options) {
    String yaml = Spars.LEDGER.replace(", own-hour: 14", hour);
    int from = yaml.indexOf("    options:\n");
    int to = yaml.indexOf("substitutions:\n");
    Ledger ledger =
        Sample.ledger(
            yaml.substring(0, from) + "    options: [" + options + "]\n" + yaml.substring(to));
    return Choice.of(Facts.of(ledger, Sample.TODAY), new Ref("short", Place.wholeFile("test")))
        .orElseThrow()
        .turning();
  }

  private static String way(String id, String keys) {
    return "{id: " + id + ", kind: buy, " + keys + "}";
  }

  private static String told(String hour, String one, String other) {
    List<Turning> turning = turning(hour, way("one", one) + ", " + way("other", other));
    assertThat(turning).hasSize(1);
    Turning only = turning.get(0);
    return only.way()
        + only.lessCost().map(money -> ", cheaper by " + money).orElse("")
        + only.belowHour().map(money -> ", an hour below " + money).orElse("")
        + only.aboveHour().map(money -> ", an hour above " + money).orElse("")
        + only.daysSooner().map(days -> ", sooner by " + days).orElse("")
        + only.dayWorth().map(money -> ", a day worth " + money).orElse("");
  }

  private static final String HOUR = ", own-hour: 14";
  private static final String SOON = "arrives: 2026-03-16, ";

  @Test
  void aWayOfWhichNobodyKnowsWhenItComesIsNotWeighedAgainstTheOthers() {
    String here = way("here", SOON + "cost: 100");
    assertThat(turning(HOUR, here + ", " + way("late", SOON + "cost: 200"))).hasSize(1);
    assertThat(turning(HOUR, here + ", " + way("late", "arrives: 2026-02-16, cost: 200")))
        .isEmpty();
    assertThat(turning(HOUR, here + ", " + way("some-day", "cost: 50"))).isEmpty();
  }

  /** 100 + 10 h at 14 are 240, 200 + 2 h are 228; level where 100 are 8 hours. */
  @Test
  void anHourThatIsWorthLessTurnsTheChoice() {
    String work = SOON + "cost: 100, hours: 10";
    String cash = SOON + "cost: 200, hours: 2";
    assertThat(told(HOUR, work, cash))
        .isEqualTo("one, cheaper by 12.00 EUR, an hour below 12.50 EUR");
    assertThat(told(HOUR, cash, work))
        .isEqualTo("other, cheaper by 12.00 EUR, an hour below 12.50 EUR");
    assertThat(told("", work, cash))
        .as("hours that have no value cost nothing")
        .isEqualTo("other, cheaper by 100.00 EUR, an hour above 12.50 EUR");
  }

  /** Dearer and more work: no value of an hour helps; 150 + 84 are 106 more than 100 + 28. */
  @Test
  void whatIsDearerAndMoreWorkTurnsByItsPriceAlone() {
    assertThat(told(HOUR, SOON + "cost: 100, hours: 2", SOON + "cost: 150, hours: 6"))
        .isEqualTo("other, cheaper by 106.00 EUR");
    assertThat(told(HOUR, SOON + "cost: 100", SOON + "cost: 100"))
        .isEqualTo("other, cheaper by 0.00 EUR");
    assertThat(told(HOUR, SOON + "cost: 10, hours: 1", SOON + "cost: 10, hours: 3"))
        .as("28 dearer, and it costs 10")
        .isEqualTo("other");
  }

  /** 20 April ends 24 days after 31 March, as in {@link ChoiceTest}; 50 over 24 days are 2.08. */
  @Test
  void aDayAtTheEndHasItsPrice() {
    String late = "arrives: 2026-04-20, ";
    assertThat(told(HOUR, SOON + "cost: 100", late + "cost: 150"))
        .isEqualTo("other, cheaper by 50.00 EUR, sooner by 24");
    assertThat(told(HOUR, late + "cost: 100", SOON + "cost: 150"))
        .isEqualTo("other, cheaper by 50.00 EUR, a day worth 2.08 EUR");
  }

  /**
   * Of two that cost the same the one that is here sooner beats the other, whichever stands first.
   */
  @Test
  void whatAnotherBeatsIsNotWhatTheOthersAreHeldAgainst() {
    String soon = SOON + "cost: 100";
    String late = "arrives: 2026-04-20, cost: 100";
    assertThat(told(HOUR, late, soon)).isEqualTo("one, cheaper by 0.00 EUR, sooner by 24");
    assertThat(told(HOUR, soon, late)).isEqualTo("other, cheaper by 0.00 EUR, sooner by 24");
  }

  @Test
  void whatHasNoPriceIsNotCompared() {
    assertThat(
            turning(HOUR, way("one", SOON + "cost: 100") + ", " + way("other", SOON + "hours: 1")))
        .isEmpty();
    assertThat(turning("", way("one", SOON + "cost: 100") + ", " + way("other", SOON + "hours: 1")))
        .isEmpty();
  }

  /** Cheaper by 90 and sooner by 6 days: neither is a reason to build what does not bear. */
  @Test
  void whatIsTooWeakIsNoChoiceAtAnyPrice() {
    String yaml =
        """
        kit: [{id: stave, what: stave, qty: 4 m}]
        stock: [{id: larch, what: larch, qty: 9 m}]
        tasks: [{id: t, what: T, takes: 1 d, uses: [{item: stave, qty: 4 m}]}]
        assessments: [{id: a, method: external, require: {strength: 1.0}, numbers: {strength: %s}}]
        substitutions: [{id: sub, for: short, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty: 4 m}], hold: t, grade: structural, why: larch is here, assessment: a}]
        shortages: [{id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, options: [{kind: substitute, substitution: sub, cost: 10, arrives: 2026-03-03}, {kind: buy, cost: 100, arrives: 2026-03-09}]}]
        """;
    assertThat(weighed(yaml.formatted("1.0"))).containsExactly("buy against substitute");
    assertThat(weighed(yaml.formatted("0.9"))).isEmpty();
  }

  private static List<String> weighed(String yaml) {
    return Choice.of(
            Facts.of(Sample.ledger(yaml), Sample.TODAY), new Ref("short", Place.wholeFile("test")))
        .orElseThrow()
        .turning()
        .stream()
        .map(each -> each.way() + " against " + each.against())
        .toList();
  }
}
