package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Items that are in no count though all is counted. */
class KitUncountedTest {
  private static final KitUncounted RULE = new KitUncounted();
  private static final String CAME =
      "{id: d, received: 2026-02-20, from: kit-maker, counted: [{item: stave, qty: 14 m}]}";

  private static String yaml(String items, String deliveries) {
    return "kit:\n  - {id: stave, what: stave, qty: 14 m}\n"
        + items
        + "deliveries: ["
        + deliveries
        + "]\n";
  }

  private static String item(String id, String more) {
    return "  - {id: " + id + ", what: w, qty: 4" + more + "}\n";
  }

  private static List<String> told(String yaml) {
    return Sample.findings(RULE, yaml).stream().map(Finding::what).toList();
  }

  @Test
  void oneFindingACrateAtItsFirstItem() {
    String items =
        item("a", ", crate: C2")
            + item("b", "")
            + item("c", ", crate: C2")
            + item("d", ", crate: C3");
    assertThat(Sample.words(RULE, yaml(items, CAME)))
        .containsExactly(
            """
            NOTE kit-uncounted 3
            Every delivery is counted, yet 2 items of crate C2 are in no count: a, c.
            Nobody knows whether they are there, so nobody can claim them.
            Look for them; count what you find, with “qty: 0” where there is none.
            kit item a, kit item c\
            """,
            """
            NOTE kit-uncounted 4
            Every delivery is counted, yet an item without a crate is in no count: b.
            Nobody knows whether they are there, so nobody can claim them.
            Look for them; count what you find, with “qty: 0” where there is none.
            kit item b\
            """,
            """
            NOTE kit-uncounted 6
            Every delivery is counted, yet an item of crate C3 is in no count: d.
            Nobody knows whether they are there, so nobody can claim them.
            Look for them; count what you find, with “qty: 0” where there is none.
            kit item d\
            """);
  }

  @Test
  void fiveAreNamedAndTheOthersCounted() {
    String five = item("a", "") + item("b", "") + item("c", "") + item("d", "") + item("e", "");
    assertThat(told(yaml(five, CAME)))
        .containsExactly(
            "Every delivery is counted, yet 5 items without a crate are in no count: a, b, c, d,"
                + " e.");
    assertThat(told(yaml(five + item("f", "") + item("g", ""), CAME)))
        .containsExactly(
            "Every delivery is counted, yet 7 items without a crate are in no count: a, b, c, d, e"
                + " and 2 more.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", // nothing came yet
        CAME + ", {id: e, expected: 2026-04-01, from: kit-maker}", // something is still to come
        CAME + ", {id: e, received: 2026-03-01, from: kit-maker}", // or to be counted
        // Nobody says when the second was counted.
        CAME + ", {id: e, from: kit-maker, counted: [{item: stave, qty: 0 m}]}",
      })
  void untilAllIsCountedNothingIsMissed(String deliveries) {
    assertThat(told(yaml(item("a", ""), deliveries))).isEmpty();
  }

  @Test
  void whatWasCountedInAnotherUnitIsInACount() {
    assertThat(told(yaml(item("a", ""), CAME.replace("[{item", "[{item: a, qty: 2 m}, {item"))))
        .isEmpty();
  }

  @Test
  void whatIsRecordedAsShortOrPromisedAsNoneIsNotMissed() {
    String yaml = yaml(item("a", "") + item("b", "").replace("qty: 4", "qty: 0"), CAME);
    assertThat(told(yaml)).hasSize(1).first().asString().endsWith("no count: a.");
    assertThat(
            told(
                yaml
                    + "shortages: [{id: s, item: a, qty: 1, found: 2026-02-21, cause:"
                    + " not-packed}]\n"))
        .isEmpty();
  }
}
