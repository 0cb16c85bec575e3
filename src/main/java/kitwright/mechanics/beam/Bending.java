package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Lay;
import kitwright.mechanics.beam.Missing.Property;

/**
 * A section bent by a load along z: the transformed-section method, exact for layers of any
 * thickness and stiffness. Plane sections stay plane; a section whose axes are not its own, such as
 * an angle, is free to bend sideways too, as nothing holds it.
 *
 * @see "B. J. Goodno, J. M. Gere, Mechanics of Materials, 9th ed., 2018, sections 6.2 and 6.3; W.
 *     D. Pilkey, Analysis and Design of Elastic Beams, 2002, section 1.6"
 */
public final class Bending {
  /** A skew below this is rounding of the outline. */
  private static final double STRAIGHT = 1e-6;

  private final Section section;
  private final Moments weighted;
  private final double neutralAxis;
  private final double stiffness;
  private final double middle;

  /** How far it bends sideways for each bend along z: κy/κz under a moment about y alone. */
  private final double aside;

  private final List<Bounds> boxes;
  private final boolean solid;
  private final ShearFlow flow;

  private Bending(Section section) {
    this.section = section;
    boxes = section.regions().stream().map(Region::bounds).toList();
    solid = section.solidTimber();
    weighted = section.weighted();
    neutralAxis = weighted.z() / weighted.area();
    middle = weighted.y() / weighted.area();
    double held = weighted.zz() - weighted.area() * neutralAxis * neutralAxis;
    double across = weighted.yy() - weighted.area() * middle * middle;
    double product = weighted.yz() - weighted.area() * middle * neutralAxis;
    double skewed = product * product / (across * held);
    aside = skewed > STRAIGHT ? -product / across : 0;
    stiffness = aside == 0 ? held : held * (1 - skewed);
    flow = ShearFlow.of(section, boxes, neutralAxis, stiffness);
  }

  /** For loads along z; give {@link Section#turned()} for loads along y. */
  public static Bending of(Section section) {
    return new Bending(section);
  }

  public Section section() {
    return section;
  }

  /** EA, N. */
  public double axialStiffness() {
    return weighted.area();
  }

  /** EI about the neutral axis, N·m²; of a skew section free to bend sideways. */
  public double stiffness() {
    return stiffness;
  }

  /** Height of the neutral axis above the origin, m. */
  public double neutralAxis() {
    return neutralAxis;
  }

  /**
   * Shear stiffness GA, N: the one that stores the same energy as the shear stresses do. For a
   * sandwich with thin faces it is Gc·b·d²/tc, for a rectangle of one material 5/6·G·A.
   */
  public double shearStiffness() {
    return flow.stiffness();
  }

  /** Stress per height per moment: a sagging moment pulls what lies below the neutral axis. */
  private double stressSlope(Region region) {
    return -region.material().axial() / stiffness;
  }

  /** Where a region is sheared most, if there is one of that name. */
  public java.util.Optional<ShearPeak> shearPeak(String where) {
    for (int i = 0; i < section.regions().size(); i++) {
      if (section.regions().get(i).where().equals(where)) {
        return java.util.Optional.of(flow.peakOf(i));
      }
    }
    return java.util.Optional.empty();
  }

  /** Whether it bends sideways under a load along z. */
  public boolean isSkew() {
    return aside != 0;
  }

  /** Strain per curvature at a point, tension below for a sagging moment. */
  private double reach(Point at) {
    return at.z() - neutralAxis + aside * (at.y() - middle);
  }

