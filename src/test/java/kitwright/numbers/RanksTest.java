package kitwright.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ranks by hand, counted from nought: r = np − 1.96 √(np (1 − p)) and 1 + np + 1.96 √(np (1 − p)),
 * as Campbell and Gardner, “Calculating confidence intervals for some non-parametric analyses”,
 * British Medical Journal 296 (1988), have them (from memory), each up to the next whole one.
 */
class RanksTest {
  @ParameterizedTest
  @CsvSource({
    "0.5, 100, 49, 40, 60", // 50 ± 9.8
    "0.9, 100, 89, 84, 96", // 90 ± 5.88
    "0.9, 10000, 8999, 8941, 9059", // 9000 ± 58.8
    "0.005, 100, 0, 0, 2", // 0.5 ± 1.38, and none before the first
    "0.99, 100, 98, 97, 99", // none beyond the last
    "0.07, 100, 6, 1, 13", // 7 ± 5.00, though 0.07 · 100 is a little more than 7 in doubles
    "0.28, 100, 27, 19, 37", // 28 ± 8.80, and 28.000000000000004
    "1, 100, 99, 99, 99",
    "0.5, 1, 0, 0, 0"
  })
  void aShareHasItsRankAndTheRanksThatSamplingLeaves(
      double share, int runs, int at, int from, int to) {
    assertThat(Ranks.of(share, runs)).isEqualTo(new Ranks(at, from, to));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.0001, Double.NaN})
  void aShareLiesBetweenNoneAndAll(double share) {
    assertThatIllegalArgumentException().isThrownBy(() -> Ranks.of(share, 100));
  }
}
