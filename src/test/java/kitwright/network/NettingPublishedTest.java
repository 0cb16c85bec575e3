package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked tables of netting by weeks; the sources stand in the first lines of netting.csv. */
class NettingPublishedTest {
  private static final String ITEM = "item";
  private static final BigDecimal ZERO = BigDecimal.ZERO;

  @ParameterizedTest
  @CsvSource({
    "R1-exact, 37, 2",
    "R2-chair, 260, 2",
    "R2-seat, 60, 2",
    "R2-back, 40, 2",
    "R2-legs, 80, 2",
    "R4, 23, 1"
  })
  void aWorkedTableComesOutAsPrinted(String name, int onHand, int leadWeeks) {
    Netting netting = net(name, onHand, leadWeeks * 7);
    compare(name, "net", byWeek(netting, PlannedOrder::needed, PlannedOrder::amount));
    compare(name, "planned", byWeek(netting, PlannedOrder::arrives, PlannedOrder::amount));
    compare(name, "release", byWeek(netting, PlannedOrder::orderBy, PlannedOrder::amount));
    assertThat(netting.orders())
        .isNotEmpty()
        .noneMatch(order -> order.arrives().isAfter(order.needed()));
  }

  /** Figure 7-7: where nothing is ordered, the balance below zero is what is lacking so far. */
  @Test
  void withoutOrdersWhatIsLackingAddsUpToThePrintedBalance() {
    List<Cover> covers = net("R4", 23, Map.of()).covers();
    List<BigDecimal> printed = weeks("R4", "negative");
    for (int i = 0; i < 8; i++) {
      LocalDate until = week(i);
      BigDecimal lacking =
          covers.stream()
              .filter(cover -> !cover.need().on().isAfter(until))
              .map(Cover::missing)
              .reduce(ZERO, BigDecimal::add);
      assertThat(lacking.negate()).as("period " + (i + 1)).isEqualTo(printed.get(i).min(ZERO));
    }
  }

  /**
   * Orlicky's Material Requirements Planning, 3rd ed., pp. 104-105: a hundred trucks, each with a
   * transmission with a gearbox with a gear from a forging; 2, 15, 7 and 46 of them at hand. The
   * net of one is the gross of the next: 98, 83, 76 and 30, not 98, 85, 93 and 54.
   */
  @Test
  void theNetOfTheWholeIsTheGrossOfItsPart() {
    BigDecimal gross = BigDecimal.valueOf(100);
    List<BigDecimal> nets = new ArrayList<>();
    for (int atHand : new int[] {2, 15, 7, 46}) {
      Netting netting =
          Netting.of(
              List.of(new Need("t", ITEM, gross, week(4))),
              List.of(Supplies.atHand("s", ITEM, BigDecimal.valueOf(atHand))),
              Map.of(ITEM, 7),
              Calendars.MONDAY);
      gross = netting.orders().get(0).amount();
      nets.add(gross);
    }
    assertThat(nets)
        .containsExactly(
            BigDecimal.valueOf(98),
            BigDecimal.valueOf(83),
            BigDecimal.valueOf(76),
            BigDecimal.valueOf(30));
  }

  @Test
  void theNeedsOfPartsAreTheReleasesOfTheWhole() {
    List<BigDecimal> chairs =
        byWeek(net("R2-chair", 260, 14), PlannedOrder::orderBy, PlannedOrder::amount);
    assertThat(chairs).isEqualTo(weeks("R2-seat", "gross"));
    assertThat(chairs.stream().map(BigDecimal.valueOf(4)::multiply).toList())
        .isEqualTo(weeks("R2-legs", "gross"));
  }

  private static Netting net(String name, int onHand, int leadDays) {
    return net(name, onHand, Map.of(ITEM, leadDays));
  }

  private static Netting net(String name, int onHand, Map<String, Integer> leadDays) {
    List<Need> needs = new ArrayList<>();
    List<Supply> supplies = new ArrayList<>();
    supplies.add(Supplies.atHand("stock", ITEM, BigDecimal.valueOf(onHand)));
    for (int i = 0; i < 8; i++) {
      BigDecimal gross = weeks(name, "gross").get(i);
      if (gross.signum() > 0) {
        needs.add(new Need("w" + i, ITEM, gross, week(i)));
      }
      if (isPrinted(name, "receipt")) {
        supplies.add(Supplies.due("r" + i, ITEM, weeks(name, "receipt").get(i), week(i)));
      }
    }
    return Netting.of(needs, supplies, leadDays, Calendars.MONDAY);
  }

  private static void compare(String name, String row, List<BigDecimal> found) {
    if (isPrinted(name, row)) {
      assertThat(found).as(name + " " + row).isEqualTo(weeks(name, row));
    }
  }

  private interface Day {
    LocalDate of(PlannedOrder order);
  }

  private interface Amount {
    BigDecimal of(PlannedOrder order);
  }

  private static List<BigDecimal> byWeek(Netting netting, Day day, Amount amount) {
    return IntStream.range(0, 8)
        .mapToObj(
            i ->
                netting.orders().stream()
                    .filter(order -> day.of(order).equals(week(i)))
                    .map(amount::of)
                    .reduce(ZERO, BigDecimal::add))
        .toList();
  }

  private static LocalDate week(int number) {
    return Calendars.MONDAY.plusWeeks(number);
  }

  private static boolean isPrinted(String name, String row) {
    return Table.read("netting.csv").stream().anyMatch(is(name, row));
  }

  private static List<BigDecimal> weeks(String name, String row) {
    Map<String, String> cells =
        Table.read("netting.csv").stream().filter(is(name, row)).findFirst().orElseThrow();
    return IntStream.rangeClosed(1, 8)
        .mapToObj(i -> new BigDecimal(cells.getOrDefault(String.valueOf(i), "")))
        .toList();
  }

  private static Predicate<Map<String, String>> is(String name, String row) {
    return cells ->
        cells.getOrDefault("case", "").equals(name) && cells.getOrDefault("row", "").equals(row);
  }
}
