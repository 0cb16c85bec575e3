package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.substitution.Written.Value;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.GenerationMode;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/**
 * The first form’s fingerprint is of the meaning: the same however it is written, another for any
 * change.
 */
class FingerprintProperties {
  private static final Map<String, List<Map<String, Object>>> COVERED = SignedRecords.covered();
  private static final List<Value> VALUES = Written.values(COVERED);
  private static final Fingerprint PLAIN = fingerprint(COVERED, beside("5", "as it was"), 0);

  private static Map<String, List<Map<String, Object>>> beside(String pieces, String remark) {
    return SignedRecords.beside(pieces, remark);
  }

  private static Fingerprint fingerprint(
      Map<String, List<Map<String, Object>>> covered,
      Map<String, List<Map<String, Object>>> beside,
      long seed) {
    Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>(covered);
    all.putAll(beside);
    Findings faults = new Findings();
    Ledger ledger = Sample.read(new Written(new Random(seed)).files(all), faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return Fingerprint.ofFirstForm(ledger.substitutions().get(0), ledger);
  }

  @Property(tries = 100)
  void isStableUnderOrderOfKeysCommentsWhiteSpaceQuotesAndFiles(@ForAll long seed) {
    assertThat(fingerprint(COVERED, beside("5", "as it was"), seed)).isEqualTo(PLAIN);
  }

  /** Every value of every covered record in turn. */
  @Provide
  Arbitrary<Integer> everyValue() {
    return Arbitraries.integers().between(0, VALUES.size() - 1);
  }

  @Property(generation = GenerationMode.EXHAUSTIVE)
  @SuppressWarnings("unchecked") // a changed tree has the shape of the tree
  void isChangedByAnyChangeOfMeaning(@ForAll("everyValue") int index) {
    Value changed = VALUES.get(index);
    Map<String, List<Map<String, Object>>> tree =
        (Map<String, List<Map<String, Object>>>) Written.changed(COVERED, changed);
    assertThat(fingerprint(tree, beside("5", "as it was"), index))
        .as("%s became %s", changed.text(), changed.other())
        .isNotEqualTo(PLAIN);
  }

  @Property(tries = 25)
  void isBlindToWhatItDoesNotCover(
      @ForAll @IntRange(min = 1, max = 99) int pieces, @ForAll long seed) {
    assertThat(fingerprint(COVERED, beside("" + pieces, "something else"), seed)).isEqualTo(PLAIN);
  }
}
