package kitwright.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Findings;
import kitwright.kit.Positions;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.LedgerFolder;
import kitwright.shortage.Cover;
import kitwright.value.Money;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/**
 * The claims of the demonstration, followed by hand on 29 March 2026: one settled in part, one with
 * a reminder and a purchase instead of the goods, and wrong pieces that went back.
 */
class DemonstratedClaimsTest {
  private static final Facts DAY =
      Facts.of(
          LedgerFolder.at(Path.of("ledger")).read(new Findings()).orElseThrow(),
          LocalDate.of(2026, 3, 29));

  private static ClaimStanding claim(String id) {
    return ClaimStandings.on(DAY).of(id).orElseThrow();
  }

  private static List<String> told(List<Money> sums) {
    return sums.stream().map(Money::toString).toList();
  }

  /**
   * Asked: 10.4 m of staves at 11.40 NZD are 118.56, 36 m of strip at 2.85 are 102.60, together
   * 221.16. Granted: all of the staves and 30 m of strip at 2.85, 85.50: together 204.06, which
   * came on 3 March. The other 6 m were refused: nothing is open.
   */
  @Test
  void theFirstClaimWasSettledInPart() {
    ClaimStanding first = claim("claim-2026-01-26");
    assertThat(first.state()).isEqualTo(ClaimStanding.State.SETTLED);
    assertThat(told(first.asked())).containsExactly("221.16 NZD");
    assertThat(told(first.granted())).containsExactly("204.06 NZD");
    assertThat(told(first.paid())).containsExactly("204.06 NZD");
    assertThat(first.open()).isEmpty();
  }

  /** A credit brings no wood: the staves are larch now, and the strips are done without. */
  @Test
  void whatTheFirstClaimCreditedIsCoveredOtherwise() {
    assertThat(claim("claim-2026-01-26").lines())
        .extracting(line -> line.shortage().covers().get(0).how())
        .doesNotContain(Cover.How.DELIVERED)
        .contains(Cover.How.DONE_WITHOUT);
  }

  /**
   * Two sheets of plywood at 176 NZD are asked as goods, 352.00; the hardener was bought on 26
   * February for 186.00 EUR and is asked as its cost, with 14.50 EUR of carriage besides: 200.50.
   * On the day of the letter, the 20th, nothing was bought: all was asked as goods, 6 kg at 26 NZD
   * more, 508.00.
   */
  @Test
  void theClaimWithAReminderAsksForTheHardenersCostInsteadOfTheHardener() {
    ClaimStanding wet = claim("claim-2026-02-20");
    assertThat(wet.events()).extracting(Claim.Event::what).contains(Claim.What.REMINDED);
    assertThat(told(wet.goods())).containsExactly("352.00 NZD");
    assertThat(told(wet.asked())).containsExactly("200.50 EUR");
    ClaimStanding sent =
        ClaimStandings.on(DAY.on(LocalDate.of(2026, 2, 20))).of("claim-2026-02-20").orElseThrow();
    assertThat(told(sent.goods())).containsExactly("508.00 NZD");
    assertThat(sent.asked()).isEmpty();
  }

  /** Four portlights came, two of them smoked; those two went back, and two clear ones are here. */
  @Test
  void theSmokedPortlightsWentBack() {
    var portlight =
        Positions.on(DAY).of(new Ref("portlight", Place.wholeFile("test"))).orElseThrow();
    assertThat(portlight.counted()).hasToString("4 each");
    assertThat(portlight.sentBack()).hasToString("2 each");
    assertThat(portlight.good()).hasToString("2 each");
  }
}
