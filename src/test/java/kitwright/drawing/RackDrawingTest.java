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
            List.of(
                new Piece(
                    "fir",
                    2400,
                    500,
                    List.of(new Stretch("rest", "", 0, 0, restLength, 500, Becomes.REMNANT)))))
        .text();
  }

  @Test
  void wordsOnDotsStandOnWhite() {
    List<String> lines = drawn(2000).lines().toList();
    int words =
        lines.indexOf(lines.stream().filter(l -> l.contains(">2000 x 500<")).findFirst().get());
    assertThat(lines.get(words - 1)).startsWith("<rect").contains("#fff");
  }

  @Test
  void wordsThatDoNotFitAreLeftOut() {
    assertThat(drawn(40)).doesNotContain("…").doesNotContain(">rest</text>");
  }
}
