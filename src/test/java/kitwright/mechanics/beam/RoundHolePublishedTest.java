package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Stress beside a round hole. Sources: R. C. J. Howland, On the stresses in the neighbourhood of a
 * circular hole in a strip under tension, 1930: a hole of radius R in a strip 2·W wide, table as
 * the documentation of cb-geo/mpm has it (plate with a hole), read on 2026-11-30; R. J. Roark,
 * Formulas for Stress and Strain, 4th ed., p. 384: a plate 12 in wide with a hole of 1 in under 1
 * 000 psi is stressed to 3 018 psi, as a verification case of ansys/pymapdl has it (vm142), read on
 * 2026-11-29.
 */
class RoundHolePublishedTest {
  @ParameterizedTest
  @CsvSource({"0.0001, 3.00", "0.1, 3.03", "0.2, 3.14", "0.3, 3.36", "0.4, 3.74", "0.5, 4.32"})
  void howlandSTable(double radius, double stress) {
    assertThat(new RoundHole(2 * radius, 2).ofWhole()).isCloseTo(stress, within(0.01 * stress));
  }

  @Test
  void roarkSPlate() {
    assertThat(1000 * new RoundHole(1, 12).ofWhole()).isCloseTo(3018, within(0.005 * 3018));
    assertThat(new RoundHole(1, 12).ofNet()).isCloseTo(3.018 * 11 / 12, within(0.015));
  }
}
