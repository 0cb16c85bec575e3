package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.kit.CountContradictory;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * What {@code check} gives to paste, pasted word for word, settles the count: each piece that is
 * short has one record with its cause, and no rule of counts has anything left to say.
 */
class RecordsToPasteProperties {
  private static final Pattern RECORD = Pattern.compile("\\{id: short-[^}]*}");
  private static final List<Rule> COUNTS =
      List.of(
          new CountedShortUnrecorded(),
          new ShortageBeyondCount(),
          new ShortageCauseContradicted(),
          new CountContradictory(),
          new PackedNotCounted());

  private static List<Finding> told(String yaml, LocalDate day) {
    Ledger ledger = Sample.ledger(yaml);
    List<Finding> all = new ArrayList<>();
    COUNTS.forEach(rule -> all.addAll(Sample.findings(rule, ledger, day)));
    return all;
  }

  private static List<String> records(String yaml, LocalDate day) {
    List<String> records = new ArrayList<>();
    for (Finding finding :
        Sample.findings(new CountedShortUnrecorded(), Sample.ledger(yaml), day)) {
      Matcher matcher = RECORD.matcher(finding.mend());
      while (matcher.find()) {
        records.add("  - " + matcher.group() + "\n");
      }
    }
    return records;
  }

  @Property(tries = 300)
  void pastedRecordsSettleTwoCounts(
      @ForAll @IntRange(max = 9) int first,
      @ForAll @IntRange(max = 9) int second,
      @ForAll @IntRange(max = 3) int damaged,
      @ForAll @IntRange(max = 3) int wrong,
      @ForAll @IntRange(max = 3) int undersize,
      @ForAll @IntRange(max = 3) int damagedLater,
      @ForAll("units") String unit) {
    String kit =
        """
        kit: [{id: cleat, what: cleat, qty: 12%1$s}]
        deliveries:
          - {id: d1, received: 2026-02-03, from: kit-maker, packed: [{item: cleat, qty: 12%1$s}], counted: [{item: cleat, qty: %2$d%1$s, damaged: %3$d%1$s, wrong: %4$d%1$s, undersize: %5$d%1$s}]}
        """
            .formatted(
                unit,
                first,
                Math.min(damaged, first),
                Math.min(wrong, Math.max(0, first - damaged)),
                Math.min(undersize, Math.max(0, first - damaged - wrong)));
    LocalDate day = LocalDate.of(2026, 2, 3);
    List<String> pasted = records(kit, day);
    String settled = kit + (pasted.isEmpty() ? "" : "shortages:\n" + String.join("", pasted));
    assertThat(told(settled, day)).isEmpty();
    String later =
        "  - {id: d2, received: 2026-02-20, from: kit-maker, counted: [{item: cleat, qty: %2$d%1$s, damaged: %3$d%1$s}]}\n"
            .formatted(unit, second, Math.min(damagedLater, second));
    String both = kit + later + (pasted.isEmpty() ? "" : "shortages:\n" + String.join("", pasted));
    LocalDate then = LocalDate.of(2026, 2, 20);
    List<String> more = records(both, then);
    pasted.addAll(more);
    String all = kit + later + (pasted.isEmpty() ? "" : "shortages:\n" + String.join("", pasted));
    assertThat(told(all, then)).as(all).isEmpty();
  }

  @net.jqwik.api.Provide
  net.jqwik.api.Arbitrary<String> units() {
    return net.jqwik.api.Arbitraries.of("", " kg", " m", " sheet", " pair", " box");
  }
}
