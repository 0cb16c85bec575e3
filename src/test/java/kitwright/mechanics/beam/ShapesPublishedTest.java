package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapesPublishedTest {
  private static final BeamMaterial UNIT =
      BeamMaterial.of("unit", Kind.METAL, 1, 1, 1, Strength.unknown());

  /** Reckoned by an independent script: tubes 60 x 3 and 50 x 4 mm. */
  @ParameterizedTest
  @CsvSource({"60, 3, 537.21, 218780, 7292.7", "50, 4, 578.05, 154051, 6162.0"})
  void tubes(double diameter, double wall, double area, double inertia, double modulus) {
    var bending = Bending.of(Shapes.tube(UNIT, diameter, wall));
    assertThat(bending.axialStiffness()).isCloseTo(area, within(0.005));
    assertThat(bending.stiffness()).isCloseTo(inertia, within(0.5));
    assertThat(bending.stiffness() / (diameter / 2)).isCloseTo(modulus, within(0.05));
    assertThat(1 / Stresses.of(bending.section(), -1).get(0).atUpper())
        .isCloseTo(modulus, within(0.05));
  }

  /**
   * Greatest shear 3V/2A in a rectangle, 4V/3A in a bar; GA 5/6 in a rectangle, 9/10 in a bar
   * (energy, Poisson's ratio nought): Timoshenko, Strength of Materials, Part I, 3rd ed., 1955,
   * sections 26 and 39.
   */
  @Test
  void shearInRectangleAndBar() {
    var rectangle = Bending.of(Shapes.rectangle(UNIT, 2, 3));
    assertThat(peak(rectangle)).isCloseTo(1.5 / 6, within(1e-6));
    assertThat(rectangle.shearStiffness()).isCloseTo(6 * 5 / 6.0, within(1e-9));
    var bar = Bending.of(Shapes.round(UNIT, 2));
    assertThat(peak(bar)).isCloseTo(4 / (3 * Math.PI), within(1e-6));
    assertThat(bar.shearStiffness()).isCloseTo(0.9 * Math.PI, within(1e-3));
  }

  private static double peak(Bending bending) {
    return Stresses.shear(bending.section(), 1);
  }

  /**
   * Torsion constants β of rectangles: Timoshenko and Goodier, Theory of Elasticity, 3rd ed., 1970,
   * section 109, table; from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.1406",
    "1.2, 0.166",
    "1.5, 0.196",
    "2, 0.229",
    "2.5, 0.249",
    "3, 0.263",
    "4, 0.281",
    "5, 0.291",
    "10, 0.312"
  })
  void torsionOfRectangles(double ratio, double beta) {
    assertThat(Torsion.rectangle(ratio, 1) / ratio).isCloseTo(beta, within(0.0005));
  }

  /**
   * Ordinates of NACA 0012 in per cent of the chord: Abbott and von Doenhoff, Theory of Wing
   * Sections, 1959, appendix I; from memory. Theirs at 20 is 5.737, cut: the polynomial has 5.7375.
   */
  @ParameterizedTest
  @CsvSource({
    "1.25, 1.894", "2.5, 2.615", "5, 3.555", "7.5, 4.200", "10, 4.683", "15, 5.345", "20, 5.7375",
    "25, 5.941", "30, 6.002", "40, 5.803", "50, 5.294", "60, 4.563", "70, 3.664", "80, 2.623",
    "90, 1.448", "95, 0.807", "100, 0.126"
  })
  void ordinatesOfASymmetricalFoil(double station, double half) {
    var foil = new FoilShape(100, 0.12);
    assertThat(foil.halfThickness(station)).isCloseTo(half, within(0.0005));
  }

  /** The exact integral of the thickness polynomial. */
  @Test
  void foilOutlineEnclosesTheIntegralOfItsThickness() {
    double t = 0.12;
    double integral =
        2 * 5 * t * (0.2969 * 2 / 3 - 0.1260 / 2 - 0.3516 / 3 + 0.2843 / 4 - 0.1015 / 5);
    assertThat(new FoilShape(1, t).outline().area()).isCloseTo(integral, within(5e-4 * integral));
  }
}
