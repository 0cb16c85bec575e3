package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class NettingProperties {
  private static final LocalDate TODAY = Calendars.MONDAY;
  private static final Map<String, Integer> LEAD_DAYS = Map.of("i0", 9);

  /**
   * A task of a drawn ledger has a need of one item or two; some supplies are kept for some tasks.
   */
  record Drawn(List<Need> needs, List<Supply> supplies) {
    static Drawn of(long seed) {
      Random random = new Random(seed);
      List<Need> needs = new ArrayList<>();
      List<Supply> supplies = new ArrayList<>();
      for (int i = 1 + random.nextInt(20); i > 0; i--) {
        LocalDate on = TODAY.plusDays(random.nextInt(40));
        needs.add(new Need("t" + i, item(random), amount(random, 1), on));
      }
      for (int i = 1 + random.nextInt(12); i > 0; i--) {
        Supply supply = Supplies.atHand("s" + i, item(random), amount(random, 0));
        if (random.nextBoolean()) {
          LocalDate on = TODAY.plusDays(random.nextInt(60));
          supply = Supplies.due("s" + i, supply.item(), supply.amount(), on);
        }
        Set<String> tasks = Set.of("t" + random.nextInt(20), "u" + random.nextInt(20));
        supplies.add(random.nextInt(3) == 0 ? Supplies.keptFor(supply, tasks) : supply);
      }
      return new Drawn(needs, supplies);
    }

    private static String item(Random random) {
      return "i" + random.nextInt(2);
    }

    private static BigDecimal amount(Random random, int least) {
      return BigDecimal.valueOf(least + random.nextInt(20));
    }

    Netting net() {
      return Netting.of(needs, supplies, LEAD_DAYS, TODAY);
    }
  }

  @Property
  void removingStockNeverMakesADateEarlier(@ForAll long seed) {
    Drawn drawn = Drawn.of(seed);
    List<Supply> fewer = new ArrayList<>(drawn.supplies());
    Random random = new Random(seed);
    Supply cut = fewer.remove(random.nextInt(fewer.size()));
    BigDecimal rest = cut.amount().multiply(new BigDecimal(random.nextInt(3))).movePointLeft(1);
    fewer.add(new Supply(cut.id(), cut.item(), rest, cut.arrives(), cut.keptFor(), cut.sureness()));
    List<Cover> before = drawn.net().covers();
    List<Cover> after = Netting.of(drawn.needs(), fewer, LEAD_DAYS, TODAY).covers();
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).need()).isEqualTo(before.get(i).need());
      assertThat(orNever(after.get(i).readyOn()))
          .isAfterOrEqualTo(orNever(before.get(i).readyOn()));
      assertThat(after.get(i).missing()).isGreaterThanOrEqualTo(before.get(i).missing());
    }
  }

  private static LocalDate orNever(Optional<LocalDate> day) {
    return day.orElse(LocalDate.MAX);
  }

  @Property
  void nothingIsGivenTwiceOrOutOfThinAir(@ForAll long seed) {
    Drawn drawn = Drawn.of(seed);
    List<Cover> covers = drawn.net().covers();
    assertThat(covers).hasSameSizeAs(drawn.needs());
    for (Supply supply : drawn.supplies()) {
      BigDecimal given =
          covers.stream()
              .flatMap(cover -> cover.draws().stream())
              .filter(draw -> draw.supply().equals(supply))
              .map(Cover.Draw::amount)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertThat(given).isLessThanOrEqualTo(supply.amount());
    }
    for (Cover cover : covers) {
      BigDecimal drawnAmount =
          cover.draws().stream().map(Cover.Draw::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
      assertThat(drawnAmount.add(cover.missing())).isEqualByComparingTo(cover.need().amount());
      assertThat(cover.draws())
          .allSatisfy(
              draw -> {
                Set<String> kept = draw.supply().keptFor();
                assertThat(kept.isEmpty() || kept.contains(cover.need().task())).isTrue();
              });
    }
  }

  @Property
  void ordersBringAllThatIsMissingOfWhatCanBeOrdered(@ForAll long seed) {
    Netting netting = Drawn.of(seed).net();
    BigDecimal missing =
        netting.covers().stream()
            .filter(cover -> cover.need().item().equals("i0"))
            .map(Cover::missing)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal ordered =
        netting.orders().stream()
            .map(PlannedOrder::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(ordered).isEqualByComparingTo(missing);
    assertThat(netting.orders()).allMatch(order -> order.item().equals("i0"));
  }

  @Property
  void theOrderOfReadingChangesNothing(@ForAll long seed) {
    Drawn drawn = Drawn.of(seed);
    List<Need> needs = new ArrayList<>(drawn.needs());
    List<Supply> supplies = new ArrayList<>(drawn.supplies());
    Collections.shuffle(needs, new Random(seed));
    Collections.shuffle(supplies, new Random(seed));
    Netting again = new Drawn(needs, supplies).net();
    assertThat(again.covers()).isEqualTo(drawn.net().covers());
    assertThat(again.orders()).isEqualTo(drawn.net().orders());
  }
}
