package kitwright.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

class ClaimLetterTest {
  private static final String YAML =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, contract: K 12}
      budget: [{line: spars, title: Spars, amount: 100}]
      kit:
        - {id: stave, what: stave, qty: 14 m, drawing: D-31, crate: C2, price: 10 NZD/m}
        - {id: hinge, what: hinge, qty: 4, price: 7.50 NZD}
      deliveries:
        - id: d1
          received: 2026-01-22
          from: kit-maker
          note: PL 7
          counted: [{item: stave, qty: 3.6 m}, {item: hinge, qty: 4, damaged: 1, wrong: 1}]
          evidence: [{file: there/crate.png, says: the open crate}]
        - {id: d2, received: 2026-02-10, from: kit-maker, note: PL 8, counted: [{item: stave, qty: 2 m}]}
      shortages:
        - {id: s1, item: stave, qty: 10.4 m, found: 2026-01-24, cause: not-packed}
        - {id: s2, item: hinge, qty: 2, found: 2026-01-25, cause: damaged, evidence: [{file: gone.png, says: bent}]}
      claims:
        - id: c1
          against: kit-maker
          shortages: [s1, s2]
          sent: 2026-01-26
          by: e-mail
          remedy: credit
          reply-by: 2026-02-09
          costs: [post, knives]
          then: we shall buy it here
          events:
            - {on: 2026-02-03, what: promised, text: half of it, expect: 2026-02-12}
            - {on: 2026-03-20, what: disputed, text: later than today}
      spending:
        - {id: post, on: 2026-01-25, line: spars, what: postage, amount: 6.20, to: post office, state: paid}
        - {id: knives, on: 2026-02-02, line: spars, what: planer knives, amount: 46.20, to: chandlery, state: paid}
      """;

  private static String letter(LocalDate today) {
    Facts now = Facts.of(Sample.ledger(YAML), today);
    return Told.markdown(ClaimLetter.of(ClaimStandings.on(now).of("c1").orElseThrow(), now));
  }

  /** A sum that leaves something out does not pass for all that is asked. */
  @Test
  void whatHasNoPriceIsSaidBesideTheSum() {
    Facts now =
        Facts.of(Sample.ledger(YAML.replace("qty: 4, price: 7.50 NZD}", "qty: 4}")), Sample.TODAY);
    String letter =
        Told.markdown(ClaimLetter.of(ClaimStandings.on(now).of("c1").orElseThrow(), now));
    assertThat(letter.replace('\n', ' '))
        .contains("The value of 2\u00a0× hinge, of which we have no price, is to be added.");
    assertThat(LETTER).doesNotContain("no price");
  }

  private static final String LETTER = letter(Sample.TODAY);

  private static String reminder(LocalDate today) {
    Facts now = Facts.of(Sample.ledger(YAML), today);
    return Told.markdown(ClaimSince.reminder(ClaimStandings.on(now).of("c1").orElseThrow(), now));
  }

  private static String since(LocalDate today) {
    Facts now = Facts.of(Sample.ledger(YAML), today);
    return Told.markdown(ClaimSince.page(ClaimStandings.on(now).of("c1").orElseThrow(), now));
  }

  @Test
  void readsTheSameOnEveryDayOnceItIsSent() {
    for (int days = 0; days < 200; days += 7) {
      assertThat(letter(LocalDate.of(2026, 1, 26).plusDays(days))).isEqualTo(LETTER);
    }
    assertThat(LETTER).doesNotContain("knives", "2026-02", "half of it");
  }

  @Test
  void namesThePartiesThePapersAndTheDays() {
    assertThat(Told.words(LETTER))
        .contains(
            "To: Redshank Kit Boats",
            "From: Nora, building Sample",
            "Contract: K 12",
            "Delivery notes: PL 7",
            "Our reference: c1",
            "Received: Thu 22 January 2026",
            "Found: Sat 24 January 2026 and Sun 25 January 2026",
            "Notified: Mon 26 January 2026, by e-mail");
  }

  @Test
  void hasALineAnItemWithWhatCameLaterApart() {
    assertThat(Told.tables(LETTER).get(0))
        .containsExactly(
            List.of("Item", "Promised", "Received", "Short", "We ask", "Value, NZD"),
            List.of(
                "stave, drawing D-31, crate C2",
                "14 m",
                "3.6 m",
                "10.4 m, not packed",
                "credit",
                "104.00"),
            List.of("hinge", "4", "4, 2 unusable", "2, damaged", "credit", "15.00"),
            List.of("All", "", "", "", "", "119.00"));
  }

  @Test
  void aReminderTellsWhatCameSinceAndWhatIsStillOpen() {
    String reminder = reminder(Sample.TODAY);
    assertThat(Told.tables(reminder).get(1).get(1))
        .as("2 m of 10.4 came in between")
        .containsExactly(
            "stave, drawing D-31, crate C2",
            "14 m",
            "3.6 m, 2 m sent since",
            "10.4 m, not packed",
            "credit",
            "84.00");
    assertThat(Told.words(reminder))
        .contains(
            "On Mon 26 January 2026 we wrote to you",
            "In money 52.40 EUR and 99.00 NZD are still open.");
  }

  @Test
  void thePageOfWhatCameSinceAddsUpEachCurrency() {
    assertThat(Told.words(since(Sample.TODAY)))
        .contains(
            "Asked in money: 52.40 EUR and 99.00 NZD; granted: –; come back: –; still open: 52.40"
                + " EUR and 99.00 NZD.");
  }

  @Test
  void listsCostsRemedyPeriodAndWhatFollows() {
    assertThat(Told.tables(LETTER).get(1))
        .contains(List.of("2026-01-25", "postage", "post office", "6.20"));
    assertThat(Told.words(LETTER))
        .contains(
            "In money we ask for 6.20 EUR and 119.00 NZD, the costs below among it.",
            "We ask you to credit us with the value of what is missing, and to make good the costs",
            "Please answer by Mon 9 February 2026.",
            "If there is no answer by then: We shall buy it here.");
  }

  @Test
  void provesItsEvidenceAndSaysWhatIsNotThere() {
    assertThat(Told.tables(LETTER).get(2))
        .containsExactly(
            List.of("File", "Shows", "SHA-256 begins with"),
            List.of("there/crate.png", "the open crate", "e3b0c44298fc"),
            List.of("gone.png", "bent", "the file is not there"));
    assertThat(LETTER)
        .contains(
            "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855  there/crate.png\n");
  }

  @Test
  void tellsTheCorrespondenceUpToTheDay() {
    assertThat(Told.tables(since(Sample.TODAY)).get(1))
        .containsExactly(
            List.of("On", "What", "In words"),
            List.of("2026-01-26", "sent", "this claim"),
            List.of("2026-02-03", "promised", "half of it, for 2026-02-12"));
    assertThat(since(LocalDate.of(2026, 3, 21))).contains("later than today");
  }

  @Test
  void holdsNoHintsToItsSender() {
    assertThat(Told.words(LETTER)).doesNotContain("For the sender", "legal advice");
  }

  @Test
  void provesNothingByPicturesOfOtherThings() {
    String two =
        YAML.replace("shortages: [s1, s2]", "shortages: [s1]")
            .replace(
                "evidence: [{file: there/crate.png, says: the open crate}]",
                "evidence: [{file: there/crate.png, says: the open crate}, {file: gone.png, says:"
                    + " bent}]");
    Facts now = Facts.of(Sample.ledger(two), Sample.TODAY);
    assertThat(Told.markdown(ClaimLetter.of(ClaimStandings.on(now).of("c1").orElseThrow(), now)))
        .contains("there/crate.png")
        .doesNotContain("gone.png");
  }
}
