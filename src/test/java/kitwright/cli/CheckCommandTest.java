package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** With which code the check ends; a ledger that cannot be read always ends with 2. */
class CheckCommandTest {
  @ParameterizedTest
  @CsvSource({
    "ledger, stop, 1",
    "ledger, warn, 1",
    "ledger, never, 0",
    "templates, never, 2",
  })
  void endsAsAsked(String folder, String failOn, int code) {
    Run run =
        Run.in(
            Path.of(""), "check", "--ledger", folder, "--today", "2026-03-29", "--fail-on", failOn);
    assertThat(run.code()).isEqualTo(code);
    assertThat(run.all()).isNotEmpty();
  }
}
