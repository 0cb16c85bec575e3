package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import org.junit.jupiter.api.Test;

/** More went into the work than there was. Of the larch there are five, of the rope 14 m. */
class StockOverusedTest {
  private static final StockOverused RULE = new StockOverused();
  private static final String RACK =
      """
      stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 5}]
      kit: [{id: rope, what: rope, qty: 14 m}]
      """;

  private static String log(String day, String used) {
    return "---\nday: " + day + "\nused: [" + used + "]\n---\n";
  }

  @Test
  void theLineWithWhichItBecomesTooMuchIsNamedOnce() {
    assertThat(
            Sample.words(
                RULE,
                RACK
                    + log("2026-02-10", "{stock: larch, qty: 3}")
                    + log("2026-02-11", "{stock: larch, qty: 3}")
                    + log("2026-02-12", "{stock: larch, qty: 1}")))
        .containsExactly(
            """
            STOP stock-overused 9
            By 11 February 2026, 6 × larch went into the work, but there were only 5.
            What is left of it is told wrongly, and so is what must be bought.
            Correct what is recorded as used, or count and record what there really was.
            stock larch, log day 2026-02-11\
            """);
  }

  @Test
  void whatCameToBeOnlyLaterIsTold() {
    String later = RACK.replace("pieces: 5", "pieces: 5, since: 2026-02-%s");
    String log = log("2026-02-11", "{stock: larch, qty: 6}");
    assertThat(Sample.words(RULE, later.formatted("12") + log))
        .containsExactly(
            """
            STOP stock-overused 5
            By 11 February 2026, 6 × larch went into the work, but there were only 5, and its “since”\
             is a later day.
            What is left of it is told wrongly, and so is what must be bought.
            Correct what is recorded as used, or count and record what there really was; correct\
             “since” where it was there before.
            stock larch, log day 2026-02-11\
            """);
    assertThat(Sample.words(RULE, later.formatted("11") + log).get(0)).doesNotContain("since");
  }

  @Test
  void allOfItMayBeUsed() {
    assertThat(
            Sample.words(
                RULE,
                RACK
                    + log("2026-02-10", "{stock: larch, qty: 3}")
                    + log("2026-02-11", "{stock: larch, qty: 2}")
                    + log("2026-02-12", "{stock: larch, qty: 0}")))
        .isEmpty();
  }

  @Test
  void whatACutTookOnADayBetweenIsReckonedByDays() {
    String cut =
        "cuts: [{id: c, from: [larch], kerf: 3 mm, done: %s, used: [{stock: larch, pieces: 3}],"
            + " parts: [{mark: a, length: 400 mm}]}]\n";
    String log = log("2026-02-12", "{stock: larch, qty: 4}");
    assertThat(Sample.words(RULE, RACK + cut.formatted("2026-02-10") + log))
        .containsExactly(
            """
            STOP stock-overused 6
            By 12 February 2026, 7 × larch went into the work, but there were only 5.
            What is left of it is told wrongly, and so is what must be bought.
            Correct what is recorded as used, or count and record what there really was.
            stock larch, log day 2026-02-12\
            """);
    assertThat(Sample.words(RULE, RACK + cut.formatted("2026-02-14") + log))
        .singleElement()
        .asString()
        .startsWith("STOP stock-overused 3\nBy 14 February 2026, 7 × larch")
        .endsWith("stock larch, cut c");
  }

  @Test
  void ofTheKitOnlyWhatWasCountedGoodCanBeUsed() {
    String count =
        "deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: rope, qty:"
            + " 14 m, damaged: 2 m}]}]\n";
    String twelve = log("2026-02-10", "{item: rope, qty: 12 m}");
    String more = log("2026-02-10", "{item: rope, qty: 12.5 m}");
    assertThat(Sample.words(RULE, RACK + count + twelve)).isEmpty();
    assertThat(Sample.words(RULE, RACK + count + more))
        .singleElement()
        .asString()
        .contains(
            "\nBy 10 February 2026, 12.5 m of rope went into the work, but only 12 m were counted"
                + " good.\n")
        .endsWith("\nkit item rope, log day 2026-02-10");
    assertThat(Sample.words(RULE, RACK + twelve))
        .singleElement()
        .asString()
        .contains("12 m of rope went into the work, but nobody has counted any.");
  }
}
