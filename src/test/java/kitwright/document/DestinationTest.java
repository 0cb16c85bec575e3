package kitwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DestinationTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "javascript:alert(1)",
        "JavaScript:alert(1)",
        " javascript:alert(1)",
        "java\nscript:alert(1)",
        "data:text/html,x",
        "vbscript:x",
        "file:///etc/passwd",
        "C:\\x",
        "//host.example/x",
        "\\\\host\\x",
        "/\\host.example",
        "\u0001javascript:x"
      })
  void addressesThatLeadElsewhereAreRefused(String address) {
    assertThat(Destination.written(address)).isEmpty();
  }

  @Test
  void webMailAndRelativeAddressesAreTaken() {
    assertThat(Destination.written("https://a.example/x?y=1&copy;=2#z(1)"))
        .hasValueSatisfying(
            to ->
                assertThat(to.reference()).isEqualTo("https://a.example/x?y=1&copy%3B=2#z%281%29"));
    assertThat(Destination.written("mailto:a@b.example")).isPresent();
    assertThat(Destination.written("../photos/1.jpg")).isPresent();
  }

  @Test
  void aFileIsNeverReadAsAnAddress() {
    assertThat(Destination.file("javascript:x").reference()).isEqualTo("javascript%3Ax");
    assertThat(Destination.file("//host/x").reference()).isEqualTo("host/x");
    assertThat(Destination.file("a|b\\c.jpg").reference()).isEqualTo("a%7Cb%5Cc.jpg");
  }
}
