package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Simulated against exact. Referee: the beta distribution of Apache Commons Statistics 1.2. The
 * seed is fixed; tolerances are four standard errors.
 */
class SimulationTest {
  private static final int RUNS = 10_000;
  private static final double FOUR_ERRORS = 4;

  @ParameterizedTest
  @ValueSource(ints = {0, 10, 30, 50, 80, 100})
  void oneTaskFollowsItsBetaDistribution(int likely) {
    Estimate estimate =
        new Estimate(Calendars.days(0), Calendars.days(likely), Calendars.days(100));
    Range range = simulate(List.of(Works.of("a", estimate)));
    BetaDistribution exact = exact(likely);
    for (int day = 5; day < 100; day += 5) {
      double chance = exact.cumulativeProbability(day / 100.0);
      double error = Math.sqrt(chance * (1 - chance) / RUNS);
      assertThat(range.chanceBy(Calendars.MONDAY.plusDays(day - 1)).share())
          .isCloseTo(chance, within(FOUR_ERRORS * error + 1e-9));
    }
  }

  @Test
  void theLaterOfTwoTasksFollowsTheSquareOfTheDistribution() {
    Estimate estimate = new Estimate(0, Calendars.days(30), Calendars.days(100));
    Range range = simulate(List.of(Works.of("a", estimate), Works.of("b", estimate)));
    double single = exact(30).cumulativeProbability(0.4);
    Range.Chance found = range.chanceBy(Calendars.MONDAY.plusDays(39));
    assertThat(found.share()).isCloseTo(single * single, within(FOUR_ERRORS * found.error()));
    assertThat(range.criticality("a").share()).isCloseTo(0.5, within(FOUR_ERRORS * 0.005));
    assertThat(range.criticality("a").share() + range.criticality("b").share())
        .isCloseTo(1, within(0.001));
  }

  /** 12 million draws in all: a plan of 20,000 tasks is simulated 600 times, one of ten 10,000. */
  @Test
  void aVeryLongPlanGetsFewerRunsAndTellsHowFarItIs() {
    Estimate estimate = new Estimate(10, 20, 90);
    List<Activity> tasks =
        IntStream.range(0, 20_000).mapToObj(i -> Works.of("t" + i, estimate)).toList();
    List<Double> told = Collections.synchronizedList(new ArrayList<>());
    Range range =
        Simulation.run(
            Network.of(tasks, List.of()), Calendars.THE_CLOCK, Calendars.MONDAY, told::add);
    assertThat(range.runs()).isEqualTo(600);
    assertThat(told).hasSize(12).contains(1.0).allMatch(share -> share > 0 && share <= 1);
    assertThat(simulate(tasks.subList(0, 10)).runs()).isEqualTo(RUNS);
    assertThat(
            Simulation.run(
                    Network.of(tasks.subList(0, 10), List.of()),
                    Calendars.THE_CLOCK,
                    Calendars.MONDAY,
                    done -> {})
                .runs())
        .isEqualTo(Simulation.RUNS);
  }

  @Test
  void theErrorOfAShareIsThatOfTheBinomialDistribution() {
    Estimate fixed = Estimate.fixed(Calendars.days(2));
    Range range = simulate(List.of(Works.of("a", fixed)));
    assertThat(range.chanceBy(Calendars.MONDAY.plusDays(1)).error()).isZero();
    Estimate spread = new Estimate(0, Calendars.days(30), Calendars.days(100));
    Range.Chance found =
        simulate(List.of(Works.of("a", spread))).chanceBy(Calendars.MONDAY.plusDays(24));
    assertThat(found.error())
        .isCloseTo(Math.sqrt(found.share() * (1 - found.share()) / RUNS), within(1e-12));
    assertThat(found.share()).isBetween(0.05, 0.95);
  }

