package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Cells of a terminal, by Unicode Standard Annex 11: W and F take two, marks none. */
class ScreenWidthTest {
  @Test
  void lettersAndSignsTakeOneCell() {
    assertThat(ScreenWidth.of("Dunlin, 46.20 €–")).isEqualTo(16);
    assertThat(ScreenWidth.of("\u00a0")).isEqualTo(1);
    assertThat(ScreenWidth.of("Ωж")).isEqualTo(2);
  }

  @Test
  void combiningSignsTakeNone() {
    assertThat(ScreenWidth.of("e\u0301")).isEqualTo(1);
    assertThat(ScreenWidth.of("a\u200db")).isEqualTo(2);
    assertThat(ScreenWidth.of("1\u20dd")).isEqualTo(1);
  }

  @Test
  void wideSignsTakeTwo() {
    assertThat(ScreenWidth.of("木")).isEqualTo(2); // U+6728, W
    assertThat(ScreenWidth.of("한")).isEqualTo(2); // U+D55C, W
    assertThat(ScreenWidth.of("Ａ")).isEqualTo(2); // U+FF21, F
    assertThat(ScreenWidth.of("ｱ")).isEqualTo(1); // U+FF71, H
    assertThat(ScreenWidth.of("🛶")).isEqualTo(2); // U+1F6F6, W
    assertThat(ScreenWidth.of("\u1160")).isEqualTo(1); // behind U+115F, the last wide one there
    assertThat(ScreenWidth.of("\u115f")).isEqualTo(2);
  }
}
