package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked networks of textbooks; the sources stand in the first lines of the tables. */
class NetworkPublishedTest {
  private static final double FOUR_DECIMALS = 0.00005;

  /** Published chances come from tables entered with z of two decimals. */
  private static final double TABLE = 0.0005;

  @Test
  void theWorkedNetworksHaveTheirPublishedTimesAndFloats() {
    List<Map<String, String>> rows = Table.read("worked-networks.csv");
    assertThat(rows).hasSize(32);
    for (Map<String, String> row : rows) {
      Planned planned = schedule("worked-networks.csv", cell(row, "case")).of(cell(row, "task"));
      checkTimes(row, planned);
      if (!cell(row, "ff").isEmpty()) {
        assertThat(planned.free().days()).as("%s", row).isEqualTo(number(row, "ff"));
      }
      assertThat(planned.critical()).as("%s", row).isEqualTo(number(row, "tf") == 0);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "worked-chains.csv", useHeadersInDisplayName = true)
  void theWorkedNetworksHaveTheirPublishedLengthAndChain(String name, long days, String chain) {
    Schedule schedule = schedule("worked-networks.csv", name);
    assertThat(Works.length(schedule).toDays()).isEqualTo(days);
    assertThat(schedule.all().stream().filter(Planned::critical).map(Planned::id))
        .contains(chain.split(" "));
  }

  @Test
  void threePointTasksHaveTheirPublishedMeanVarianceAndTimes() {
    List<Map<String, String>> rows = Table.read("three-point-networks.csv");
    assertThat(rows).hasSize(31);
    for (Map<String, String> row : rows) {
      Planned planned =
          schedule("three-point-networks.csv", cell(row, "case")).of(cell(row, "task"));
      Estimate takes = planned.activity().takes();
      double day = WorkCalendar.CLOCK_DAY;
      assertThat(takes.mean() / day).as("%s", row).isCloseTo(number(row, "mean"), within(1e-12));
      assertThat(takes.variance() / day / day)
          .as("%s", row)
          .isCloseTo(number(row, "variance"), within(FOUR_DECIMALS));
      checkTimes(row, planned);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "three-point-chances.csv", useHeadersInDisplayName = true)
  void theClassicalChanceIsAsPublished(
      String name, double mean, double variance, long days, double chance, String how) {
    Schedule schedule = schedule("three-point-networks.csv", name);
    assertThat(Works.length(schedule).toMinutes() / (double) WorkCalendar.CLOCK_DAY)
        .isEqualTo(mean);
    double classical = schedule.pert().chanceBy(Calendars.MONDAY.plusDays(days - 1));
    assertThat(classical)
        .isCloseTo(
            NormalDistribution.of(mean, Math.sqrt(variance)).cumulativeProbability((double) days),
            within(FOUR_DECIMALS));
    double precision = how.equals("published") ? TABLE : FOUR_DECIMALS;
    assertThat(classical).isCloseTo(chance, within(precision));
  }

  /** The chain A-D-G-J has float 1 and a variance of its own: the classical chance overlooks it. */
  @Test
  void aNearlyCriticalChainMakesTheClassicalChanceTooGood() {
    Schedule schedule = schedule("three-point-networks.csv", "P3");
    Range range =
        Simulation.run(schedule.network(), Calendars.THE_CLOCK, Calendars.MONDAY, done -> {});
    assertThat(range.criticality("D").share()).isBetween(0.1, 0.5);
    Range.Chance simulated = range.chanceBy(Calendars.MONDAY.plusDays(16));
    double classical = schedule.pert().chanceBy(Calendars.MONDAY.plusDays(16));
    assertThat(simulated.share()).isLessThan(classical - 4 * simulated.error());
  }

  private static void checkTimes(Map<String, String> row, Planned planned) {
    assertThat(planned.total().days()).as("%s", row).isEqualTo(number(row, "tf"));
    if (cell(row, "es").isEmpty()) {
      return;
    }
    assertThat(
            Stream.of(
                planned.earliestStart(),
                planned.earliestFinish(),
                planned.latestStart(),
                planned.latestFinish()))
        .as("%s", row)
        .containsExactly(
            Calendars.MONDAY.atStartOfDay().plusDays((long) number(row, "es")),
            Calendars.MONDAY.atStartOfDay().plusDays((long) number(row, "ef")),
            Calendars.MONDAY.atStartOfDay().plusDays((long) number(row, "ls")),
            Calendars.MONDAY.atStartOfDay().plusDays((long) number(row, "lf")));
  }

  private static Schedule schedule(String table, String name) {
    List<Map<String, String>> rows =
        Table.read(table).stream().filter(row -> cell(row, "case").equals(name)).toList();
    List<Activity> tasks =
        rows.stream().map(row -> Works.of(cell(row, "task"), estimate(row))).toList();
    List<Link> links =
        rows.stream()
            .flatMap(
                row ->
                    Arrays.stream(cell(row, "after").split(" "))
                        .filter(before -> !before.isEmpty())
                        .map(before -> Works.link(before, cell(row, "task"))))
            .toList();
    return Schedule.of(Network.of(tasks, links), Calendars.THE_CLOCK, Calendars.MONDAY);
  }

  private static Estimate estimate(Map<String, String> row) {
    return row.containsKey("days")
        ? Estimate.fixed(Calendars.days(number(row, "days")))
        : new Estimate(
            Calendars.days(number(row, "low")),
            Calendars.days(number(row, "likely")),
            Calendars.days(number(row, "high")));
  }

  private static String cell(Map<String, String> row, String column) {
    return row.getOrDefault(column, "");
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(cell(row, column));
  }
}
