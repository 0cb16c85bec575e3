package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;

class ScheduleProperties {
  /** Independent referee: jgrapht 1.5.2, shortest path with negated weights. */
  @Property(tries = 300)
  void theLengthIsTheLongestPathThatAGraphLibraryFinds(@ForAll long seed) {
    RandomPlan plan = RandomPlan.plain(seed);
    var graph =
        new DirectedWeightedMultigraph<String, DefaultWeightedEdge>(DefaultWeightedEdge.class);
    graph.addVertex("begin");
    graph.addVertex("end");
    for (Activity task : plan.tasks()) {
      graph.addVertex(task.id());
      graph.addVertex(task.id() + " done");
      arrow(graph, "begin", task.id(), 0);
      arrow(graph, task.id(), task.id() + " done", task.takes().expected());
      arrow(graph, task.id() + " done", "end", 0);
    }
    plan.links().forEach(l -> arrow(graph, l.before() + " done", l.after(), l.lag()));
    Schedule schedule = Schedule.of(plan.network(), Calendars.THE_CLOCK, Calendars.MONDAY);
    var paths = new BellmanFordShortestPath<>(graph).getPaths("begin");
    assertThat((double) Works.length(schedule).toMinutes()).isEqualTo(-paths.getWeight("end"));
    for (Activity task : plan.tasks()) {
      assertThat(schedule.of(task.id()).earliestStart())
          .isEqualTo(
              Calendars.MONDAY.atStartOfDay().plusMinutes(-(long) paths.getWeight(task.id())));
    }
  }

  private static void arrow(
      DirectedWeightedMultigraph<String, DefaultWeightedEdge> graph,
      String from,
      String to,
      long minutes) {
    graph.setEdgeWeight(graph.addEdge(from, to), (double) -minutes);
  }

  @Property(tries = 300)
  void addingALinkNeverShortens(@ForAll long seed) {
    RandomPlan plan = RandomPlan.lively(seed);
    List<Link> more = new ArrayList<>(plan.links());
    more.add(plan.another(seed));
    Schedule before = barn(plan.network());
    Schedule after = barn(Network.of(plan.tasks(), more));
    assertThat(after.end()).isAfterOrEqualTo(before.end());
    before
        .all()
        .forEach(
            each ->
                assertThat(after.of(each.id()).earliestStart())
                    .isAfterOrEqualTo(each.earliestStart()));
  }

  @Property(tries = 300)
  void withoutCuresACriticalTaskHasNoFloatAndAnotherHasSome(@ForAll long seed) {
    Schedule schedule = barn(RandomPlan.plain(seed).network());
    schedule
        .all()
        .forEach(each -> assertThat(each.critical()).isEqualTo(each.total().minutes() == 0));
  }

  @Property(tries = 200)
  void theFloatIsExactlyWhatATaskCanLose(@ForAll long seed) {
    Network network = RandomPlan.lively(seed).network();
    Schedule schedule = barn(network);
    for (Planned each : schedule.all()) {
      if (!each.activity().isDone() && each.activity().left().expected() > 0) {
        assertThat(each.total().minutes()).isNotNegative();
        assertThat(lengthIfLate(network, each, 0)).isEqualTo(Works.length(schedule).toMinutes());
        assertThat(lengthIfLate(network, each, 1))
            .isGreaterThan(Works.length(schedule).toMinutes());
      }
    }
  }

  private static long lengthIfLate(Network network, Planned task, long beyond) {
    long late = task.total().minutes() + beyond;
    return Works.length(barn(network.longerBy(Map.of(task.id(), late)))).toMinutes();
  }

  @Property(tries = 400)
  void freeFloatMovesNobodyElse(@ForAll long seed) {
    Network network = RandomPlan.lively(seed).network();
    Schedule schedule = barn(network);
    for (Planned each : schedule.all()) {
      assertThat(each.free().minutes()).isBetween(0L, each.total().minutes());
      if (each.activity().left().expected() > 0) {
        Schedule slipped = barn(network.longerBy(Map.of(each.id(), each.free().minutes())));
        network
            .followers(each.id())
            .forEach(id -> assertThat(opening(slipped.of(id))).isEqualTo(opening(schedule.of(id))));
      }
    }
  }

