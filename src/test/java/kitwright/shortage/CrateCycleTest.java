package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import org.junit.jupiter.api.Test;

/** Work that needs what only later work unpacks: each ring told with its tasks and its crate. */
class CrateCycleTest {
  private static final String FRAMES =
      """
      kit: [{id: frame, what: frame, qty: 6}, {id: plank, what: plank, qty: 40}]
      deliveries: [{id: c2, %s, from: kit-maker, packed: [{item: frame, qty: 6}]}%s]
      tasks:
        - {id: frames, what: Frames, takes: 2 d, uses: [{item: frame, qty: 6}]%s}
        - {id: clear, what: Clear, takes: 1 d, after: [frames]}
        - {id: open, what: Open, takes: 1 d, after: [%s], unpacks: [c2]%s}
      """;

  private static List<String> told(String yaml) {
    return Sample.findings(new CrateCycle(), yaml).stream()
        .map(each -> each.what() + " " + each.records())
        .toList();
  }

  private static List<String> told(
      String crate, String other, String frames, String open, String more) {
    return told(FRAMES.formatted(crate, other, frames, open, more));
  }

  private static final String RING =
      "Each of these waits for the one before it, round and round: “Clear” → “Open” → the crate c2"
          + " → “Frames” → “Clear”. [task clear, task open, task frames, delivery c2]";

  @Test
  void whatOnlyLaterWorkUnpacksIsARing() {
    assertThat(told("expected: 2026-03-20", "", "", "clear", "")).containsExactly(RING);
    assertThat(told("expected: 2026-02-20", "", "", "clear", ""))
        .as("its day has passed, and it lies in the crate all the same")
        .containsExactly(RING);
    assertThat(told("received: 2026-02-20", "", "", "clear", ""))
        .as("it is here, and nobody has counted it")
        .containsExactly(RING);
  }

  @Test
  void aCrateThatEarlierWorkUnpacksOrHasUnpackedIsNone() {
    String crate = "expected: 2026-03-20";
    assertThat(told(crate, "", "", "", "")).isEmpty();
    assertThat(told("received: 2026-02-20, counted: [{item: frame, qty: 6}]", "", "", "clear", ""))
        .isEmpty();
    assertThat(told(crate, "", ", unpacks: [c2]", "clear", ""))
        .as("it opens the crate itself")
        .isEmpty();
    assertThat(told(crate, "", ", started: 2026-02-20, finished: 2026-02-23", "clear", ""))
        .as("the work is done")
        .isEmpty();
    String other =
        ", {id: c1, received: 2026-02-02, from: kit-maker, counted: [{item: frame, qty: 6}]}";
    assertThat(told(crate, other, "", "clear", "")).as("six are here").isEmpty();
  }

  /** Planks need the crate that comes behind the frames, which lie in the crate behind planking. */
  @Test
  void aRingMayGoThroughTwoCrates() {
    String two =
        """
        kit: [{id: frame, what: frame, qty: 6}, {id: plank, what: plank, qty: 40}]
        deliveries:
          - {id: c2, expected: 2026-03-20, from: kit-maker, packed: [{item: frame, qty: 6}]}
          - {id: c3, expected: 2026-03-20, from: kit-maker, packed: [{item: plank, qty: 40}]}
        tasks:
          - {id: frames, what: Frames, takes: 2 d, uses: [{item: frame, qty: 6}]}
          - {id: opens-3, what: Open 3, takes: 1 d, after: [frames], unpacks: [c3]}
          - {id: planks, what: Planks, takes: 2 d, uses: [{item: plank, qty: 40}]}
          - {id: opens-2, what: Open 2, takes: 1 d, after: [planks], unpacks: [c2]}
        """;
    assertThat(told(two))
        .singleElement()
        .asString()
        .contains("“Open 3” → the crate c3 → “Planks” → “Open 2” → the crate c2 → “Frames”");
  }

  @Test
  void whatLeansOnALinkThatIsARingAlreadyIsNotToldTwice() {
    assertThat(told("expected: 2026-03-20", "", ", after: [clear]", "", "")).isEmpty();
  }
}
