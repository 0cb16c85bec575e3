package kitwright.mechanics.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.ejml.simple.SimpleMatrix;

class LaminateProperties {
  @Provide
  Arbitrary<Ply> plies() {
    var e1 = Arbitraries.doubles().between(1e10, 2e11);
    var ratio = Arbitraries.doubles().between(0.05, 1);
    var shear = Arbitraries.doubles().between(1e9, 1e10);
    var nu = Arbitraries.doubles().between(0.05, 0.4);
    var thickness = Arbitraries.doubles().between(1e-4, 2e-3).ofScale(6);
    var angle = Arbitraries.doubles().between(-90, 90);
    return Combinators.combine(e1, ratio, shear, nu, thickness, angle)
        .as(
            (e, r, g, n, t, a) ->
                new Ply(new Lamina("stuff", e, e * r, g, n, 1500, Optional.empty()), t, a));
  }

  @Property(tries = 300)
  void inverseAgreesWithAnotherLibrary(
      @ForAll @Size(min = 1, max = 12) List<@From("plies") Ply> plies) {
    var stiffness = new Laminate(plies).stiffness();
    var oracle = new SimpleMatrix(Plies.rows(stiffness)).invert();
    double[][] have = Plies.rows(stiffness.inverse());
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double size = Math.sqrt(oracle.get(i, i) * oracle.get(j, j));
        assertThat(have[i][j]).isCloseTo(oracle.get(i, j), within(1e-7 * size));
      }
    }
  }

  @Property(tries = 100)
  void theInverseUndoesTheMatrix(@ForAll @Size(min = 1, max = 12) List<@From("plies") Ply> plies) {
    var stiffness = new Laminate(plies).stiffness();
    double[] load = {1000, -300, 200, 1, 2, -0.5};
    double[] back = stiffness.times(stiffness.inverse().times(load));
    for (int i = 0; i < 6; i++) {
      assertThat(back[i]).isCloseTo(load[i], within(1e-6 * (i < 3 ? 1000 : 2)));
    }
  }

  @Property(tries = 100)
  void matricesAreTheSumsOfThinSlices(
      @ForAll @Size(min = 1, max = 6) List<@From("plies") Ply> plies) {
    int slices = 200;
    double[][] sum = new double[6][6];
    double low = -plies.stream().mapToDouble(Ply::thickness).sum() / 2;
    for (var ply : plies) {
      double dz = ply.thickness() / slices;
      double[][] q = ply.stuff().turned(ply.angle());
      for (int s = 0; s < slices; s++) {
        double z = low + (s + 0.5) * dz;
        for (int i = 0; i < 3; i++) {
          for (int j = 0; j < 3; j++) {
            sum[i][j] += q[i][j] * dz;
            sum[i][j + 3] += q[i][j] * z * dz;
            sum[i + 3][j] += q[i][j] * z * dz;
            sum[i + 3][j + 3] += q[i][j] * z * z * dz;
          }
        }
      }
      low += ply.thickness();
    }
    double[][] have = Plies.rows(new Laminate(plies).stiffness());
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double size = Math.sqrt(have[i][i] * have[j][j]);
        assertThat(have[i][j]).isCloseTo(sum[i][j], within(2e-4 * size));
      }
    }
  }

  @Property(tries = 100)
  void turningOverFlipsTheSignOfTheCoupling(
      @ForAll @Size(min = 1, max = 8) List<@From("plies") Ply> plies) {
    var turned = new ArrayList<>(plies);
    Collections.reverse(turned);
    var one = new Laminate(plies).stiffness();
    var other = new Laminate(turned).stiffness();
    for (int i = 1; i <= 3; i++) {
      for (int j = 1; j <= 3; j++) {
        assertThat(other.a(i, j)).isCloseTo(one.a(i, j), within(1e-9 * one.a(1, 1)));
        assertThat(other.b(i, j)).isCloseTo(-one.b(i, j), within(1e-9 * one.a(1, 1)));
        assertThat(other.d(i, j)).isCloseTo(one.d(i, j), within(1e-9 * one.d(1, 1)));
      }
    }
  }

  @Property(tries = 100)
  void anotherPlyAddsToTheStretch(
      @ForAll @Size(min = 1, max = 8) List<@From("plies") Ply> plies, @ForAll("plies") Ply more) {
    var thicker = new ArrayList<>(plies);
    thicker.add(more);
    var before = new Laminate(plies).stiffness();
    var after = new Laminate(thicker).stiffness();
    for (int i = 1; i <= 3; i++) {
      assertThat(after.a(i, i)).isGreaterThan(before.a(i, i));
    }
  }

  @Property(tries = 100)
  void isotropicPliesMakeAPlainPlate(@ForAll @IntRange(min = 1, max = 9) int count) {
    double e = 7e10;
    double nu = 0.3;
    var sheet = new Lamina("sheet", e, e, e / 2 / (1 + nu), nu, 2700, Optional.empty());
    var laminate = Plies.times(new Laminate(List.of(new Ply(sheet, 1e-3, 37))), count);
    double t = count * 1e-3;
    var s = laminate.stiffness();
    double q = e / (1 - nu * nu);
    assertThat(s.a(1, 1)).isCloseTo(q * t, within(1e-6 * q * t));
    assertThat(s.b(1, 1)).isCloseTo(0, within(1e-9 * q * t * t));
    assertThat(s.d(1, 1)).isCloseTo(q * t * t * t / 12, within(1e-9 * q * t * t * t));
    assertThat(laminate.inPlane().ex()).isCloseTo(e, within(1e-6 * e));
    assertThat(laminate.inPlane().nuxy()).isCloseTo(nu, within(1e-9));
  }

  /** Double bias pulls far less than its fibre: laminate theory, not the fibre's modulus. */
  @Property(tries = 20)
  void doubleBiasIsSofterAlongTheBeam(@ForAll("plies") Ply ply) {
    var stuff = new Lamina("glass/epoxy", 39e9, 8.6e9, 3.254e9, 0.28, 1900, Optional.empty());
    var straight =
        new Laminate(
            List.of(new Ply(stuff, ply.thickness(), 0), new Ply(stuff, ply.thickness(), 90)));
    assertThat(straight.rotated(45).inPlane().ex()).isLessThan(0.6 * straight.inPlane().ex());
    assertThat(straight.rotated(45).inPlane().gxy()).isGreaterThan(2 * straight.inPlane().gxy());
  }
}
