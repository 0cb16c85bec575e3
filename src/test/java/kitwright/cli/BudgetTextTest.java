package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class BudgetTextTest {
  /** One minus sign everywhere: the demonstration has earned less than it has cost. */
  @Test
  void amountsBelowZeroHaveAMinusSignAndNoHyphen() {
    String text = Run.in(Path.of(""), "budget", "--earned", "--today", "2026-03-29").out();
    assertThat(text).contains("cost variance, EV − AC (CV): −");
    assertThat(text.lines()).noneMatch(line -> line.matches(".*[ :]-[0-9].*"));
  }

  @Test
  void earnedValueIsToldWhereItIsAskedForAndNowhereElse() {
    assertThat(Run.in(Path.of(""), "budget", "--today", "2026-03-29").out())
        .doesNotContain("earned value");
  }
}
