package kitwright.mechanics.laminate;

import java.util.Arrays;
import kitwright.mechanics.Refuse;

/**
 * A dry cloth.
 *
 * @param weave how its fibre lies
 * @param arealMass kg/m², dry
 * @param fibre what it is made of
 * @param crimp share of the fibre's modulus that is left by its waviness: 1 for stitched cloth,
 *     0.90 to 0.95 for woven (common practice, no source)
 */
public record Cloth(Weave weave, double arealMass, Fibre fibre, double crimp) {
  /** How the fibre lies in a cloth; the angles of its layers in degrees. */
  public enum Weave {
    UNIDIRECTIONAL(0),
    BIAXIAL(0, 90),
    DOUBLE_BIAS(45, -45),
    /** Threads over and under: half-layers either side of the middle, so that it does not warp. */
    WOVEN(0, 90, 90, 0),
    TRIAXIAL(0, 45, -45),
    QUADRIAXIAL(0, 45, 90, -45);

    private final double[] angles;

    Weave(double... angles) {
      this.angles = angles;
    }
  }

  public Cloth {
    Refuse.unlessPositive("areal mass", arealMass);
    Refuse.unless(crimp > 0 && crimp <= 1, () -> "crimp leaves between nothing and all: " + crimp);
  }

  /** A cloth whose fibre lies straight. */
  public static Cloth straight(Weave weave, double arealMass, Fibre fibre) {
    return new Cloth(weave, arealMass, fibre, 1);
  }

  /** Its fibre content in a resin, by mass. */
  public FibreContent content(Matrix resin, double byMass) {
    return new FibreContent(byMass, fibre.density(), resin.density());
  }

  /** The straight-fibre stuff of its layers, strengths unknown; crimp takes from E1. */
  public Lamina stuff(Matrix resin, double byMass) {
    double volume = content(resin, byMass).byVolume();
    var name = fibre.name() + "/" + resin.name();
    var straight = HalpinTsai.lamina(name, fibre, resin, volume);
    return new Lamina(
        name,
        straight.e1() * crimp,
        straight.e2(),
        straight.g12(),
        straight.nu12(),
        straight.density(),
        straight.strength());
  }

  /**
   * The cured cloth as plies.
   *
   * @param stuff of its layers, with strengths where known
   * @param resin what it is wetted with
   * @param byMass fibre over laminate mass
   * @param angle of the roll from the x axis, degrees
   */
  public Laminate cured(Lamina stuff, Matrix resin, double byMass, double angle) {
    double thickness = content(resin, byMass).thickness(arealMass) / weave.angles.length;
    return new Laminate(
        Arrays.stream(weave.angles).mapToObj(a -> new Ply(stuff, thickness, a + angle)).toList());
  }
}
