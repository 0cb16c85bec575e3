package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;

/** The whole words and weights of what is found about claims. */
class ClaimRulesTest {
  private static final String SHORT =
      """
      parties:
        - {id: works, name: Redshank Kit Boats, role: supplier, notice: 14 d}
        - {id: mill, name: Holm Mill, role: supplier, notice: 10 d}
      kit:
        - {id: bolt, what: bolt, qty: 10}
        - {id: plank, what: plank, qty: 4, from: mill}
      deliveries:
        - {id: d, received: 2026-02-10, from: works, counted: [{item: bolt, qty: 4}]}
        - {id: e, received: 2026-02-10, from: mill, counted: [{item: plank, qty: 3}]}
      shortages:
        - {id: b, item: bolt, qty: 6, found: %s, cause: not-packed}
        - {id: p, item: plank, qty: 1, found: 2026-02-12, cause: not-packed}
      claims: [{id: c, against: works, shortages: [%s], remedy: replacement%s}]
      """;

  private static Finding one(Rule rule, String yaml, String today) {
    List<Finding> found = Sample.findings(rule, Sample.ledger(yaml), LocalDate.parse(today));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Finding draft(String shortages, String today) {
    return one(new ClaimDraftUnsent(), SHORT.formatted("2026-02-11", shortages, ""), today);
  }

  /** Received on the 10th: the works want to know by the 24th, the mill by the 20th. */
  @Test
  void aDraftTellsTheEarliestDayOfNotice() {
    assertThat(draft("b", "2026-02-14").follows())
        .startsWith(
            "Redshank Kit Boats wants to be told by 24\u00a0February\u00a02026, in 10 days");
    assertThat(draft("b, p", "2026-02-14").follows())
        .startsWith("Holm Mill wants to be told by 20\u00a0February\u00a02026, in 6 days");
    assertThat(draft("p, b", "2026-02-14").follows())
        .startsWith("Holm Mill wants to be told by 20\u00a0February\u00a02026, in 6 days");
  }

  @Test
  void aDraftIsUrgentThreeDaysBeforeItsNoticeEnds() {
    assertThat(draft("b", "2026-02-20").severity()).isEqualTo(Severity.NOTE);
    assertThat(draft("b", "2026-02-21").severity()).isEqualTo(Severity.WARN);
  }

  @Test
  void withoutANoticeADraftIsUrgentAWeekAfterTheShortageWasFound() {
    String yaml = SHORT.replace(", notice: 14 d", "").replace(", notice: 10 d", "");
    String found = yaml.formatted("2026-02-11", "b", "");
    assertThat(one(new ClaimDraftUnsent(), found, "2026-02-17").severity())
        .isEqualTo(Severity.NOTE);
    Finding week = one(new ClaimDraftUnsent(), found, "2026-02-18");
    assertThat(week.severity()).isEqualTo(Severity.WARN);
    assertThat(week.what())
        .isEqualTo(
            "The claim c is written but not sent; its oldest shortage was found 7 days ago.");
  }

  @Test
  void aLateAnswerIsToldWithTheDaysSince() {
    Finding late =
        one(
            new ClaimReplyOverdue(),
            SHORT.formatted("2026-02-11", "b", ", sent: 2026-02-12, reply-by: 2026-02-20"),
            "2026-03-08");
    assertThat(late.what())
        .isEqualTo(
            "Redshank Kit Boats gave no answer; the day asked for was 20\u00a0February\u00a02026,"
                + " 16 days ago.");
  }

  @Test
  void aReplacementThatNoCountShowsIsTold() {
    String replaced = ", sent: 2026-02-12, settled: {on: 2026-02-20, how: replaced}";
    assertThat(
            one(
                    new ReplacementUncounted(),
                    SHORT.formatted("2026-02-11", "b", replaced),
                    "2026-03-08")
                .what())
        .isEqualTo("The claim c is settled as replaced, but no count since shows 6 × bolt.");
    String came =
        SHORT
            .replace(
                "shortages:\n",
                """
                  - {id: f, received: 2026-02-20, from: works, counted: [{item: bolt, qty: 6}]}
                shortages:
                """)
            .formatted("2026-02-11", "b", replaced);
    assertThat(
            Sample.findings(
                new ReplacementUncounted(), Sample.ledger(came), LocalDate.of(2026, 3, 8)))
        .isEmpty();
  }

  private static List<Finding> twice(String first, String second) {
    return Sample.findings(
        new ClaimAsksTwice(),
        Sample.ledger(
            SHORT
                .formatted("2026-02-11", "b", ", sent: 2026-02-12" + first)
                .replace(
                    "claims: [",
                    "claims: [{id: z, against: works, shortages: ["
                        + second
                        + "], remedy: refund}, ")),
        LocalDate.parse("2026-03-02"));
  }

  @Test
  void thePiecesThatMoneyWasGivenForAreNotAskedForAgain() {
    assertThat(twice("", "b")).hasSize(1);
    assertThat(twice(", settled: {on: 2026-02-20, how: credited, amount: 9}", "b"))
        .extracting(Finding::what)
        .containsExactly(
            "With this, 12 × bolt are asked for the shortage b, which lacks 6; asked already by"
                + " z.");
    assertThat(twice(", settled: {on: 2026-02-20, how: refunded, amount: 9}", "b")).hasSize(1);
  }

  @Test
  void whatNobodyGaveAnythingForMayBeAskedForAnew() {
    for (String how : List.of("replaced", "refused", "withdrawn")) {
      assertThat(twice(", settled: {on: 2026-02-20, how: " + how + "}", "b")).as(how).isEmpty();
    }
    // An end of a later day is none yet.
    assertThat(twice(", settled: {on: 2026-03-20, how: withdrawn}", "b")).hasSize(1);
  }

  @Test
  void soIsALineThatHasAnEndOfItsOwn() {
    String line = "{shortage: b, settled: {on: 2026-02-20, how: %s}}";
    String other =
        ", {id: y, against: works, sent: 2026-02-12, shortages: [" + line + "], remedy: refund}]\n";
    for (String how : List.of("refused", "credited")) {
      String yaml =
          SHORT.formatted("2026-02-11", "b", "").replaceFirst("]\n$", other.formatted(how));
      assertThat(
              Sample.findings(
                  new ClaimAsksTwice(), Sample.ledger(yaml), LocalDate.parse("2026-03-02")))
          .as(how)
          .hasSize(how.equals("refused") ? 0 : 1);
    }
  }
}
