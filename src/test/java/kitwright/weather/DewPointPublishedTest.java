package kitwright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DewPointPublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "dew-point.csv", useHeadersInDisplayName = true)
  void publishedDewPointsAreMet(
      double air, double humidity, double dew, double tolerance, String source) {
    assertThat(DewPoint.of(air, humidity)).as(source).isCloseTo(dew, within(tolerance));
  }

  /** Recomputed with the constants 17.625 and 243.04, to two decimals. */
  @ParameterizedTest
  @CsvSource({
    "22,78,17.99",
    "30,55,19.98",
    "22,40,7.78",
    "20,60,12.00",
    "25,50,13.86",
    "10,80,6.71",
    "5,85,2.69"
  })
  void theConstantsAreThoseOfAlduchovAndEskridge(double air, double humidity, double dew) {
    assertThat(DewPoint.of(air, humidity)).isCloseTo(dew, within(0.005));
  }

  @Test
  void aSteamTableAgreesWithinATenthOfADegree() throws IOException {
    List<double[]> table = saturation();
    assertThat(table).hasSize(9);
    for (double[] dew : table) {
      for (double[] air : table) {
        if (air[0] >= dew[0]) {
          double humidity = 100 * dew[1] / air[1];
          assertThat(DewPoint.of(air[0], humidity)).isCloseTo(dew[0], within(0.1));
        }
      }
    }
  }

  @Test
  void saturatedAirIsAtItsDewPoint() {
    assertThat(DewPoint.of(17.3, 100)).isCloseTo(17.3, within(1e-12));
    assertThat(DewPoint.of(-45, 100)).as("as far as it reaches").isCloseTo(-45, within(1e-12));
    assertThat(DewPoint.of(60, 100)).isCloseTo(60, within(1e-12));
  }

  @Test
  void impossibleAirIsRefused() {
    assertThatThrownBy(() -> DewPoint.of(20, 0)).hasMessageContaining("humidity");
    assertThatThrownBy(() -> DewPoint.of(20, 101)).hasMessageContaining("humidity");
    assertThatThrownBy(() -> DewPoint.of(80, 50)).hasMessageContaining("-45 and 60");
    assertThatThrownBy(() -> DewPoint.of(60.1, 50)).hasMessageContaining("-45 and 60");
    assertThatThrownBy(() -> DewPoint.of(-45.1, 50)).hasMessageContaining("-45 and 60");
  }

  private static List<double[]> saturation() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            DewPointPublishedTest.class.getResourceAsStream("saturation-pressure.csv"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> Character.isDigit(line.charAt(0)))
          .map(line -> line.split(",", -1))
          .map(cells -> new double[] {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])})
          .toList();
    }
  }
}
