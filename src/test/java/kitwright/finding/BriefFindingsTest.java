package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A usual day fits a screen: a line or two for each, and all of it is counted. */
class BriefFindingsTest {
  private static String brief(List<Matter> matters) {
    return new BriefFindings(88, BriefFindings.SCREEN, Ink.PLAIN).render(matters);
  }

  private static Finding like(String rule, Severity severity, int line) {
    Finding at = Samples.at("parts.yaml", line, 3, line, 6);
    return new Finding(rule, severity, at.at(), "Part " + line + " is odd.", "", "", List.of());
  }

  @Test
  void aFindingSaysWhatAndWhereAndHowManyFollow() {
    assertThat(brief(List.of(new Matter(Samples.SHORT, List.of(Samples.WHOLE)))))
        .isEqualTo(
            """
            Stop  20 m of larch-plank were counted, 26 m were promised, and no shortage is recorded.
                  In crates/three.yaml:8:34; 1 more follows from it

            2 findings in 2 files: 1 stop, 1 note.
            “kitwright check --all” tells all of it, with what follows and how to mend it;
            “kitwright check NAME” what concerns a record, a file or a rule.
            """);
  }

  @Test
  void severalThatFollowAreCounted() {
    assertThat(brief(List.of(new Matter(Samples.SHORT, List.of(Samples.WHOLE, Samples.WHOLE)))))
        .contains("8:34; 2 more follow from it\n");
  }

  @Test
  void ofManyAlikeFourAreShownAndNoneHidesAnother() {
    List<Finding> findings = new ArrayList<>();
    IntStream.rangeClosed(1, 9).forEach(i -> findings.add(like("odd-part", Severity.STOP, i)));
    findings.add(like("odd-sum", Severity.WARN, 10));
    String text = brief(Matter.each(findings));
    assertThat(text)
        .contains("Part 4 is odd.", "Warn  Part 10 is odd.")
        .doesNotContain("Part 5 is odd.")
        .contains("\nand 5 more: 5 stop.\n", "\n10 findings in 1 file: 9 stop, 1 warn.\n");
  }

  @Test
  void neverMoreLinesThanAScreenAndWhatFindsNoRoomIsCounted() {
    List<Finding> findings =
        IntStream.rangeClosed(1, 60).mapToObj(i -> like("rule-" + i, Severity.WARN, i)).toList();
    String text = brief(Matter.each(findings));
    assertThat(text.lines().count()).isEqualTo(BriefFindings.SCREEN);
    long shown = text.lines().filter(line -> line.startsWith("Warn  ")).count();
    assertThat(text)
        .contains(
            "\nand " + (60 - shown) + " more: " + (60 - shown) + " warn.\n",
            "60 findings in 1 file");
  }

  @Test
  void aLowTerminalShowsTheGravestAndCountsTheRest() {
    List<Finding> findings =
        IntStream.rangeClosed(1, 20).mapToObj(i -> like("rule-" + i, Severity.WARN, i)).toList();
    String text = new BriefFindings(80, 22, Ink.PLAIN).render(Matter.each(findings));
    assertThat(text.lines().count()).isLessThanOrEqualTo(22);
    assertThat(text).contains("Part 1 is odd.", " more: ", "20 findings in 1 file");
  }

  @Test
  void noLineIsWiderThanTheTerminal() {
    assertThat(
            new BriefFindings(50, BriefFindings.SCREEN, Ink.PLAIN)
                .render(Matter.each(List.of(Samples.SHORT)))
                .lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(50));
  }

  @Test
  void colourAddsNothingButColour() {
    List<Matter> matters = Matter.each(List.of(Samples.SHORT, Samples.WHOLE));
    String text = new BriefFindings(88, BriefFindings.SCREEN, Ink.COLOUR).render(matters);
    assertThat(text).contains("\u001b[1;31mStop\u001b[0m  20 m");
    assertThat(text.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(brief(matters));
  }

  @Test
  void aLedgerCannotSteerTheTerminal() {
    Finding evil =
        new Finding(
            "r",
            Severity.STOP,
            Samples.at("evil\u202egnp", 1, 1, 1, 2).at(),
            "a\u001b[2Jb",
            "",
            "",
            List.of());
    assertThat(brief(Matter.each(List.of(evil)))).contains("evil\\u202egnp", "a\\u001b[2Jb");
  }
}
