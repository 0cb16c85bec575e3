package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ends of claims that cannot be, and what an end of a line says of the whole. */
class SettlementContradictoryTest {
  private static final String YAML =
      """
      kit: [{id: k, what: k, qty: 10, price: 30 EUR}]
      shortages: [{id: s, item: k, qty: 4, found: 2026-02-02, cause: not-packed}]
      claims:
        - {id: c, against: kit-maker, remedy: replacement, %s}
      """;

  private static List<String> told(String claim) {
    return Sample.findings(new SettlementContradictory(), YAML.formatted(claim)).stream()
        .map(Finding::what)
        .toList();
  }

  private static String line(String ends) {
    return "sent: 2026-02-05, shortages: [{shortage: s, settled: [" + ends + "]}]";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "how: credited;was credited on 20\u00a0February\u00a02026, and nobody says how much",
        "how: refunded;was refunded on 20\u00a0February\u00a02026, and nobody says how much",
        "how: refused, amount: 9 EUR;was refused on 20\u00a0February\u00a02026, and yet grants"
            + " money",
        "how: withdrawn, amount: 9 EUR;was withdrawn on 20\u00a0February\u00a02026, and yet grants"
            + " money"
      })
  void moneyIsGrantedOrNot(String end, String what) {
    String settled = "{on: 2026-02-20, " + end + "}";
    assertThat(told(line(settled))).containsExactly("The claim c " + what + ".");
    assertThat(told("sent: 2026-02-05, shortages: [s], settled: " + settled)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "how: credited, amount: 9 EUR",
        "how: refunded, amount: 9 EUR",
        "how: replaced",
        "how: replaced, amount: 9 EUR",
        "how: refused",
        "how: refused, amount: 0 EUR",
        "how: withdrawn"
      })
  void anEndThatSaysAllIsSilent(String end) {
    assertThat(told(line("{on: 2026-02-20, " + end + "}"))).isEmpty();
  }

  /** The pieces that ended are not promised once more. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "credited, amount: 9 EUR;2026-02-21;;1",
        "refused;2026-02-21;;1",
        "withdrawn;2026-02-21;;1",
        "replaced;2026-02-21;;0", // the goods that were agreed
        "refused;2026-02-20;;0",
        "refused;2026-02-21;of: s,;1",
        "refused;2026-02-21;of: t,;0"
      })
  void nothingIsPromisedOfWhatHasEnded(String end, String on, String of, int findings) {
    String event =
        ", events: [{on: "
            + on
            + ", what: promised, "
            + (of == null ? "" : of)
            + " expect: 2026-03-10}]";
    String settled = "{on: 2026-02-20, how: " + end + "}";
    assertThat(told(line(settled) + event)).hasSize(of == null ? 0 : findings);
    String whole = "sent: 2026-02-05, shortages: [s], settled: " + settled + event;
    assertThat(told(whole)).hasSize(of == null ? findings : end.equals("replaced") ? 0 : 1);
  }

  @Test
  void whatIsPromisedAfterTheEndIsToldByBothDays() {
    assertThat(
            told(
                "sent: 2026-02-05, shortages: [s], settled: {on: 2026-02-20, how: refused}, events:"
                    + " [{on: 2026-02-21, what: promised, expect: 2026-03-10}]"))
        .containsExactly(
            "The claim c has an end (“refused” on 20\u00a0February\u00a02026), and after it"
                + " something is promised for 10\u00a0March\u00a02026.");
  }

  @Test
  void noMorePiecesEndThanWereAsked() {
    String three = "{on: 2026-02-20, how: replaced, qty: 3}";
    String one = "{on: 2026-02-21, how: refused, qty: 1}";
    assertThat(told(line(three + ", " + one))).isEmpty();
    assertThat(told(line(three + ", " + three)))
        .containsExactly("The claim c has 6 × k settled, of 4 that it asks.");
    assertThat(told(line(three + ", " + three + ", " + one))).as("told once").hasSize(1);
  }

  @Test
  void whatNobodySentNobodySettled() {
    String end = "{on: 2026-02-20, how: %s}";
    assertThat(told("shortages: [s], settled: " + end.formatted("replaced")))
        .containsExactly(
            "The claim c was settled on 20\u00a0February\u00a02026, and nobody says that it was"
                + " sent.");
    assertThat(told("shortages: [s], settled: " + end.formatted("withdrawn"))).isEmpty();
    assertThat(told("shortages: [s]")).isEmpty();
  }

  @Test
  void whatShallHaveBeenReplacedIsLookedForInTheCounts() {
    String two = YAML.formatted(line("{on: 2026-02-20, how: replaced, qty: 2}"));
    String came =
        "deliveries:\n"
            + "  - {id: d1, received: 2026-02-01, from: kit-maker, counted: [{item: k, qty: 6}]}\n"
            + "  - {id: d2, received: 2026-02-26, from: kit-maker, counted: [{item: k, qty:"
            + " %s}]}\n";
    assertThat(Sample.findings(new ReplacementUncounted(), two))
        .extracting(Finding::what)
        .containsExactly("The claim c is settled as replaced, but no count since shows 2 × k.");
    assertThat(Sample.findings(new ReplacementUncounted(), two + came.formatted(1)))
        .extracting(Finding::what)
        .containsExactly("The claim c is settled as replaced, but no count since shows 1 × k.");
    assertThat(Sample.findings(new ReplacementUncounted(), two + came.formatted(2))).isEmpty();
  }

  private static ClaimStanding standing(String claim) {
    Facts day = Facts.of(Sample.ledger(YAML.formatted(claim)), Sample.TODAY);
    return ClaimStandings.on(day).of("c").orElseThrow();
  }

  @Test
  void theEndOfAPartIsAnAnswer() {
    assertThat(standing(line("{on: 2026-02-20, how: replaced, qty: 2}")).state())
        .isEqualTo(ClaimStanding.State.ANSWERED);
    assertThat(standing(line("{on: 2026-02-20, how: refused}")).state())
        .isEqualTo(ClaimStanding.State.SETTLED);
    assertThat(standing(line("")).state()).isEqualTo(ClaimStanding.State.SENT);
  }

  private static ShortageStanding.State shortage(String claim) {
    Facts day = Facts.of(Sample.ledger(YAML.formatted(claim)), Sample.TODAY);
    return ShortageStandings.on(day).all().get(0).state();
  }

  @Test
  void aShortageWhoseLineHasAnEndIsAnswered() {
    assertThat(shortage(line("{on: 2026-02-20, how: refused}")))
        .isEqualTo(ShortageStanding.State.ANSWERED);
    assertThat(shortage(line(""))).isEqualTo(ShortageStanding.State.CLAIMED);
    assertThat(shortage("shortages: [s]")).isEqualTo(ShortageStanding.State.FOUND);
    assertThat(shortage("shortages: [s], settled: {on: 2026-02-20, how: replaced}"))
        .isEqualTo(ShortageStanding.State.ANSWERED);
  }
}
