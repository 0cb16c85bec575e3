package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordsTest {
  @ParameterizedTest
  @ValueSource(strings = {"tusk: []", "tusk:", "tusk: {}", "tusk: [{id: a}]", "tusk: no"})
  void aTopKeyThatNamesNoKindIsToldWhateverStandsBelow(String yaml) {
    assertThat(faults(yaml))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.rule()).isEqualTo("kind-unknown");
              assertThat(fault.mend()).isEqualTo("Did you mean “tasks”?");
              assertThat(fault.at().line()).isEqualTo(1);
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"tasks: []", "tasks:", "build: []"})
  void nothingYetBelowAKindIsNoFault(String yaml) {
    assertThat(faults(yaml)).isEmpty();
  }

  @Test
  void anEmptyListAmongRecordsIsNoRecord() {
    assertThat(faults("tasks: [[]]")).extracting(Finding::rule).containsExactly("value-unreadable");
  }

  private static List<Finding> faults(String yaml) {
    Findings faults = new Findings();
    LedgerReader.read(List.of(new SourceFile("a.yaml", yaml + "\n")), paths -> Map.of(), faults);
    return faults.inOrder();
  }
}
