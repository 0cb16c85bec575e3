package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a claim has come, and what it asks. */
class ClaimStandingsTest {
  private static final String RECORDS =
      """
      kit:
        - {id: stave-s, what: spruce stave, qty: 14 m, price: 11.40 NZD/m}
        - {id: cleat, what: cleat, qty: 4, price: 9 EUR}
      shortages:
        - {id: s1, item: stave-s, qty: 4 m, found: 2026-01-24, cause: not-packed}
        - {id: s2, item: cleat, qty: 2, found: 2026-01-24, cause: damaged}
      spending:
        - {id: knives, on: 2026-02-02, line: tools, what: knives, amount: 46.20 EUR, state: paid, because: s1}
      deliveries:
        - {id: d1, received: 2026-01-22, from: kit-maker, counted: [{item: stave-s, qty: 10 m}, {item: cleat, qty: 4, damaged: 2}]}
      """;

  private static ClaimStandings standings(String yaml, String today) {
    Ledger ledger = Sample.ledger(yaml);
    LocalDate day = LocalDate.parse(today);
    return ClaimStandings.on(Facts.of(ledger, day));
  }

  private static ClaimStanding claim(String more, String today) {
    return standings(
            RECORDS
                + "claims: [{id: c1, against: kit-maker, shortages: [s1, s2], remedy: credit, costs: [knives], %s}]"
                    .formatted(more),
            today)
        .of("c1")
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-01-25, DRAFT",
    "2026-01-26, SENT",
    "2026-02-03, ACKNOWLEDGED",
    "2026-02-10, ANSWERED",
    "2026-02-12, DISPUTED",
    "2026-02-20, SETTLED"
  })
  void aClaimComesAsFarAsTheRecordsOfTheDaySay(String today, String state) {
    ClaimStanding standing =
        claim(
            "sent: 2026-01-26, reply-by: 2026-02-09, settled: {on: 2026-02-20, how: credited},"
                + " events: [{on: 2026-02-12, what: disputed}, {on: 2026-02-03, what:"
                + " acknowledged}, {on: 2026-02-10, what: answered}]",
            today);
    assertThat(standing.state()).hasToString(state);
  }

  @ParameterizedTest
  @CsvSource({"2026-02-08, 1, false", "2026-02-09, 0, false", "2026-02-10, -1, true"})
  void anAnswerIsLateFromTheDayAfterReplyBy(String today, long left, boolean overdue) {
    ClaimStanding standing = claim("sent: 2026-01-26, reply-by: 2026-02-09", today);
    assertThat(standing.daysLeft()).contains(left);
    assertThat(standing.isOverdue()).isEqualTo(overdue);
  }

  @Test
  void nobodyIsLateWithADraftOrAfterAnAnswer() {
    assertThat(claim("reply-by: 2026-02-09", "2026-03-02").daysLeft()).isEmpty();
    assertThat(
            claim(
                    "sent: 2026-01-26, reply-by: 2026-02-09, events: [{on: 2026-02-20, what:"
                        + " answered}]",
                    "2026-03-02")
                .isOverdue())
        .isFalse();
  }

  @Test
  void eachLineIsWorthWhatIsOwedAtTheKitsPrice() {
    ClaimStanding standing = claim("sent: 2026-01-26", "2026-03-02");
    assertThat(standing.lines())
        .extracting(line -> line.value().orElseThrow().toString())
        .containsExactly("45.60 NZD", "18.00 EUR");
    assertThat(standing.goods()).as("credit is asked, no goods").isEmpty();
    assertThat(standing.extraCosts()).hasToString("[46.20 EUR]");
    assertThat(standing.asked()).hasToString("[64.20 EUR, 45.60 NZD]");
    assertThat(standing.age()).contains(35L);
  }

  @Test
  void whatWasDeliveredSinceIsNotOwedAnyMore() {
    ClaimStandings all =
        standings(
            RECORDS
                + "  - {id: d2, received: 2026-02-20, from: kit-maker, counted: [{item: stave-s,"
                + " qty: 3 m}]}\n"
                + "claims: [{id: c1, against: kit-maker, shortages: [s1], remedy: replacement,"
                + " sent: 2026-01-26}]",
            "2026-03-02");
    assertThat(all.all().get(0).lines().get(0).owed()).hasToString("1 m");
  }

  @Test
  void aClaimForWhatIsFoundLaterDoesNotStandThereYet() {
    assertThat(
            standings(
                    RECORDS
                        + "claims: [{id: c1, against: kit-maker, shortages: [s1], remedy: credit}]",
                    "2026-01-23")
                .all())
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-01-24 | s1 | is written but not sent; its oldest shortage was found today.",
        "2026-01-25 | s1 | is written but not sent; its oldest shortage was found 1 day ago.",
        "2026-02-24 | s1 | is written but not sent; its oldest shortage was found 31 days ago.",
        "2026-02-24 | gone | is written but not sent.",
      })
  void aDraftIsToldWithTheAgeOfWhatItClaims(String today, String shortage, String told) {
    Ledger ledger =
        Sample.ledger(
            RECORDS
                + "claims: [{id: c1, against: kit-maker, shortages: [%s], remedy: credit}]"
                    .formatted(shortage));
    LocalDate day = LocalDate.parse(today);
    assertThat(Sample.findings(new ClaimDraftUnsent(), ledger, day))
        .singleElement()
        .satisfies(finding -> assertThat(finding.what()).isEqualTo("The claim c1 " + told));
  }

  private static ClaimStanding promised(String end, String today) {
    String yaml =
        """
        kit: [{id: bolt, what: bolt, qty: 10}]
        deliveries: [{id: d, received: 2026-02-01, from: kit-maker, counted: [{item: bolt, qty: 4}]}]
        shortages: [{id: s, item: bolt, qty: 6, found: 2026-02-01, cause: not-packed}]
        claims: [{id: c, against: kit-maker, shortages: [s], sent: 2026-02-02, remedy: replacement, events: [{on: 2026-02-05, what: promised, expect: 2026-03-01}, {on: 2026-02-09, what: promised, expect: 2026-03-10}]%s}]
        """
            .formatted(end);
    return ClaimStandings.on(Facts.of(Sample.ledger(yaml), LocalDate.parse(today)))
        .of("c")
        .orElseThrow();
  }

  @Test
  void theLastPromiseHoldsUntilItsDayAndIsToldAsPassedFromTheNext() {
    LocalDate day = LocalDate.of(2026, 3, 10);
    assertThat(promised("", "2026-03-10").promisedFor()).contains(day);
    assertThat(promised("", "2026-03-10").lapsed()).isEmpty();
    assertThat(promised("", "2026-03-11").promisedFor()).isEmpty();
    assertThat(promised("", "2026-03-11").lapsed()).contains(day);
    assertThat(promised("", "2026-02-08").promisedFor()).contains(LocalDate.of(2026, 3, 1));
  }

  @Test
  void anEndOtherThanGoodsEndsThePromiseToo() {
    assertThat(promised(", settled: {on: 2026-02-20, how: credited}", "2026-02-25").promisedFor())
        .isEmpty();
    assertThat(promised(", settled: {on: 2026-02-20, how: replaced}", "2026-02-25").promisedFor())
        .isPresent();
  }
}
