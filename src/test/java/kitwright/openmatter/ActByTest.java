package kitwright.openmatter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** By when one must act on what is open. Sample's today is Monday, 2 March 2026. */
class ActByTest {
  private static final String KIT =
      """
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier, notice: 14 d}
        - {id: nora, name: Nora, role: builder}
      kit: [{id: cleat, what: bronze cleat, qty: 4}]
      """;
  private static final String COUNTED =
      "deliveries: [{id: d, received: 2026-02-20, from: kit-maker, packed: [{item: cleat, qty: 4}],"
          + " counted: [{item: cleat, qty: %s}]}]\n";

  private static OpenMatters open(String yaml) {
    return OpenMatters.on(Facts.of(Sample.ledger(yaml), Sample.TODAY));
  }

  private static OpenMatter only(String yaml) {
    List<OpenMatter> all = open(yaml).all();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  @Test
  void whatWasCountedShortAndNotRecordedIsOpenFromTheEveningOfTheCountOn() {
    OpenMatter matter = only(KIT + COUNTED.formatted("3"));
    assertThat(matter.what()).isEqualTo("1 × bronze cleat: counted short, not recorded");
    assertThat(matter.record()).isEqualTo("kit item cleat");
    assertThat(matter.waitsFor()).isEqualTo("you");
    assertThat(matter.actBy()).contains(LocalDate.of(2026, 3, 6)); // fourteen days from receipt
    assertThat(open(KIT + COUNTED.formatted("4")).all()).isEmpty();
  }

  @Test
  void aShortageThatNobodyClaimedIsToBeClaimedWhileTheNoticeRuns() {
    String recorded =
        KIT
            + COUNTED.formatted("3")
            + "shortages: [{id: s, item: cleat, qty: 1, found: 2026-02-21, cause: not-packed}]\n";
    assertThat(only(recorded).actBy()).contains(LocalDate.of(2026, 3, 6));
    String claim = "claims: [{id: c, against: kit-maker, shortages: [s], remedy: replacement%s}]\n";
    assertThat(days(recorded + claim.formatted("")))
        .containsExactly("claim c 2026-03-06", "shortage s 2026-03-06");
    assertThat(days(recorded + claim.formatted(", sent: 2026-02-25, reply-by: 2026-03-20")))
        .containsExactly("claim c 2026-03-20", "shortage s none");
  }

  private static List<String> days(String yaml) {
    return open(yaml).all().stream()
        .map(m -> m.record() + " " + m.actBy().map(Object::toString).orElse("none"))
        .sorted()
        .toList();
  }

  @Test
  void aDeliveryThatCameIsToBeCountedAndOneOnItsWayIsNot() {
    String bare = "deliveries: [{id: d, %s, from: kit-maker}]\n";
    OpenMatter came = only(KIT + bare.formatted("received: 2026-03-01"));
    assertThat(came.sort()).isEqualTo(OpenMatter.Sort.COUNT);
    assertThat(came.actBy()).contains(LocalDate.of(2026, 3, 15));
    assertThat(only(KIT + bare.formatted("expected: 2026-03-05")).sort())
        .isEqualTo(OpenMatter.Sort.DELIVERY);
  }

  private static final String ORDER =
      """
      budget: [{line: l, title: l, amount: 90}]
      spending:
        - {id: o, on: %s, line: l, what: w, amount: 9, state: ordered}
        - {id: p, on: %s, line: l, what: w, amount: 9, state: paid, pays: o}
      """;

  @Test
  void anOrderIsOpenUntilItIsPaidForOrInStock() {
    assertThat(open(ORDER.formatted("2026-02-20", "2026-03-03")).all()).hasSize(1);
    assertThat(open(ORDER.formatted("2026-02-20", "2026-03-02")).all()).isEmpty();
    assertThat(open(ORDER.formatted("2026-03-03", "2026-03-04")).all()).isEmpty();
    String stock = "stock: [{id: s, what: w, qty: 1, bought: o}]\n";
    assertThat(open(ORDER.formatted("2026-02-20", "2026-03-03") + stock).all()).isEmpty();
  }

  @Test
  void withinSomeWeeksIsWhatOneMustActOnByThen() {
    OpenMatters open =
        open(
            """
            tasks:
              - {id: long, what: Long, takes: 30 d}
              - {id: side, what: Side, takes: 1 d, uses: [{item: glue, qty: 1 kg}]}
            kit: [{id: glue, what: glue, qty: 1 kg, lead: 20 d}]
            deliveries: [{id: d, received: 2026-02-20, from: kit-maker, packed: [{item: glue, qty: 1 kg}], counted: [{item: glue, qty: 0 kg}]}]
            """);
    OpenMatter glue = open.all().get(0);
    LocalDate last = glue.lastDay();
    assertThat(last).isBefore(glue.stop().orElseThrow().neededBy());
    assertThat(open.actingBy(last.minusDays(1))).isEmpty();
    assertThat(open.actingBy(last)).containsExactly(glue);
  }
}
