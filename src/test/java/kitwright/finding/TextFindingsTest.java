package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextFindingsTest {
  private static final TextFindings PLAIN =
      new TextFindings(TextFindings.USUAL_WIDTH, Marks.WHITE_BRACKETS, Ink.PLAIN);

  private static List<Matter> each(Finding... findings) {
    return Matter.each(List.of(findings));
  }

  private static List<String> source(String file) {
    return file.equals("crates/three.yaml") ? Samples.CRATE : List.of();
  }

  @Test
  void aFindingSaysWhereWhatWhatFollowsAndHowToMendIt() {
    assertThat(PLAIN.render(each(Samples.SHORT), TextFindingsTest::source))
        .isEqualTo(
            """
            Stop: counted-short-unrecorded, at crates/three.yaml:8:34
                  - {item: larch-plank, qty: ⟦20 m⟧}
              Wrong:    20 m of larch-plank were counted, 26 m were promised, and no shortage is
                        recorded.
              Follows:  The starboard planking needs the missing 6 m on 14 May and will stand still.
              Mend:     Record a shortage of 6 m, or correct the count.
              Concerns: kit larch-plank, delivery crate-3

            1 finding in 1 file: 1 stop.
            """);
  }

  @Test
  void theyStandInTheOrderGivenAndTheTallyClosesTheText() {
    String text = PLAIN.render(each(Samples.WHOLE, Samples.SHORT), TextFindingsTest::source);
    assertThat(text).startsWith("Note: log-without-day, at log/friday.md\n");
    assertThat(text).endsWith("\n\n2 findings in 2 files: 1 stop, 1 note.\n");
  }

  @Test
  void whatFollowsFromAnotherStandsBelowItAndSaysSo() {
    var matter = new Matter(Samples.SHORT, List.of(Samples.WHOLE));
    assertThat(PLAIN.render(List.of(matter), TextFindingsTest::source))
        .startsWith("Stop: counted-short-unrecorded, at crates/three.yaml:8:34\n")
        .contains("Note: log-without-day, at log/friday.md, follows from the one above\n")
        .endsWith("\n2 findings in 2 files: 1 stop, 1 note.\n");
  }

  @Test
  void aWholeFileIsNamedWithoutALine() {
    assertThat(PLAIN.render(each(Samples.WHOLE), TextFindingsTest::source))
        .contains("Note: log-without-day, at log/friday.md\n  Wrong:    The log says no day.\n");
  }

  @Test
  void nothingFoundIsSaid() {
    assertThat(PLAIN.render(List.of(), TextFindingsTest::source)).isEqualTo("Nothing found.\n");
  }

  @Test
  void anAsciiTerminalGetsDoubledBrackets() {
    var ascii = new TextFindings(88, Marks.DOUBLED_BRACKETS, Ink.PLAIN);
    assertThat(ascii.render(each(Samples.SHORT), TextFindingsTest::source))
        .contains("qty: [[20 m]]}");
  }

  @Test
  void colourAddsNothingButColour() {
    var coloured = new TextFindings(88, Marks.WHITE_BRACKETS, Ink.COLOUR);
    String text = coloured.render(each(Samples.SHORT, Samples.WHOLE), TextFindingsTest::source);
    assertThat(text).contains("\u001b[1;31mStop\u001b[0m", "⟦\u001b[4m20 m\u001b[0m⟧");
    assertThat(text.replaceAll("\u001b\\[[0-9;]*m", ""))
        .isEqualTo(PLAIN.render(each(Samples.SHORT, Samples.WHOLE), TextFindingsTest::source));
  }

  @Test
  void noLineIsWiderThanTheTerminalWhereWordsAllowIt() {
    var narrow = new TextFindings(50, Marks.WHITE_BRACKETS, Ink.PLAIN);
    String text = narrow.render(each(Samples.SHORT), TextFindingsTest::source);
    assertThat(text.lines().filter(line -> !line.contains("three.yaml")))
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(50));
  }

  @Test
  void aLedgerCannotSteerTheTerminalOrTurnTheText() {
    var finding =
        new Finding(
            "a\u001b[2Jrule",
            Severity.WARN,
            Samples.at("evil\u202egnp.yaml", 1, 5, 1, 9).at(),
            "id \u001b]0;x\u0007 is odd",
            "line\nbreak",
            "mend \u2066it",
            List.of("kit \u200fx"));
    String text = PLAIN.render(each(finding), f -> List.of("id: \u001b[1m\u202eabc"));
    assertThat(text.codePoints().filter(c -> c != '\n'))
        .noneMatch(c -> Character.getType(c) == Character.CONTROL)
        .noneMatch(c -> Character.getType(c) == Character.FORMAT);
    assertThat(text).contains("evil\\u202egnp.yaml:1:5", "id: ⟦\\u001b[1m⟧\\u202eabc");
  }
}
