package kitwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words that must fit: about 0.56 of its height is taken by a letter. */
class LetteringTest {
  private static final Lettering TEN_LETTERS_IN_57 = Lettering.of(10);

  @Test
  void wordsThatFitStayOnOneLine() {
    assertThat(TEN_LETTERS_IN_57.lines("ten signs.", 57, 2)).containsExactly("ten signs.");
  }

  @Test
  void longerOnesAreBrokenBetweenWords() {
    assertThat(TEN_LETTERS_IN_57.lines("blade of red cedar", 57, 2))
        .containsExactly("blade of", "red cedar");
    assertThat(TEN_LETTERS_IN_57.lines("ten signs. and so", 57, 2))
        .containsExactly("ten signs.", "and so");
  }

  @Test
  void theLastLineIsCutToFit() {
    assertThat(TEN_LETTERS_IN_57.lines("blade of red cedar with a spine", 57, 2))
        .containsExactly("blade of", "red cedar…");
    assertThat(TEN_LETTERS_IN_57.lines("Donaudampfschiff", 57, 2)).containsExactly("Donaudamp…");
    assertThat(TEN_LETTERS_IN_57.lines("", 57, 2)).containsExactly("");
  }
}
