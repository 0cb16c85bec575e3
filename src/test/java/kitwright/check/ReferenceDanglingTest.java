package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What follows where a name names nothing is what the program does, key by key. */
class ReferenceDanglingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "substitutions: [{id: s, instead-of: {what: rail, qty: 1}, grade: finish, why: w, hold:"
            + " x1}] | holds all work",
        "tasks: [{id: t, what: T, takes: 1 d, after: [x1]}] | The task may not start",
        "tasks: [{id: t, what: T, takes: 1 d, tools: [x1]}] | The task may not start",
        "tasks: [{id: t, what: T, takes: 1 d, who: [x1]}] | The task may not start",
        "tasks: [{id: t, what: T, takes: 1 d, unpacks: [x1]}] | The task may not start",
        "tasks: [{id: t, what: T, takes: 1 d, uses: [{stock: x1, qty: 1}]}] | The task may not"
            + " start",
        "tasks: [{id: t, what: T, takes: 1 d, uses: [{section: x1, area: 1 m2}]}] | The task may"
            + " not start",
        "tasks: [{id: t, what: T, takes: 1 d, budget: x1}] | sums and dates leave it out",
        "cuts: [{id: c, kerf: 3 mm, parts: [], done: 2026-02-20, used: [{stock: x1}]}] | How much"
            + " is left",
      })
  void theWordsSayWhatTheProgramDoes(String yaml, String follows) {
    Findings out = new Findings();
    new ReferenceDangling()
        .examine(Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY), out);
    assertThat(out.inOrder()).hasSize(1);
    assertThat(out.inOrder().get(0).follows()).contains(follows);
  }
}