  @Test
  void meansAddUpAlongAChain() {
    Estimate estimate = new Estimate(Calendars.days(1), Calendars.days(2), Calendars.days(9));
    List<Activity> tasks =
        IntStream.range(0, 16).mapToObj(i -> Works.of("t" + i, estimate)).toList();
    List<Link> links =
        IntStream.range(0, 15).mapToObj(i -> Works.link("t" + i, "t" + (i + 1))).toList();
    Network network = Network.of(tasks, links);
    Range range = Simulation.run(network, Calendars.THE_CLOCK, Calendars.MONDAY, done -> {});
    // sixteen alike are nearly normal: half of the runs end by their mean, 48 days
    assertThat(days(range.by(0.5))).isCloseTo(48, within(0.5));
    assertThat(range.criticality("t7").share()).isEqualTo(1);
  }

  @Test
  void withoutSpreadEveryRunIsThePlainSchedule() {
    Network network = RandomPlan.lively(7).network();
    Schedule schedule = Schedule.of(network, Calendars.barn(), Calendars.MONDAY);
    Range range = Simulation.run(network, Calendars.barn(), Calendars.MONDAY, 100, 1, done -> {});
    assertThat(range.by(0.01).at()).isEqualTo(schedule.end());
    assertThat(range.by(1).at()).isEqualTo(schedule.end());
    schedule
        .all()
        .forEach(
            each ->
                assertThat(range.criticality(each.id()).share())
                    .isEqualTo(each.critical() ? 1.0 : 0.0));
  }

  @Test
  void theIntervalOfAQuantileHoldsIt() {
    Estimate estimate = new Estimate(0, Calendars.days(30), Calendars.days(100));
    Range range = simulate(List.of(Works.of("a", estimate)));
    for (double share : new double[] {0.1, 0.5, 0.8, 0.9}) {
      double exact = 100 * exact(30).inverseCumulativeProbability(share);
      Range.Quantile found = range.by(share);
      assertThat(found.from()).isBefore(found.at());
      assertThat(found.to()).isAfter(found.at());
      assertThat(days(found)).isCloseTo(exact, within(1.5));
    }
    assertThatThrownBy(() -> range.by(0)).hasMessageContaining("between 0 and 1");
  }

  private static double days(Range.Quantile found) {
    long clock =
        WorkCalendar.clock(found.at()) - WorkCalendar.clock(Calendars.MONDAY.atStartOfDay());
    return (double) clock / WorkCalendar.CLOCK_DAY;
  }

  @Test
  void oneSeedGivesOneAnswerAndAnotherSeedAnother() {
    Estimate estimate = new Estimate(0, Calendars.days(30), Calendars.days(100));
    Network network = Network.of(List.of(Works.of("a", estimate)), List.of());
    double first = median(network, 1);
    assertThat(median(network, 1)).isEqualTo(first);
    assertThat(median(network, 2)).isNotEqualTo(first);
  }

  private static double median(Network network, long seed) {
    return days(
        Simulation.run(network, Calendars.THE_CLOCK, Calendars.MONDAY, 1000, seed, done -> {})
            .by(0.5));
  }

  @Test
  void ofABegunTaskOnlyTheRestIsUncertain() {
    Activity begun =
        Works.at(
            Works.of("a", new Estimate(0, Calendars.days(30), Calendars.days(100))),
            new Headway.Begun(Calendars.MONDAY.minusDays(5), 0.9));
    Range range = simulate(List.of(begun));
    for (double share : new double[] {0.1, 0.5, 0.9}) {
      assertThat(days(range.by(share)))
          .isCloseTo(10 * exact(30).inverseCumulativeProbability(share), within(0.15));
    }
  }

  private static BetaDistribution exact(double likely) {
    return BetaDistribution.of(1 + 4 * likely / 100, 5 - 4 * likely / 100);
  }

  private static Range simulate(List<Activity> tasks) {
    Network network = Network.of(tasks, List.of());
    return Simulation.run(
        network, Calendars.THE_CLOCK, Calendars.MONDAY, RUNS, Simulation.SEED, done -> {});
  }
}
