package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NettingTest {
  private static final LocalDate TODAY = Calendars.MONDAY;

  @Test
  void theFirstNeedIsServedFirst() {
    Netting netting =
        net(
            List.of(need("late", 6, 9), need("early", 6, 2)),
            Supplies.atHand("s", "ply", new BigDecimal(8)));
    assertThat(netting.covers())
        .extracting(cover -> cover.need().task() + " short " + cover.shortOnTheDay())
        .containsExactly("early short 0", "late short 4");
    assertThat(netting.stopped()).containsExactly("late");
  }

  @Test
  void onOneDayTheTaskIdDecides() {
    Netting netting =
        net(
            List.of(need("b", 5, 2), need("a", 5, 2)),
            Supplies.atHand("s", "ply", new BigDecimal(5)));
    assertThat(netting.stopped()).containsExactly("b");
  }

  @Test
  void whatIsKeptForOneTaskIsNotGivenToAnother() {
    Netting netting =
        net(
            List.of(need("other", 5, 1), need("mine", 5, 8)),
            Supplies.keptFor(Supplies.atHand("kept", "ply", new BigDecimal(7)), Set.of("mine")));
    assertThat(netting.stopped()).containsExactly("other");
    assertThat(netting.readyDays()).containsOnlyKeys("mine");
  }

  @Test
  void aTaskTakesWhatIsKeptForItBeforeWhatIsFree() {
    Netting netting =
        net(
            List.of(need("mine", 5, 1), need("other", 5, 8)),
            Supplies.atHand("free", "ply", new BigDecimal(5)),
            Supplies.keptFor(Supplies.atHand("kept", "ply", new BigDecimal(5)), Set.of("mine")));
    assertThat(netting.covers()).allMatch(cover -> cover.shortOnTheDay().signum() == 0);
  }

  @Test
  void goodsThatComeLateHoldTheTaskUntilThen() {
    Netting netting =
        net(
            List.of(need("a", 5, 2)),
            Supplies.atHand("s", "ply", new BigDecimal(2)),
            Supplies.due("r", "ply", new BigDecimal(9), TODAY.plusDays(20)));
    Cover cover = netting.covers().get(0);
    assertThat(cover.shortOnTheDay()).isEqualByComparingTo("3");
    assertThat(cover.missing()).isZero();
    assertThat(cover.readyOn()).contains(TODAY.plusDays(20));
    assertThat(netting.readyDays()).containsEntry("a", TODAY.plusDays(20));
  }

  @Test
  void theLastDayToOrderLiesTheLeadTimeBeforeTheNeed() {
    Netting netting = ordering(10, need("a", 5, 24));
    assertThat(netting.orders())
        .singleElement()
        .satisfies(
            order -> {
              assertThat(order.orderBy()).isEqualTo(TODAY.plusDays(14));
              assertThat(order.arrives()).isEqualTo(TODAY.plusDays(24));
            });
    assertThat(netting.stopped()).isEmpty();
  }

  @Test
  void anOrderWhoseDayHasPassedArrivesALeadTimeFromToday() {
    Netting netting = ordering(10, need("a", 5, 3));
    assertThat(netting.orders().get(0).needed()).isEqualTo(TODAY.plusDays(3));
    assertThat(netting.orders().get(0).orderBy()).isEqualTo(TODAY.minusDays(7));
    assertThat(netting.readyDays()).containsEntry("a", TODAY.plusDays(10));
  }

  @Test
  void whatOneDayNeedsIsOneOrder() {
    Netting netting = ordering(2, need("a", 4, 5), need("b", 9, 5), need("c", 3, 9));
    assertThat(netting.orders())
        .extracting(order -> order.amount() + " for " + order.needed())
        .containsExactly("13 for 2026-01-10", "3 for 2026-01-14");
  }

  @Test
  void aNeedThatLeansOnGoodsNobodyHasCountedSaysSo() {
    Netting netting =
        net(
            List.of(need("a", 5, 2), need("b", 5, 3)),
            new Supply(
                "box",
                "ply",
                new BigDecimal(9),
                Optional.empty(),
                Set.of(),
                Supply.Sureness.UNCOUNTED),
            Supplies.atHand("shelf", "ply", new BigDecimal(5)));
    assertThat(netting.covers())
        .extracting(
            cover ->
                cover.draws().stream()
                    .anyMatch(draw -> draw.supply().sureness() == Supply.Sureness.UNCOUNTED))
        .containsExactly(false, true);
  }

  @Test
  void impossibleValuesAreRefused() {
    assertThatThrownBy(() -> need("a", 0, 1)).hasMessageContaining("more than nothing");
    assertThatThrownBy(() -> Supplies.atHand("s", "ply", new BigDecimal(-1)))
        .hasMessageContaining("never negative");
  }

  private static Netting net(List<Need> needs, Supply... supplies) {
    return Netting.of(needs, List.of(supplies), Map.of(), TODAY);
  }

  private static Netting ordering(int leadDays, Need... needs) {
    return Netting.of(List.of(needs), List.of(), Map.of("ply", leadDays), TODAY);
  }

  private static Need need(String task, int amount, int inDays) {
    return new Need(task, "ply", BigDecimal.valueOf(amount), TODAY.plusDays(inDays));
  }
}
