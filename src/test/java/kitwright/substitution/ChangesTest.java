package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What has changed since a signature, line by line. */
class ChangesTest {
  private static final String THEN =
      """
      Kitwright statement, form 2

      Section blade
        what: a blade, as drawn: twice
        layer
          material: ash
          plies: 2
        layer
          material: ash
      Material ash
        E: 11 GPa
      """;

  private static List<String> since(String from, String to) {
    assertThat(THEN).contains(from);
    return Changes.between(THEN, THEN.replace(from, to));
  }

  @Test
  void nothingIsToldOfTheSame() {
    assertThat(since("ash", "ash")).isEmpty();
    assertThat(since("\n\n", "\n")).as("a blank line").isEmpty();
  }

  @Test
  void anotherValueIsToldWithWhereItStands() {
    assertThat(since("plies: 2", "plies: 3"))
        .containsExactly("Section blade, layer, plies was 2, is 3");
    assertThat(since("11 GPa", "10 GPa")).containsExactly("Material ash, E was 11 GPa, is 10 GPa");
    assertThat(since("as drawn: twice", "as drawn: once"))
        .containsExactly(
            "Section blade, what was a blade, as drawn: twice, is a blade, as drawn: once");
  }

  @Test
  void ofLinesAtTheSamePlaceTheLaterHaveNumbers() {
    assertThat(since("  layer\n    material: ash\nMat", "  layer\n    material: larch\nMat"))
        .containsExactly("Section blade, layer 2, material was ash, is larch");
  }

  @Test
  void aLineThatIsNewOrGoneIsTold() {
    assertThat(since("    plies: 2\n", ""))
        .containsExactly("Section blade, layer, plies was 2, is gone");
    assertThat(since("  E: 11 GPa\n", "  E: 11 GPa\n  density: 700 kg/m3\n"))
        .containsExactly("Material ash, density is 700 kg/m3, was not there");
    assertThat(since("form 2\n", "form 2\nin a hurry\n")).containsExactly("in a hurry is new");
    assertThat(since("Kitwright statement, form 2\n", ""))
        .containsExactly("Kitwright statement, form 2 is gone");
  }

  /** Its lines are not told once more. */
  @Test
  void ofWhatIsNewOrGoneWholeTheHeadIsToldAlone() {
    assertThat(since("Material ash\n  E: 11 GPa\n", "")).containsExactly("Material ash is gone");
    assertThat(since("  layer\n    material: ash\nMat", "Mat"))
        .containsExactly("Section blade, layer 2 is gone");
    assertThat(since("Material ash\n", "Material larch\n  E: 9 GPa\nMaterial ash\n"))
        .containsExactly("Material larch is new");
    assertThat(since("Section blade\n", "Section rim\n"))
        .containsExactly("Section blade is gone", "Section rim is new");
  }
}
