package kitwright.report.stores;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import org.junit.jupiter.api.Test;

class CountSheetReportTest {
  private static final String KIT =
      "kit: [{id: a, what: stave, qty: 4 m, crate: C1}, {id: b, what: pin, qty: 9, crate: C2}]\n";

  @Test
  void offersTheWholeKitBeforeAnyDeliveryIsRecorded() {
    String markdown = Told.markdown(CountSheetReport::sheets, KIT);
    assertThat(markdown).containsSubsequence("## Crate C1", "## Crate C2", "## Found, but on no");
    assertThat(Told.tables(markdown).get(0))
        .containsExactly(
            List.of("Item", "Promised", "Counted", "Damaged", "Wrong", "Undersize"),
            List.of("☐ stave a", "4 m", "", "", "", ""));
  }

  @Test
  void makesOneSheetADeliveryWithTheLinesOfItsNote() {
    List<Sheet> sheets =
        CountSheetReport.sheets(
            Facts.of(
                Sample.ledger(
                    KIT
                        + """
                        deliveries:
                          - {id: d1, received: 2026-02-01, from: kit-maker, note: N 7, packed: [{item: b, qty: 9}], counted: [{item: b, qty: 8, damaged: 1}]}
                          - {id: d2, expected: 2026-04-01, from: kit-maker}
                        """),
                Sample.TODAY));
    assertThat(sheets)
        .extracting(Sheet::file)
        .containsExactly("count-sheet-d1.md", "count-sheet-d2.md");
    assertThat(Told.tables(Told.markdown(sheets.get(0))).get(0).get(1))
        .containsExactly("☑ pin b", "9", "8", "1", "", "");
    assertThat(Told.words(Told.markdown(sheets.get(1))))
        .contains("From Redshank Kit Boats, expected on Wed 1 April 2026.")
        .contains("all of the kit that is still to come");
  }
}
