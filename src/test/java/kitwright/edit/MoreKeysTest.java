package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.value.Place;
import org.junit.jupiter.api.Test;

class MoreKeysTest {
  private static final List<String> KEYS = List.of("done: 2026-03-29", "used: []");

  @Test
  void keysGoBehindTheIdOnLinesOfTheirOwn() {
    String text = "cuts:\n  - id: c1\n    kerf: 3 mm  # mine\n";
    assertThat(MoreKeys.after(text, new Place("a.yaml", 2, 9, 2, 11), KEYS))
        .contains(
            "cuts:\n  - id: c1\n    done: 2026-03-29\n    used: []\n    kerf: 3 mm  # mine\n");
  }

  @Test
  void keysGoBehindTheIdWithinBraces() {
    String text = "cuts:\n  - {kerf: 3 mm, id: c1, from: [a]}\n";
    assertThat(MoreKeys.after(text, new Place("a.yaml", 2, 22, 2, 24), KEYS))
        .contains("cuts:\n  - {kerf: 3 mm, id: c1, done: 2026-03-29, used: [], from: [a]}\n");
  }

  @Test
  void aFileWithoutALastLineEndGetsOne() {
    assertThat(MoreKeys.after("cuts:\n  - id: c1", new Place("a.yaml", 2, 9, 2, 11), KEYS))
        .contains("cuts:\n  - id: c1\n    done: 2026-03-29\n    used: []\n");
  }

  @Test
  void whatIsWrittenOtherwiseIsLeftAlone() {
    assertThat(MoreKeys.after("cuts:\n  - \"id\": c1\n", new Place("a.yaml", 2, 11, 2, 13), KEYS))
        .isEmpty();
    assertThat(MoreKeys.after("cuts:\n", new Place("a.yaml", 5, 1, 5, 2), KEYS)).isEmpty();
  }
}
