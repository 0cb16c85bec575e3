package kitwright.mechanics.laminate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;

/**
 * A stack of plies from bottom to top, by classical laminate theory; z is counted from the middle,
 * the first ply at the most negative.
 *
 * @see "A. K. Kaw, Mechanics of Composite Materials, 2nd ed., 2006, chapter 4"
 */
public record Laminate(List<Ply> plies) {
  public Laminate {
    plies = List.copyOf(plies);
    Refuse.unless(!plies.isEmpty(), "a laminate has a ply");
  }

  /** m. */
  public double thickness() {
    return plies.stream().mapToDouble(Ply::thickness).sum();
  }

  /** kg/m². */
  public double arealMass() {
    return plies.stream().mapToDouble(p -> p.thickness() * p.stuff().density()).sum();
  }

  /** The same laminate turned by an angle in degrees. */
  public Laminate rotated(double angle) {
    return new Laminate(
        plies.stream().map(p -> new Ply(p.stuff(), p.thickness(), p.angle() + angle)).toList());
  }

  /** A, B and D. */
  public Stiffness stiffness() {
    double[][] abd = new double[6][6];
    double low = -thickness() / 2;
    for (var ply : plies) {
      double high = low + ply.thickness();
      double[][] q = ply.stuff().turned(ply.angle());
      double second = (high * high - low * low) / 2;
      double third = (high * high * high - low * low * low) / 3;
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          abd[i][j] += q[i][j] * ply.thickness();
          abd[i][j + 3] += q[i][j] * second;
          abd[i + 3][j] += q[i][j] * second;
          abd[i + 3][j + 3] += q[i][j] * third;
        }
      }
      low = high;
    }
    return new Stiffness(abd);
  }

  /** Constants in its plane, curvature held off, as of a face on a core. */
  public Moduli inPlane() {
    return Moduli.of(stiffness().inverseA(), 1 / thickness());
  }

  /** Strain and stress at both faces of every ply, free to bend and stretch. */
  public List<PlyState> states(Resultants load) {
    return states(stiffness().inverse().times(load.vector()));
  }

  private List<PlyState> states(double[] strain) {
    var states = new ArrayList<PlyState>(2 * plies.size());
    double low = -thickness() / 2;
    for (int i = 0; i < plies.size(); i++) {
      double high = low + plies.get(i).thickness();
      for (double z : new double[] {low, high}) {
        double[] at = new double[3];
        for (int k = 0; k < 3; k++) {
          at[k] = strain[k] + z * strain[k + 3];
        }
        states.add(PlyState.of(i + 1, plies.get(i), z, at));
      }
      low = high;
    }
    return List.copyOf(states);
  }

  /** What fails first under a load; empty where a strength is unknown or nothing is strained. */
  public Optional<FirstPly> firstPly(Resultants load, Criterion criterion) {
    return first(states(load), criterion);
  }

  /**
   * The stress, as a mean over the thickness, at which the first ply fails when the laminate is a
   * face on a core (curvature held off), Pa.
   *
   * @param nx the sense of the pull in x: 1, −1 or 0
   * @param nxy the sense of the shear: 1, −1 or 0
   */
  OptionalDouble faceStrength(double nx, double nxy, Criterion criterion) {
    double[][] a = stiffness().inverseA();
    double[] strain = new double[6];
    for (int k = 0; k < 3; k++) {
      strain[k] = a[k][0] * nx + a[k][2] * nxy;
    }
    return first(states(strain), criterion).stream()
        .mapToDouble(f -> f.factor() / thickness())
        .findFirst();
  }

  /** Tensile strength in x as a face, Pa. */
  public OptionalDouble tension(Criterion criterion) {
    return faceStrength(1, 0, criterion);
  }

  /** Compressive strength in x as a face, Pa, buckling not looked at. */
  public OptionalDouble compression(Criterion criterion) {
    return faceStrength(-1, 0, criterion);
  }

  /** Strength in shear in its plane as a face, Pa: the less of both senses. */
  public OptionalDouble shear(Criterion criterion) {
    var one = faceStrength(0, 1, criterion);
    var other = faceStrength(0, -1, criterion);
    return one.isPresent() && other.isPresent()
        ? OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()))
        : OptionalDouble.empty();
  }

  private Optional<FirstPly> first(List<PlyState> states, Criterion criterion) {
    Optional<FirstPly> first = Optional.empty();
    for (var state : states) {
      var ply = plies.get(state.ply() - 1);
      if (ply.stuff().strength().isEmpty()) {
        return Optional.empty();
      }
      double factor = criterion.factor(state, ply.stuff(), ply.stuff().strength().orElseThrow());
      if (Double.isFinite(factor) && (first.isEmpty() || factor < first.get().factor())) {
        first = Optional.of(new FirstPly(state.ply(), ply.angle(), criterion, factor));
      }
    }
    return first;
  }

  /** The laminate as a material of a beam along its x axis, limits at first-ply failure. */
  public BeamMaterial asBeamMaterial(String name, Criterion criterion) {
    var moduli = inPlane();
    var strength =
        new Strength(
            tension(criterion), compression(criterion), OptionalDouble.empty(), shear(criterion));
    double density = arealMass() / thickness();
    return BeamMaterial.of(name, Kind.LAMINATE, density, moduli.ex(), moduli.gxy(), strength);
  }
}
