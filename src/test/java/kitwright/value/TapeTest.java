package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths as a tape in inches has them, and stresses as data sheets have them. */
class TapeTest {
  @ParameterizedTest
  @CsvSource({
    "3/4 in, 19.05",
    "1 1/2 in, 38.1",
    "1-1/2 in, 38.1",
    "6 ft 2 1/2 in, 1892.3",
    "6 ft 2 in, 1879.6",
    "6'2\", 1879.6",
    "5' 3/8\", 1533.525",
    "12/32 in, 9.525",
    "2.5 in, 63.5",
    "6 ft, 1828.8"
  })
  void lengths(String text, double millimetres) throws Misread {
    Quantity length = Quantity.parse(text, Unit.ONE, Dimension.LENGTH);
    assertThat(length.base() * 1000).isCloseTo(millimetres, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "1.8e6 psi, 12410.5631e6",
    "1.8E6 psi, 12410.5631e6",
    "12 N/mm², 12e6",
    "100 lb/in2, 689475.7293",
    "100 lbf/in2, 689475.7293"
  })
  void stresses(String text, double pascal) throws Misread {
    Quantity stress = Quantity.parse(text, Unit.ONE, Dimension.STRESS);
    assertThat(stress.base()).isCloseTo(pascal, within(1e-6 * pascal));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3/0 in", "1/2", "/2 in", "1//2 in", "3/4/5 in", "1 2 3/4 in"})
  void whatIsNoneIsNotGuessed(String text) {
    assertThatThrownBy(() -> Quantity.parse(text, Unit.ONE, Dimension.LENGTH))
        .isInstanceOf(Misread.class);
  }

  @Test
  void aHintIsNeverAnotherSize() {
    assertThatThrownBy(() -> Quantity.parse("12 Mpa", Unit.ONE, Dimension.STRESS))
        .isInstanceOfSatisfying(
            Misread.class, misread -> assertThat(misread.mend()).isEqualTo("did you mean “MPa”?"));
  }
}