  @Property(tries = 200)
  void theOrderOfReadingChangesNothing(@ForAll long seed) {
    RandomPlan plan = RandomPlan.lively(seed);
    List<Activity> tasks = new ArrayList<>(plan.tasks());
    List<Link> links = new ArrayList<>(plan.links());
    Collections.shuffle(tasks, new Random(seed));
    Collections.shuffle(links, new Random(seed));
    Schedule first = barn(plan.network());
    Schedule second = barn(Network.of(tasks, links));
    assertThat(second.all()).isEqualTo(first.all());
  }

  @Property(tries = 200)
  void loopsAreRealLoopsAndWhatIsLeftHasNone(@ForAll long seed) {
    RandomPlan plan = RandomPlan.plain(seed);
    List<Link> tangled = new ArrayList<>(plan.links());
    for (int i = 0; i < 3; i++) {
      Link link = plan.another(seed + i);
      tangled.add(Works.link(/* before= */ link.after(), /* after= */ link.before()));
    }
    Network network = Network.of(plan.tasks(), tangled);
    for (NetworkFault fault : network.faults()) {
      for (int i = 0; i < fault.ids().size(); i++) {
        String from = fault.ids().get(i);
        String to = fault.ids().get((i + 1) % fault.ids().size());
        assertThat(tangled).anyMatch(l -> l.before().equals(from) && l.after().equals(to));
      }
    }
    List<String> order = network.inOrder();
    assertThat(order).hasSameSizeAs(plan.tasks()).doesNotHaveDuplicates();
    order.forEach(
        id ->
            network
                .followers(id)
                .forEach(f -> assertThat(order.indexOf(f)).isGreaterThan(order.indexOf(id))));
  }

  /** The end of a day and the next opening are one moment to whoever works. */
  private static LocalDateTime opening(Planned planned) {
    return Calendars.barn().nextWorking(planned.earliestStart());
  }

  private static Schedule barn(Network network) {
    return Schedule.of(network, Calendars.barn(), Calendars.MONDAY);
  }

  private static final List<DaysOff> TRIP =
      List.of(
          new DaysOff(Calendars.MONDAY, Calendars.MONDAY),
          new DaysOff(Calendars.MONDAY.plusDays(3), Calendars.MONDAY.plusDays(8)));

  /** Where every task needs somebody who is away, nobody works: the days are days off. */
  @Property(tries = 300)
  void whoEverythingNeedsIsAwayLikeAllTheBuild(@ForAll long seed) {
    RandomPlan plan = RandomPlan.lively(seed);
    List<Link> links = plan.links().stream().map(l -> new Link(l.before(), l.after(), 0)).toList();
    // what takes no time may happen as people leave, and a cure ends while they are away, where a
    // build's days off would put both later
    List<Activity> tasks =
        plan.tasks().stream()
            .map(task -> task.isDone() ? task : Works.curing(task.longerBy(1), Duration.ZERO))
            .toList();
    List<Activity> away = tasks.stream().map(task -> task.without(TRIP)).toList();
    Schedule with = barn(Network.of(away, links));
    Schedule off =
        Schedule.of(Network.of(tasks, links), Calendars.barn().without(TRIP), Calendars.MONDAY);
    if (tasks.stream().anyMatch(task -> !task.isDone())) {
      assertThat(with.end()).isEqualTo(off.end());
    }
    for (Activity task : tasks) {
      Planned one = with.of(task.id());
      Planned other = off.of(task.id());
      if (!task.isDone()) {
        assertThat(one.earliestStart()).isEqualTo(other.earliestStart());
        assertThat(one.earliestFinish()).isEqualTo(other.earliestFinish());
        assertThat(one.total()).isEqualTo(other.total());
        assertThat(one.latestStart()).isEqualTo(other.latestStart());
      }
    }
  }

  @Property(tries = 300)
  void withPeopleAwayTheFloatIsExactlyWhatATaskCanLose(@ForAll long seed) {
    Random random = new Random(seed);
    RandomPlan plan = RandomPlan.lively(seed);
    List<Activity> tasks =
        plan.tasks().stream()
            .map(task -> random.nextInt(3) == 0 ? task.without(TRIP) : task)
            .toList();
    Network network = Network.of(tasks, plan.links());
    Schedule schedule = barn(network);
    for (Planned each : schedule.all()) {
      if (!each.activity().isDone() && each.activity().left().expected() > 0) {
        assertThat(lengthIfLate(network, each, 0)).isEqualTo(Works.length(schedule).toMinutes());
        assertThat(lengthIfLate(network, each, 1))
            .isGreaterThan(Works.length(schedule).toMinutes());
      }
    }
  }
}
