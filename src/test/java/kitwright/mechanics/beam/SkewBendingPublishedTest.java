package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import org.junit.jupiter.api.Test;

/**
 * Bending of sections whose axes are not their own. Sources: D. J. Peery, Aircraft Structures,
 * 1950, ex. 7.2.1, as robbievanleeuwen/section-properties tests/validation/test_peery.py has it;
 * EngineeringMechanicsOER/StrengthBook, ex. 9.6, 14.1 and 14.3; S. H. Crandall, N. C. Dahl, ex.
 * 7.2, as ansys/pymapdl vm10.dat has it; all read 2026-11-29.
 */
class SkewBendingPublishedTest {
  private static final BeamMaterial STUFF =
      BeamMaterial.of("stuff", Kind.METAL, 1, 1, 0.4, Made.strength(1, 1, 1));

  private static Section polygon(double... corners) {
    var points = new java.util.ArrayList<Point>();
    for (int i = 0; i < corners.length; i += 2) {
      points.add(new Point(corners[i], corners[i + 1]));
    }
    return Shapes.polygon(STUFF, new Loop(points));
  }

  /** Web 2 by 12, flanges 4 by 2 beyond the web, the upper to the left, the lower to the right. */
  private static Section zed() {
    return polygon(-1, -6, 5, -6, 5, -4, 1, -4, 1, 6, -5, 6, -5, 4, -1, 4);
  }

  /**
   * Peery: Mx −100 000, My −10 000 lb·in; stress −2380 psi at (1, 6), 580 at (−5, 6), 1210 at (−5,
   * 4). The load along y here is the one along z of the section turned.
   */
  @Test
  void peerysZedUnderBothMoments() {
    var upright = Bending.of(zed());
    var aside = Bending.of(zed().turned());
    assertThat(upright.isSkew()).isTrue();
    double[][] printed = {{1, 6, -2380}, {-5, 6, 580}, {-5, 4, 1210}};
    for (double[] row : printed) {
      double stress =
          Stresses.at(upright.section(), STUFF, new Point(row[0], row[1]), 100_000)
              + Stresses.at(aside.section(), STUFF, new Point(row[1], row[0]), 10_000);
      assertThat(stress).isCloseTo(row[2], within(10.0));
    }
  }

  /**
   * Ix 693.3, Iy 173.3, Ixy −240: EI free is Ix − Ixy²/Iy, its product with Iy that of 787 and
   * 79.5.
   */
  @Test
  void peerysZedIsAsStiffAsItsOwnAxesMakeIt() {
    double free = Bending.of(zed()).stiffness();
    assertThat(free).isCloseTo(693.33 - 240.0 * 240 / 173.33, within(0.05));
    assertThat(free * 173.33).isCloseTo(787.2 * 79.5, within(30.0));
  }

  /** 8 by 15 in, 400 kip·in at 65°: 2.26 and 0.15 ksi at the corners. */
  @Test
  void aRectangleUnderASlantingMoment() {
    var section = Shapes.rectangle(STUFF, 8, 15);
    double slant = Math.toRadians(65);
    double one = Stresses.at(section, STUFF, new Point(0, 0), 400 * Math.sin(slant));
    double other = Stresses.at(section.turned(), STUFF, new Point(0, 0), 400 * Math.cos(slant));
    assertThat(one + other).isCloseTo(2.26, within(0.006));
    assertThat(one - other).isCloseTo(0.15 - 0.0, within(0.01));
  }

  /** Rod 32 mm, 376 and 204 N·m: ±132.9 MPa about its own slanting axis, 116.9 and 63.4 apart. */
  @Test
  void aRodBentBothWays() {
    var rod = Shapes.round(STUFF, 0.032);
    var top = new Point(0.016, 0.032);
    assertThat(Stresses.at(rod, STUFF, top, 376) / 1e6).isCloseTo(-116.9, within(0.05));
    assertThat(Stresses.at(rod, STUFF, top, 204) / 1e6).isCloseTo(-63.4, within(0.05));
  }

  /** Post 200 by 150, 180 kN, M 7.2 and 9.0 kN·m, at 85 and 75 mm from the middle: 11.9 MPa. */
  @Test
  void aPostPushedOffBothAxes() {
    var post = Shapes.rectangle(STUFF, 0.2, 0.15);
    double pushed = 180e3 / (0.2 * 0.15);
    double one = Stresses.at(post, STUFF, new Point(0, 0), 9.0e3);
    double other = Stresses.at(post.turned(), STUFF, new Point(0, 0.015), 7.2e3);
    assertThat(one / 1e6).isCloseTo(12.0, within(1e-6));
    assertThat((pushed + one - other) / 1e6).isCloseTo(11.9, within(0.05));
  }

  /** Tee, flange 9 by 4, web 1.5, depth 20, 100 000 lb·in: 700 and 300 psi. */
  @Test
  void aTee() {
    var tee =
        LayeredSection.ofWidth(9)
            .strips(16, List.of(Strip.gap(3.75), Strip.of(1.5, STUFF), Strip.gap(3.75)))
            .layer(STUFF, 4)
            .section();
    var edges = Stresses.of(tee, 100_000);
    assertThat(edges.get(0).atLower()).isCloseTo(700, within(0.5));
    assertThat(edges.get(1).atUpper()).isCloseTo(-300, within(0.5));
  }
}
