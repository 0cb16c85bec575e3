package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.ledger.Ledger;
import kitwright.network.Planned;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of the look-ahead on random needs of one item. */
class LookAheadProperties {
  private static Ledger ledger(List<Integer> needs, int counted, int coming) {
    StringBuilder tasks = new StringBuilder("tasks:\n");
    for (int i = 0; i < needs.size(); i++) {
      tasks.append(
          "  - {id: t%d, what: T%d, takes: %d d, after: [%s], uses: [{item: stave, qty: %d m}]}\n"
              .formatted(i, i, 1 + i % 3, i < 2 ? "" : "t" + (i - 2), needs.get(i)));
    }
    return Sample.ledger(
        "kit: [{id: stave, what: stave, qty: 90 m, lead: 3 w}]\n"
            + "deliveries:\n"
            + "  - {id: d1, received: 2026-02-20, from: kit-maker, counted: [{item: stave, qty: %d m}]}\n"
                .formatted(counted)
            + "  - {id: d2, expected: 2026-03-06, from: kit-maker, packed: [{item: stave, qty: %d m}]}\n"
                .formatted(coming)
            + tasks);
  }

  @Property(tries = 60)
  void lessStockNeverMakesAnythingEarlier(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 9) Integer> needs,
      @ForAll @IntRange(max = 30) int counted,
      @ForAll @IntRange(max = 10) int taken,
      @ForAll @IntRange(max = 12) int coming) {
    var more = LookAheadTest.ahead(ledger(needs, counted + taken, coming), Late.NOTHING).paced();
    var less = LookAheadTest.ahead(ledger(needs, counted, coming), Late.NOTHING).paced();
    for (Planned planned : more.all()) {
      assertThat(less.of(planned.id()).earliestStart()).isAfterOrEqualTo(planned.earliestStart());
    }
  }

  @Property(tries = 60)
  void lateGoodsNeverMakeTheEndEarlier(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 9) Integer> needs,
      @ForAll @IntRange(max = 20) int counted,
      @ForAll @IntRange(max = 30) int days) {
    Ledger ledger = ledger(needs, counted, 12);
    assertThat(LookAheadTest.ahead(ledger, new Late(Map.of("d2", days))).paced().end())
        .isAfterOrEqualTo(LookAheadTest.ahead(ledger, Late.NOTHING).paced().end());
  }
}
