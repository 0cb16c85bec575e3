package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a signer saw, against what comes out now. */
class SeenTest {
  private static Seen seen(String verdict, String number) {
    return new Seen(
        Optional.of(verdict).filter(word -> !word.isEmpty()),
        number.isEmpty() ? Map.of() : Map.of("strength", new BigDecimal(number)));
  }

  @ParameterizedTest
  @CsvSource({
    "1.333, 1.333, ''",
    "1.333, 1.334, ''", // a unit of the last of four figures
    "1.333, 1.332, ''",
    "1.333, 1.3341, strength was 1.333 and is 1.3341",
    "1.333, 1.3319, strength was 1.333 and is 1.3319",
    "0.95, 0.9501, ''",
    "0.95, 0.9502, strength was 0.95 and is 0.9502",
    "12.5, 12.51, ''",
    "12.5, 12.52, strength was 12.5 and is 12.52",
    "1.333, '', strength was 1.333 and is not worked out now",
    "'', 1.333, ''"
  })
  void aNumberHasMovedBeyondOneUnitOfItsLastFigure(String then, String now, String told) {
    assertThat(String.join(", ", seen("passes", then).moved(seen("passes", now)))).isEqualTo(told);
  }

  @Test
  void aVerdictIsTurnedOnlyWhereOneWasKeptAndAnotherComesOut() {
    assertThat(seen("passes", "").isTurned(Optional.of(seen("passes", "")))).isFalse();
    assertThat(seen("passes", "").isTurned(Optional.of(seen("fails", "")))).isTrue();
    assertThat(seen("passes", "").isTurned(Optional.of(seen("open", "")))).isTrue();
    assertThat(seen("passes", "").isTurned(Optional.empty())).isTrue();
    assertThat(seen("", "1.1").isTurned(Optional.of(seen("fails", "1.1")))).isFalse();
  }

  @Test
  void itIsWrittenAsASignOffKeepsIt() {
    Map<String, BigDecimal> two =
        Map.of("strength", new BigDecimal("0.95"), "mass", new BigDecimal("1.2"));
    assertThat(new Seen(Optional.of("fails"), two).written())
        .isEqualTo("{verdict: fails, mass: 1.2, strength: 0.95}");
    assertThat(seen("", "").written()).isEqualTo("{verdict: open}");
  }
}
