package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VisibleTest {
  @Test
  void plainTextStays() {
    assertThat(Visible.line("Lärche 18 × 45 – „gut“ 👍 עץ"))
        .isEqualTo("Lärche 18 × 45 – „gut“ 👍 עץ");
  }

  @Test
  void terminalSequencesAreWrittenOut() {
    assertThat(Visible.line("\u001b[31mred\u0007")).isEqualTo("\\u001b[31mred\\u0007");
    assertThat(Visible.line("\u009b31m\u007f")).isEqualTo("\\u009b31m\\u007f");
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        0x061C, 0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068,
        0x2069
      })
  void everyDirectionalMarkOfAnnexNineIsWrittenOut(int mark) {
    // Unicode Standard Annex 9 (Unicode Bidirectional Algorithm), revision 50, table 4:
    // explicit formatting characters, section 2.
    assertThat(Visible.line("a" + Character.toString(mark) + "b"))
        .isEqualTo("a\\u" + String.format("%04x", mark) + "b");
  }

  @Test
  void lineEndsAndTabsAreNamedOnALineAndKeptInAText() {
    assertThat(Visible.line("a\tb\r\nc\u2028d")).isEqualTo("a\\tb\\r\\nc\\u2028d");
    assertThat(Visible.lines("a\tb\r\nc\u2028d")).isEqualTo("a\tb\\r\nc\\u2028d");
  }

  @Test
  void whatStandsBeyondSixteenBitsIsWrittenInBraces() {
    assertThat(Visible.line("x" + Character.toString(0xE0041))).isEqualTo("x\\u{e0041}");
  }

  @Test
  void halfACharacterIsWrittenOut() {
    assertThat(Visible.line("x\ud83dy")).isEqualTo("x\\ud83dy");
  }

  @Test
  void joinersStaySinceNamesAndPicturesNeedThem() {
    assertThat(Visible.line("👩\u200d🔧 می\u200cخواهم")).isEqualTo("👩\u200d🔧 می\u200cخواهم");
  }
}
