package kitwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.drawing.RackDrawing.Becomes;
import kitwright.drawing.RackDrawing.Piece;
import kitwright.drawing.RackDrawing.Stretch;
import org.junit.jupiter.api.Test;

class RackDrawingTest {
  private static String drawn(double restLength) {
    return RackDrawing.of(
            "Cut",
            List.of("Kerf 3 mm."),
            List.of(
                new Piece(
                    "fir",
                    2400,
                    500,
                    List.of(
                        new Stretch(
                            "rest", "1900 x 500", 0, 0, restLength, 500, Becomes.REMNANT)))),
            List.of("Guard on."))
        .text();
  }

  @Test
  void wordsOnDotsStandOnWhite() {
    List<String> lines = drawn(2000).lines().toList();
    int words =
        lines.indexOf(lines.stream().filter(l -> l.contains(">1900 x 500<")).findFirst().get());
    assertThat(lines.get(words - 1)).startsWith("<rect").contains("#fff");
  }

  @Test
  void whatHasNoRoomForItsWordsBearsANumberAndIsToldBelow() {
    assertThat(drawn(8)).contains(">1</text>", ">1 = rest, 1900 x 500</text>").doesNotContain("…");
    assertThat(drawn(2000)).doesNotContain("1 = ");
  }

  @Test
  void whatIsNarrowIsWrittenUpright() {
    assertThat(drawn(60)).contains("rotate(-90").contains(">rest, 1900 x 500</text>");
  }

  @Test
  void legendAndCautionsStandOnTheSheet() {
    assertThat(drawn(2000))
        .contains(
            ">Guard on.</text>", ">flaw, not to be used</text>", ">end A left, edge B on top<");
  }
}