  /** The least and the greatest reach of a region. */
  private double[] reaches(int region) {
    if (aside == 0) {
      return new double[] {
        boxes.get(region).minZ() - neutralAxis, boxes.get(region).maxZ() - neutralAxis
      };
    }
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Point corner : section.regions().get(region).corners()) {
      least = Math.min(least, reach(corner));
      most = Math.max(most, reach(corner));
    }
    return new double[] {least, most};
  }

  /** The moment at first failure, N·m. */
  public Capacity moment(Sense sense) {
    var limits = new ArrayList<Limit>();
    var missing = new ArrayList<Missing>();
    for (int i = 0; i < boxes.size(); i++) {
      var region = section.regions().get(i);
      double slope = stressSlope(region) * sense.sign();
      double[] reach = reaches(i);
      double one = slope * reach[0];
      double other = slope * reach[1];
      var strength = region.material().strength();
      if (region.material().lay() == Lay.CROSS_VENEER) {
        continue;
      }
      if (solid) {
        double worst = Math.max(Math.abs(one), Math.abs(other));
        var tell = missing(region, Property.BENDING_STRENGTH);
        add(limits, missing, FailureMode.BENDING, strength.bending(), worst, tell);
      } else {
        var tension = region.material().tensionLimit();
        var pull = missing(region, Property.TENSILE_STRENGTH);
        add(limits, missing, FailureMode.TENSION, tension, Math.max(one, other), pull);
        var push = missing(region, Property.COMPRESSIVE_STRENGTH);
        double squeeze = -Math.min(one, other);
        add(limits, missing, FailureMode.COMPRESSION, strength.compression(), squeeze, push);
      }
    }
    for (var skin : section.skins()) {
      skin(skin, sense, limits, missing);
    }
    return new Capacity(limits, missing);
  }

  private void skin(Skin skin, Sense sense, List<Limit> limits, List<Missing> missing) {
    double strain = 0;
    for (int ply : skin.plies()) {
      double[] reach = reaches(ply);
      double bottom = sense.sign() * reach[0] / stiffness;
      double top = sense.sign() * reach[1] / stiffness;
      strain = Math.max(strain, Math.max(bottom, top));
    }
    var first = section.regions().get(skin.plies().get(0));
    var stuff = skin.support() instanceof Support.OnCore on ? on.core().name() : name(first);
    var tell = new Missing(first.where(), stuff, Lay.ALONG, skin.support().needs());
    add(limits, missing, skin.mode(), skin.buckling(), strain * skin.modulus(), tell);
  }

  /** The shear force at first failure, N. */
  public Capacity shear() {
    var limits = new ArrayList<Limit>();
    var missing = new ArrayList<Missing>();
    for (int i = 0; i < section.regions().size(); i++) {
      var region = section.regions().get(i);
      var tell = missing(region, Property.SHEAR_STRENGTH);
      var strength = region.material().strength().shear();
      add(limits, missing, shearMode(region.material()), strength, flow.peak(i), tell);
    }
    for (var bond : section.bonds()) {
      if (bond.level()) {
        var one = bond.one();
        var tell = new Missing(bond.where(), one.name(), one.lay(), Property.SHEAR_STRENGTH);
        double perUnit = Math.abs(flow.bond(bond));
        add(limits, missing, FailureMode.BOND_SHEAR, bond.strength(), perUnit, tell);
      }
    }
    for (var skin : section.skins()) {
      // Of layers the upright walls are webs, which are looked at by themselves.
      if (!(section.regions().get(skin.plies().get(0)) instanceof Rectangle)) {
        section.sheared(skin, flow::peak, limits, missing);
      }
    }
    return new Capacity(limits, missing);
  }

  private static Missing missing(Region region, Property property) {
    return new Missing(region.where(), name(region), region.material().lay(), property);
  }

  private static FailureMode shearMode(BeamMaterial material) {
    return switch (material.kind()) {
      case CORE -> FailureMode.CORE_SHEAR;
      case TIMBER ->
          material.lay() == Lay.ALONG ? FailureMode.TIMBER_SHEAR : FailureMode.ROLLING_SHEAR;
      case LAMINATE, METAL -> FailureMode.SHEAR;
    };
  }

  private static String name(Region region) {
    return region.material().name();
  }

  private static void add(
      List<Limit> limits,
      List<Missing> missing,
      FailureMode mode,
      OptionalDouble allowable,
      double perUnit,
      Missing tell) {
    if (!(perUnit > 0) || Double.isInfinite(allowable.orElse(1) / perUnit)) {
      return;
    }
    if (allowable.isEmpty()) {
      missing.add(tell);
    } else {
      limits.add(new Limit(mode, tell.where(), allowable.getAsDouble(), perUnit));
    }
  }
}
