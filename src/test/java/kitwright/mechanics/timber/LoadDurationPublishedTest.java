package kitwright.mechanics.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** EN 1995-1-1, table 3.1, solid timber, glued laminated timber, plywood (read 2026-11-29). */
class LoadDurationPublishedTest {
  @ParameterizedTest
  @CsvSource({
    "PERMANENT, 0.6, 0.6, 0.5",
    "LONG, 0.7, 0.7, 0.55",
    "MEDIUM, 0.8, 0.8, 0.65",
    "SHORT, 0.9, 0.9, 0.7",
    "INSTANTANEOUS, 1.1, 1.1, 0.9"
  })
  void theTable(LoadDuration lasts, double one, double two, double three) {
    assertThat(lasts.factor(1)).isEqualTo(one);
    assertThat(lasts.factor(2)).isEqualTo(two);
    assertThat(lasts.factor(3)).isEqualTo(three);
  }

  @Test
  void thereAreThreeServiceClasses() {
    assertThatIllegalArgumentException().isThrownBy(() -> LoadDuration.LONG.factor(4));
    assertThatIllegalArgumentException().isThrownBy(() -> LoadDuration.LONG.factor(0));
  }
}
