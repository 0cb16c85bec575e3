package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import kitwright.Sample;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A record that stands there and cannot be read is not told as one that does not exist. */
class NoSuchTest {
  private static final String BUILD = "build: {name: S, currency: EUR, started: 2026-01-05}\n";

  private static Ledger read(String yaml) {
    return Sample.read(Map.of("l.yaml", BUILD + yaml), new Findings()).orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(
      value = Kind.class,
      names = {"BUILD", "RATES", "BUDGET", "FORECAST", "LOG"},
      mode = EnumSource.Mode.EXCLUDE)
  void whatCannotBeReadStandsSomewhere(Kind kind) {
    Ledger ledger = read("\n" + kind.key() + ":\n  - {id: x, nonsense: 1}\n");
    assertThat(ledger.noSuch(kind, "x"))
        .isEqualTo("the " + kind.word() + " “x” stands at l.yaml:4 but cannot be read");
    assertThat(ledger.noneHasIt(kind, "x"))
        .isEqualTo("that " + kind.word() + " stands at l.yaml:4 but cannot be read");
    assertThat(ledger.noSuch(kind, "y")).isEqualTo("there is no " + kind.word() + " “y”");
    assertThat(ledger.noneHasIt(kind, "y")).isEqualTo("no " + kind.word() + " has that id");
  }

  @Test
  void anotherKindsRecordIsNone() {
    assertThat(read("tasks: [{id: x, nonsense: 1}]\n").noSuch(Kind.SECTIONS, "x"))
        .isEqualTo("there is no section “x”");
  }

  @Test
  void aStretchThatCannotBeReadMayHoldIt() {
    Ledger ledger = read("taskss: [{id: x, takes: 1 d}]\n");
    assertThat(ledger.noSuch(Kind.TASKS, "x"))
        .isEqualTo("the task “x” may stand in “taskss” in l.yaml on line 2, which cannot be read");
    assertThat(ledger.noSuch(Kind.TASKS, "y")).isEqualTo("there is no task “y”");
  }
}
