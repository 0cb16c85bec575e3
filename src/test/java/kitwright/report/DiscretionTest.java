package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.document.Document;
import kitwright.document.Redacted;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DiscretionTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          budget: [{line: a, title: A, amount: 1450}]
          spending: [{id: s, on: 2026-02-01, line: a, what: glue, amount: 46.20, to: Holm Stores, state: paid}]
          """);

  private static Redacted redacted(String markdown) {
    return Redacted.of(markdown, 3, Discretion.of(LEDGER)::allows);
  }

  private static String told(String markdown) {
    return new Document(redacted(markdown).blocks()).markdown();
  }

  @Test
  void keepsWhatNamesNobodyAsItWasWritten() {
    assertThat(told("Planed **six** staves.\n\n- one\n- two\n"))
        .isEqualTo("Planed **six** staves.\n\n- one\n- two\n");
  }

  @Test
  void dropsTheSentenceAndKeepsTheRest() {
    Redacted prose = redacted("Cold barn. Pell came by. Glue *tomorrow*.");
    assertThat(new Document(prose.blocks()).markdown()).isEqualTo("Cold barn. Glue tomorrow.\n");
    assertThat(prose.left()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pell came.",
        "PELL came.",
        "Pells saw.",
        "Pell's saw.",
        "P**el**l came.",
        "&#80;ell came.",
        "Ｐｅｌｌ came.",
        "P\u00ADell came.",
        "Re\u200Bdshank wrote.",
        "The designer A. Osterlund wrote.",
        "Osterlund wrote.",
        "kit-maker wrote.",
        "Redshank Kit Boats wrote.",
        "Redshank\nKit Boats wrote.",
        "Holm Stores was shut.",
        "See [this](http://redshank.example/).",
        "See [this](x \"Pell\").",
        "See [this](%50ell).",
        "See ![Pell](x.png).",
        "`Pell`",
        "    Pell in code",
        "```\nPell\n```",
        "<b title='Pell'>x</b>",
        "| a |\n|---|\n| Pell |",
        "> Pell said so",
        "# Pell",
        "[ref]: http://pell.example/\n\n[ref]",
        "It was 12 EUR.",
        "It was EUR 12.",
        "It was €12.",
        "It was 46.20 in all.",
        "It was 46,20 in all.",
        "It was 1,450 in all.",
        "It was 1 450 in all.",
        "It was 1450.",
        "We paid too much.",
        "Eleven dollars.",
        "Write to x@y.example."
      })
  void letsNothingThrough(String markdown) {
    assertThat(told(markdown)).doesNotContainPattern("(?i)pell|redshank|osterlund|kit-maker|holm");
    assertThat(told(markdown)).doesNotContainPattern("12|46|450|paid|dollars|@");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A board of 1450 mm.",
        "The kit lies open in the barn.",
        "A pellet stove, 46 litres, spelling matters.",
        "Three of us turned the boat on 2026-03-01."
      })
  void keepsQuantitiesAndEverydayWords(String markdown) {
    assertThat(told(markdown)).isEqualTo(markdown + "\n");
  }
}
