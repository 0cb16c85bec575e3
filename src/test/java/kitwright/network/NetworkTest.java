package kitwright.network;

import static kitwright.network.NetworkFault.Kind.LOOP;
import static kitwright.network.NetworkFault.Kind.SAME_ID;
import static kitwright.network.NetworkFault.Kind.SELF_LINK;
import static kitwright.network.NetworkFault.Kind.UNKNOWN_TASK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NetworkTest {
  @Test
  void aLoopIsShownInTheOrderOfWorkFromItsSmallestId() {
    Network network =
        Network.of(
            tasks("sand", "coat", "glue", "plane"),
            List.of(
                Works.link("plane", "glue"),
                Works.link("glue", "sand"),
                Works.link("sand", "coat"),
                Works.link("coat", "glue")));
    assertThat(network.faults())
        .containsExactly(new NetworkFault(LOOP, List.of("coat", "glue", "sand")));
    assertThat(network.inOrder()).containsExactly("plane", "coat", "glue", "sand");
  }

  @Test
  void twoLoopsAreBothShown() {
    Network network =
        Network.of(
            tasks("a", "b", "c", "d"),
            List.of(
                Works.link("a", "b"),
                Works.link("b", "a"),
                Works.link("c", "d"),
                Works.link("d", "c")));
    assertThat(network.faults())
        .containsExactly(
            new NetworkFault(LOOP, List.of("a", "b")), new NetworkFault(LOOP, List.of("c", "d")));
  }

  @Test
  void whatWaitsForALoopIsNotPartOfIt() {
    Network network =
        Network.of(
            tasks("a", "b", "c"),
            List.of(Works.link("b", "c"), Works.link("c", "b"), Works.link("c", "a")));
    assertThat(network.faults()).containsExactly(new NetworkFault(LOOP, List.of("b", "c")));
    assertThat(network.inOrder()).containsExactly("b", "c", "a");
  }

  @Test
  void badLinksAndDoubleIdsAreToldAndLeftOut() {
    Network network =
        Network.of(
            tasks("a", "b", "b"),
            List.of(Works.link("a", "a"), Works.link("a", "ghost"), Works.link("a", "b")));
    assertThat(network.faults())
        .containsExactly(
            new NetworkFault(SAME_ID, List.of("b")),
            new NetworkFault(SELF_LINK, List.of("a", "a")),
            new NetworkFault(UNKNOWN_TASK, List.of("a", "ghost")));
    assertThat(network.waitsFor("b")).containsExactly("a");
    assertThat(network.followers("a")).containsExactly("b");
  }

  @Test
  void aLoopOfALedgersWholeLengthIsFound() {
    List<Activity> tasks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    IntStream.range(0, 20_000)
        .forEach(
            i -> {
              tasks.add(Works.of("t" + i, Estimate.fixed(1)));
              links.add(Works.link("t" + i, "t" + (i + 1) % 20_000));
            });
    Network network = Network.of(tasks, links);
    assertThat(network.faults())
        .singleElement()
        .satisfies(f -> assertThat(f.ids()).hasSize(20_000));
    assertThat(network.inOrder()).hasSize(20_000);
  }

  @Test
  void impossibleValuesAreRefused() {
    assertThatThrownBy(() -> Estimate.fixed(-1)).hasMessageContaining("not negative");
    assertThatThrownBy(() -> new Estimate(3, 2, 4)).hasMessageContaining("low <= likely <= high");
    assertThatThrownBy(() -> new Link("a", "b", -1)).hasMessageContaining("never negative");
    assertThatThrownBy(() -> new Headway.Begun(Calendars.MONDAY, 1.4))
        .hasMessageContaining("between 0 and 1");
    assertThatThrownBy(() -> new Headway.Done(Calendars.MONDAY, Calendars.MONDAY.minusDays(1)))
        .hasMessageContaining("before it began");
    assertThatThrownBy(() -> Network.of(tasks("a"), List.of()).longerBy(Map.of("b", 1L)))
        .hasMessageContaining("no task b");
  }

  private static List<Activity> tasks(String... ids) {
    return Arrays.stream(ids).map(id -> Works.of(id, Estimate.fixed(60))).toList();
  }
}
