package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.value.Place;
import org.junit.jupiter.api.Test;

class ExcerptTest {
  private static List<String> quote(int width, String source, int... place) {
    var at = new Place("f", place[0], place[1], place[2], place[3]);
    return Excerpt.of(
        at, new Excerpt.Source(source.lines().toList()), Marks.WHITE_BRACKETS, Ink.PLAIN, width);
  }

  @Test
  void columnsCountCodePoints() {
    assertThat(quote(80, "what: 🛶 rib", 1, 9, 1, 12)).containsExactly("what: 🛶 ⟦rib⟧");
  }

  @Test
  void anEmptyStretchShowsWhereSomethingIsMissing() {
    assertThat(quote(80, "qty:", 1, 5, 1, 5)).containsExactly("qty:⟦⟧");
  }

  @Test
  void aStretchOverLinesIsOpenedOnceAndClosedOnce() {
    assertThat(quote(80, "a:\n  - b\n  - c\nd:", 2, 3, 3, 6)).containsExactly("⟦- b", "- c⟧");
    assertThat(quote(80, "a:\n  - b\n  - c\nd:", 2, 3, 4, 1)).containsExactly("⟦- b", "- c⟧");
  }

  @Test
  void ofALongStretchTheFirstThreeLinesAreShown() {
    assertThat(quote(80, "a\nb\nc\nd\ne\n", 1, 1, 5, 2))
        .containsExactly("⟦a", "b", "c", "… and 2 more lines");
    assertThat(quote(80, "a\nb\nc\nd", 1, 1, 4, 2)).endsWith("… and 1 more line");
  }

  @Test
  void aLongLineIsCutAroundTheStretch() {
    String line = "before ".repeat(20) + "GUILTY" + " after".repeat(20);
    assertThat(quote(40, line, 1, 141, 1, 147))
        .singleElement()
        .asString()
        .hasSize(40)
        .startsWith("…")
        .contains(" ⟦GUILTY⟧ ")
        .endsWith("…");
  }

  @Test
  void aLongStretchIsCutInItsMiddle() {
    String line = "x: " + "a".repeat(60) + "b".repeat(60);
    assertThat(quote(40, line, 1, 4, 1, 124))
        .singleElement()
        .asString()
        .hasSize(40)
        .matches("⟦a+…b+⟧");
  }

  @Test
  void aPlaceBeyondTheFileOrTheLineDoesNoHarm() {
    assertThat(quote(80, "a", 7, 1, 7, 2)).isEmpty();
    assertThat(quote(80, "a", 1, 9, 1, 12)).containsExactly("a⟦⟧");
    assertThat(quote(80, "a\nb", 1, 1, 9, 9)).containsExactly("⟦a", "b⟧");
  }

  @Test
  void tabsAreShown() {
    assertThat(quote(80, "\tqty: 1", 1, 1, 1, 2)).containsExactly("⟦\\t⟧qty: 1");
  }
}
