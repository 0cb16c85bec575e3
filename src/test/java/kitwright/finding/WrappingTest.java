package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrappingTest {
  @Test
  void aLineIsAsLongAsItMayBe() {
    assertThat(Wrapping.at(7, "one two  three")).containsExactly("one two", "three");
    assertThat(Wrapping.at(6, "one two")).containsExactly("one", "two");
    assertThat(Wrapping.at(3, "longer a")).containsExactly("longer", "a");
    assertThat(Wrapping.at(3, " ")).containsExactly("");
  }

  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Wrapping.at(10, "Kerf is 3 mm. Cut")).containsExactly("Kerf is", "3 mm. Cut");
    assertThat(Wrapping.at(12, "at 40 %, 3 times")).containsExactly("at 40 %, 3", "times");
    assertThat(Wrapping.at(3, "M12 mm,")).containsExactly("M12 mm,");
    assertThat(Wrapping.at(3, "a mm")).containsExactly("a", "mm");
    assertThat(Wrapping.at(3, "12 .")).containsExactly("12", ".");
  }
}
