package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines that go round what they enclose once, and others. */
class LoopTest {
  private static List<Point> points(String corners) {
    List<Point> points = new ArrayList<>();
    for (String corner : corners.split(" ")) {
      String[] at = corner.split(",");
      points.add(new Point(Double.parseDouble(at[0]), Double.parseDouble(at[1])));
    }
    return points;
  }

  /** As listed, the other way round, turned by a corner, far off, and small. */
  private static List<Loop> ways(String corners) {
    List<Loop> ways = new ArrayList<>();
    List<Point> points = points(corners);
    ways.add(new Loop(points));
    List<Point> back = new ArrayList<>(points);
    Collections.reverse(back);
    ways.add(new Loop(back));
    List<Point> turned = new ArrayList<>(points);
    Collections.rotate(turned, 2);
    ways.add(new Loop(turned));
    ways.add(new Loop(points.stream().map(p -> new Point(p.y() + 31, p.z() - 17)).toList()));
    ways.add(new Loop(points.stream().map(p -> new Point(p.y() / 1e3, p.z() / 1e3)).toList()));
    ways.add(new Loop(points.stream().map(p -> new Point(p.z(), p.y())).toList()));
    return ways;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0,0 4,0 0,3",
        "0,0 4,0 4,3 0,3",
        "0,0 5,0 5,1 1,1 1,8 0,8", // an angle
        "0,0 6,0 6,1 4,1 4,5 2,5 2,1 0,1", // a T upside down
        "0,0 4,0 8,0 8,3 4,3 0,3", // corners in the middle of sides
        "0,0 4,0 2,1 4,3 0,3", // a notch
        "0,0 6,0 6,6 0,6 0,0 2,2 2,4 4,4 4,2 2,2", // a slit to a hollow and back
        "0,0 9,0 9,9 0,9 0,1 1,1 1,8 8,8 8,1 0,1" // a hollow that a side opens to
      })
  void whatGoesRoundOnce(String corners) {
    assertThat(ways(corners)).allMatch(Loop::simple);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0,0 6,4 6,0 0,9", // a figure of eight, one lobe larger
        "0,0 4,0 4,3 0,3 0,0 4,0 4,3 0,3", // traced twice
        "5,0 8,9 0,3.5 10,3.5 2,9", // a star, its middle gone round twice
        "0,0 9,0 9,9 2,9 2,3 6,3 6,6 0,6", // a spiral that crosses itself
        "0,0 9,0 9,9 0,9 0,0 2,2 4,2 4,4 2,4 2,2" // its hollow gone round the same way
      })
  void whatDoesNot(String corners) {
    assertThat(ways(corners)).noneMatch(Loop::simple);
  }

  /** Of a right triangle with legs a, b: A = ab/2, ∫y² = a³b/12, ∫z² = ab³/12, ∫yz = a²b²/24. */
  @Test
  void theMomentsOfATriangle() {
    Moments moments = new Loop(points("0,0 4,0 0,3")).moments();
    assertThat(moments.area()).isCloseTo(6, within(1e-12));
    assertThat(moments.y()).isCloseTo(6 * 4 / 3.0, within(1e-12));
    assertThat(moments.z()).isCloseTo(6, within(1e-12));
    assertThat(moments.yy()).isCloseTo(64 * 3 / 12.0, within(1e-12));
    assertThat(moments.zz()).isCloseTo(4 * 27 / 12.0, within(1e-12));
    assertThat(moments.yz()).isCloseTo(16 * 9 / 24.0, within(1e-12));
    Moments far = new Loop(points("5,7 9,7 5,10")).moments();
    assertThat(far.yz()).isCloseTo(6 + 5 * 6 + 7 * 8 + 5 * 7 * 6, within(1e-9));
  }
}
