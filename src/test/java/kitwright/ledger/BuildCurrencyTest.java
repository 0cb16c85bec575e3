package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import kitwright.Sample;
import kitwright.finding.Findings;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A bare amount is in the build's currency, however the build's key is written and wherever. */
class BuildCurrencyTest {
  @ParameterizedTest
  @ValueSource(strings = {"build:", "build :", "build   :", "\"build\":", "'build' :", "build\t:"})
  void aBareAmountIsInTheBuildsCurrency(String key) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("a.yaml", "budget: [{line: spars, title: Spars, amount: 1450}]\n");
    files.put("z.yaml", key + " {name: Sample, currency: NZD, started: 2026-01-05}\n");
    Findings faults = new Findings();
    Ledger ledger = Sample.read(files, faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    assertThat(ledger.budget().get(0).amount()).hasToString("1450.00 NZD");
  }
}
