package kitwright.mechanics.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class RemedyTest {
  private static final Remedy MENU =
      new Remedy(
          List.of(
              new Addition("ply above", 5, 0.4),
              new Addition("ply below", 5, 0.4),
              new Addition("thicker core", 3, 0.3)));

  @Test
  void findsTheCheapestThatServes() {
    var found = MENU.cheapest(n -> 3 * n[0] + 3 * n[1] + 2 * n[2] >= 12).orElseThrow();
    assertThat(found.counts().get(0) + found.counts().get(1)).isEqualTo(4);
  }

  @Test
  void moreIsNotAlwaysBetter() {
    // A requirement that a second ply above breaks: the weak-link order.
    var found = MENU.cheapest(n -> n[0] <= 1 && n[0] + n[1] >= 4).orElseThrow();
    assertThat(found.counts().get(0)).isLessThanOrEqualTo(1);
    assertThat(found.counts().get(0) + found.counts().get(1)).isEqualTo(4);
  }

  @Test
  void addsNothingWhereNothingIsNeeded() {
    assertThat(MENU.cheapest(n -> true).orElseThrow().counts()).containsExactly(0, 0, 0);
  }

  @Test
  void saysWhenNothingOnTheMenuWillDo() {
    assertThat(MENU.combinations()).isEqualTo(6 * 6 * 4);
    assertThat(MENU.cheapest(n -> false)).isEmpty();
  }

  @Test
  void aMenuWithoutEndIsRefused() {
    var line = new Addition("ply", 1000, 1);
    assertThatThrownBy(() -> new Remedy(List.of(line, line, line)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("shorten the menu");
  }
}
