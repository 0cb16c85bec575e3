package kitwright.report.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.report.Told;
import org.junit.jupiter.api.Test;

class ShortagesReportTest {
  private static final String YAML =
      """
      kit: [{id: stave, what: stave, qty: 4 m, price: 3 NZD/m}, {id: pin, what: pin, qty: 9}]
      deliveries:
        - {id: d1, received: 2026-02-01, from: kit-maker, counted: [{item: stave, qty: 1 m}, {item: pin, qty: 5}]}
        - {id: d2, received: 2026-02-20, from: kit-maker, counted: [{item: stave, qty: 1 m}]}
      shortages:
        - {id: s1, item: stave, qty: 3 m, found: 2026-02-02, cause: not-packed}
        - {id: s2, item: pin, qty: 4, found: 2026-02-10, cause: not-packed, options: [{kind: wait}],
           decided: {option: wait, on: 2026-02-11, by: nora}}
      claims: [{id: c1, against: kit-maker, shortages: [s1], sent: 2026-02-05, remedy: replacement}]
      """;

  @Test
  void sortsByStateAndTellsClaimWayOutAndWorth() {
    String markdown = Told.markdown(ShortagesReport::sheets, YAML);
    assertThat(markdown).containsSubsequence("Found, and nobody told", "Claimed, and no answer");
    assertThat(Told.tables(markdown).get(0))
        .containsExactly(
            List.of("Missing", "Open", "Needed by", "Claim", "Way out", "Worth, NZD"),
            List.of("pin s2", "4 for 20 days", "–", "none", "wait", "–"));
    assertThat(Told.tables(markdown).get(1).get(1))
        .containsExactly("stave s1", "2 m of 3 m for 28 days", "–", "c1", "not chosen", "6.00");
  }

  @Test
  void tellsWhatIsClaimedByNobodyOfWhatIsClaimedInPart() {
    String part = YAML.replace("shortages: [s1]", "shortages: [{shortage: s1, qty: 2 m}]");
    String markdown = Told.markdown(ShortagesReport::sheets, part);
    assertThat(Told.tables(markdown).get(1).get(1)).contains("c1 1 m in no claim");
    assertThat(Told.words(markdown)).contains("1 has no claim, 1 is claimed only in part. For 1");
    String both = part.replace("{shortage: s1, qty: 2 m}", "{shortage: s1, qty: 2 m}, s2");
    assertThat(Told.words(Told.markdown(ShortagesReport::sheets, both)))
        .contains("6.00 NZD. 1 is claimed only in part. ");
    assertThat(
            Told.words(
                Told.markdown(
                    ShortagesReport::sheets, both.replace("qty: 2 m}, s2", "qty: 3 m}, s2"))))
        .contains("6.00 NZD. Each that is owed has a claim or a draft of one.");
  }

  @Test
  void whatWasUsedUpNobodyOwes() {
    String used =
        YAML.replace(
            "qty: 4, found: 2026-02-10, cause: not-packed",
            "qty: 4, found: 2026-02-10, cause: used-up");
    String markdown = Told.markdown(ShortagesReport::sheets, used);
    assertThat(Told.tables(markdown).get(0).get(1)).contains("pin s2", "not owed");
    assertThat(Told.words(markdown)).contains("Each that is owed has a claim or a draft of one.");
    String alone = used.replaceAll("(?s)  - .id: s1, .*?\n", "").replaceAll("claims: .*\n", "");
    assertThat(Told.words(Told.markdown(ShortagesReport::sheets, alone)))
        .contains("Nobody owes what was used up.");
  }

  @Test
  void saysInASentenceHowManyAndHowOld() {
    assertThat(Told.words(Told.markdown(ShortagesReport::sheets, YAML)))
        .contains(
            "2 shortages are open, the oldest for 28 days; at the kit’s prices they are worth 6.00"
                + " NZD. 1 has no claim. For 1 no way out is chosen yet.");
  }
}
