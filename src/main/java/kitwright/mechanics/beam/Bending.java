package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Missing.Property;

/**
 * A section bent by a load along z: the transformed-section method, exact for layers of any
 * thickness and stiffness. Plane sections stay plane; the section is taken to bend in the plane of
 * the load, which is true where {@link #skew()} is nought or the beam is held.
 *
 * @see "B. J. Goodno, J. M. Gere, Mechanics of Materials, 9th ed., 2018, sections 6.2 and 6.3"
 */
public final class Bending {
  private final Section section;
  private final Moments weighted;
  private final double neutralAxis;
  private final double stiffness;
  private final List<Bounds> boxes;
  private final boolean solid;
  private final ShearFlow flow;

  private Bending(Section section) {
    this.section = section;
    boxes = section.regions().stream().map(Region::bounds).toList();
    solid = section.solidTimber();
    weighted = section.weighted();
    neutralAxis = weighted.z() / weighted.area();
    stiffness = weighted.zz() - weighted.area() * neutralAxis * neutralAxis;
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

  /** EI about the neutral axis, N·m². */
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

  /**
   * EIyz²/(EIyy·EIzz), between 0 and 1: how far the section would bend out of the plane of the
   * load; nought for a section with an axis of symmetry.
   */
  public double skew() {
    double y = weighted.y() / weighted.area();
    double product = weighted.yz() - weighted.area() * y * neutralAxis;
    double across = weighted.yy() - weighted.area() * y * y;
    return product * product / (across * stiffness);
  }

  /** Bending stress at the edges of every region under a moment in N·m (sagging positive). */
  public List<EdgeStress> stresses(double moment) {
    var list = new ArrayList<EdgeStress>(section.regions().size());
    for (int i = 0; i < boxes.size(); i++) {
      var region = section.regions().get(i);
      var box = boxes.get(i);
      double slope = stressSlope(region) * moment;
      list.add(
          new EdgeStress(
              region.where(),
              region.material().name(),
              box.minZ(),
              box.maxZ(),
              slope * (box.minZ() - neutralAxis),
              slope * (box.maxZ() - neutralAxis)));
    }
    return List.copyOf(list);
  }

  /** Stress per height per moment: a sagging moment pulls what lies below the neutral axis. */
  private double stressSlope(Region region) {
    return -region.material().axial() / stiffness;
  }

  /** Shear stress in every region at every level looked at, under a shear force in N. */
  public List<ShearStress> shearStresses(double force) {
    return flow.stresses(force);
  }

  /** Shear stress along a horizontal glue line, τ = V·ΣES/(EI·b), in Pa under a force in N. */
  public double bondShear(Bond bond, double force) {
    return flow.bond(bond) * force;
  }

  /** The moment at first failure, N·m. */
  public Capacity moment(Sense sense) {
    var limits = new ArrayList<Limit>();
    var missing = new ArrayList<Missing>();
    for (int i = 0; i < boxes.size(); i++) {
      var region = section.regions().get(i);
      double slope = stressSlope(region) * sense.sign();
      double one = slope * (boxes.get(i).minZ() - neutralAxis);
      double other = slope * (boxes.get(i).maxZ() - neutralAxis);
      var strength = region.material().strength();
      if (solid) {
        double worst = Math.max(Math.abs(one), Math.abs(other));
        var tell = new Missing(region.where(), name(region), Property.BENDING_STRENGTH);
        add(limits, missing, FailureMode.BENDING, strength.bending(), worst, tell);
      } else {
        var tension = region.material().tensionLimit();
        var pull = new Missing(region.where(), name(region), Property.TENSILE_STRENGTH);
        add(limits, missing, FailureMode.TENSION, tension, Math.max(one, other), pull);
        var push = new Missing(region.where(), name(region), Property.COMPRESSIVE_STRENGTH);
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
      var box = boxes.get(ply);
      double bottom = sense.sign() * (box.minZ() - neutralAxis) / stiffness;
      double top = sense.sign() * (box.maxZ() - neutralAxis) / stiffness;
      strain = Math.max(strain, Math.max(bottom, top));
    }
    var first = section.regions().get(skin.plies().get(0));
    var core = skin.support().match(BeamMaterial::name, gap -> name(first));
    var tell = new Missing(first.where(), core, Property.THROUGH_THICKNESS_MODULUS);
    add(limits, missing, skin.mode(), skin.buckling(), strain * skin.modulus(), tell);
  }

  /** The shear force at first failure, N. */
  public Capacity shear() {
    var limits = new ArrayList<Limit>();
    var missing = new ArrayList<Missing>();
    for (int i = 0; i < section.regions().size(); i++) {
      var region = section.regions().get(i);
      var tell = new Missing(region.where(), name(region), Property.SHEAR_STRENGTH);
      var strength = region.material().strength().shear();
      add(limits, missing, shearMode(region.material().kind()), strength, flow.peak(i), tell);
    }
    for (var bond : section.bonds()) {
      if (bond.level()) {
        var tell = new Missing(bond.where(), bond.one().name(), Property.SHEAR_STRENGTH);
        double perUnit = Math.abs(flow.bond(bond));
        add(limits, missing, FailureMode.BOND_SHEAR, bond.strength(), perUnit, tell);
      }
    }
    return new Capacity(limits, missing);
  }

  private static FailureMode shearMode(Kind kind) {
    return switch (kind) {
      case CORE -> FailureMode.CORE_SHEAR;
      case TIMBER -> FailureMode.TIMBER_SHEAR;
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
