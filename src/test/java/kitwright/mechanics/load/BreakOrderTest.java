package kitwright.mechanics.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BreakOrderTest {
  private static final Strong STOUT = new Strong(900, "tension", 5000, "core shear");
  private static final Strong WEAK = new Strong(300, "bending", 4000, "timber shear");

  private static final Cantilever LOAD = new Cantilever(1, List.of(new SpanLoad.Point(1, 100)));

  private static List<Station> stations(Strong tip) {
    return List.of(
        new Station(0, "case", STOUT),
        new Station(0.4, "case", STOUT),
        new Station(0.4, "blade", tip),
        new Station(0.7, "blade", tip));
  }

  @Test
  void theSacrificialPartBreaksWhereItIsMeantTo() {
    var order = BreakOrder.of(LOAD, stations(WEAK), List.of());
    var first = order.first().orElseThrow();
    assertThat(first.part()).isEqualTo("blade");
    assertThat(first.at()).isEqualTo(0.4);
    assertThat(first.mode()).isEqualTo("bending");
    assertThat(first.factor()).isCloseTo(300 / 60.0, within(1e-12));
    assertThat(order.margin("case", "blade").orElseThrow()).isCloseTo(9 / 5.0, within(1e-12));
  }

  @Test
  void aStrongerBladeBreaksTheCase() {
    var order = BreakOrder.of(LOAD, stations(new Strong(700, "tension", 9000, "shear")), List.of());
    assertThat(order.first().orElseThrow().part()).isEqualTo("case");
    assertThat(order.margin("case", "blade").orElseThrow()).isLessThan(1);
  }

  @Test
  void aPinMayGoBeforeBoth() {
    var pin = Break.link(0.4, "pin", "shear", 350, LOAD.at(0.4).shear());
    var order = BreakOrder.of(LOAD, stations(WEAK), List.of(pin));
    assertThat(order.first().orElseThrow()).isEqualTo(pin);
    assertThat(order.margin("case", "pin").orElseThrow()).isCloseTo(9 / 3.5, within(1e-12));
    assertThat(order.margin("case", "mast")).isEmpty();
  }
}
