package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import kitwright.mechanics.Refuse;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Lay;

/**
 * A cross-section: regions of one material each, with its glue lines and thin faces. Regions do not
 * overlap. Metres; y across, z up.
 *
 * @param regions the parts, at least one
 * @param bonds glue lines that are checked
 * @param skins thin faces that are checked against buckling
 * @param torsion GJ in N·m², where the section is of a kind for which it is known
 * @param twisted the greatest shear stress that a torque makes in its pieces, where that is known
 * @param thinFaces thin-face sandwich values to show beside the exact ones, where it is a sandwich
 */
public record Section(
    List<Region> regions,
    List<Bond> bonds,
    List<Skin> skins,
    OptionalDouble torsion,
    List<Twisted> twisted,
    Optional<ThinFaces> thinFaces) {
  /** Of the width: less is how exactly it was measured. */
  private static final double ASIDE = 0.005;

  public Section {
    twisted = List.copyOf(twisted);
    regions = List.copyOf(regions);
    bonds = List.copyOf(bonds);
    skins = List.copyOf(skins);
    Refuse.unless(!regions.isEmpty(), "a section has a part");
  }

  /** One of which nothing is known of the stress in torsion. */
  public Section(
      List<Region> regions,
      List<Bond> bonds,
      List<Skin> skins,
      OptionalDouble torsion,
      Optional<ThinFaces> thinFaces) {
    this(regions, bonds, skins, torsion, List.of(), thinFaces);
  }

  /** Regions alone. */
  public static Section of(List<Region> regions) {
    return new Section(regions, List.of(), List.of(), OptionalDouble.empty(), Optional.empty());
  }

  /** The same section with y and z exchanged: bend this one for loads across. */
  public Section turned() {
    return new Section(
        regions.stream().map(Region::turned).toList(),
        bonds.stream().map(Bond::turned).toList(),
        skins,
        torsion,
        twisted,
        Optional.empty());
  }

  /** The area that its walls close round, m²; empty where they close round none. */
  public OptionalDouble cell() {
    return twisted.stream().mapToDouble(Twisted::cell).filter(area -> area > 0).findFirst();
  }

  /** The torque at which it first fails, N·m; empty limits where its torsion is not known. */
  public Capacity torque() {
    var limits = new ArrayList<Limit>();
    var missing = new ArrayList<Missing>();
    for (Twisted one : twisted) {
      var strength = one.material().strength().shear();
      if (strength.isPresent()) {
        limits.add(
            new Limit(FailureMode.TORSION, one.where(), strength.getAsDouble(), one.perUnit()));
      } else {
        missing.add(
            new Missing(
                one.where(),
                one.material().name(),
                one.material().lay(),
                Missing.Property.SHEAR_STRENGTH));
      }
    }
    if (!limits.isEmpty()) {
      skins.forEach(skin -> sheared(skin, this::twist, limits, missing));
    }
    return new Capacity(limits, missing);
  }

  private double twist(int region) {
    var where = regions.get(region).where();
    return twisted.stream()
        .filter(one -> one.where().equals(where))
        .mapToDouble(Twisted::perUnit)
        .max()
        .orElse(0);
  }

  /**
   * That a wall may buckle in shear before what it is of fails.
   *
   * @param perUnit shear stress in a region for one N or N·m
   */
  void sheared(Skin skin, IntToDoubleFunction perUnit, List<Limit> limits, List<Missing> missing) {
    var first = regions.get(skin.plies().get(0));
    double worst = skin.plies().stream().mapToDouble(perUnit::applyAsDouble).max().orElse(0);
    double bears =
        skin.plies().stream()
            .mapToDouble(i -> regions.get(i).material().strength().shear().orElse(0))
            .max()
            .orElse(0);
    var buckles = skin.sheared();
    if (buckles.isEmpty()) {
      missing.add(
          new Missing(
              first.where(),
              first.material().name(),
              first.material().lay(),
              Missing.Property.SHEARED_WALL));
    } else if (buckles.getAsDouble() < bears && worst > 0) {
      limits.add(new Limit(FailureMode.SHEARED_WALL, first.where(), buckles.getAsDouble(), worst));
    }
  }

  /**
   * GJ, N·m², or what it is at least where it is not known: a solid stack is no softer than one of
   * its softest layer, and pieces cut apart twist more easily than together. Empty where it is of
   * other than rectangles.
   */
  public OptionalDouble torsionAtLeast() {
    if (torsion.isPresent() || !regions.stream().allMatch(Rectangle.class::isInstance)) {
      return torsion;
    }
    double apart = 0;
    double softest = Double.POSITIVE_INFINITY;
    for (var region : regions) {
      var box = region.bounds();
      double shear = region.material().shearModulus();
      apart += shear * Torsion.rectangle(box.width(), box.height());
      softest = Math.min(softest, shear);
    }
    var box = bounds();
    double whole = full() ? softest * Torsion.rectangle(box.width(), box.height()) : 0;
    return OptionalDouble.of(Math.max(apart, whole));
  }

  /** Whether its pieces fill the box round them. */
  private boolean full() {
    var box = bounds();
    double area = regions.stream().mapToDouble(r -> r.moments().area()).sum();
    return area > (1 - 1e-9) * box.width() * box.height();
  }

  /** Whether it is of parts side by side that do not touch: across they do not bend as one. */
  public boolean parted() {
    return Grid.parted(regions);
  }

  /**
   * Whether it is open, such as an angle, a channel or a T: of pieces that leave part of the box
   * round them free and close round nothing whose torsion is known, or a polygon with legs.
   */
  public boolean open() {
    if (torsion.isPresent() || parted()) {
      return false;
    }
    return regions.stream().allMatch(Rectangle.class::isInstance)
        ? !full()
        : Leg.slimmest(this).filter(leg -> !leg.closed()).isPresent();
  }

  /** Whether its middle, by EA, lies beside the middle of the box round it, to left or right. */
  public boolean lopsided() {
    var box = bounds();
    var sum = weighted();
    return Math.abs(sum.y() / sum.area() - (box.minY() + box.maxY()) / 2) > ASIDE * box.width();
  }

  /** The box round it. */
  public Bounds bounds() {
    var box = regions.get(0).bounds();
    for (var region : regions) {
      box = box.with(region.bounds());
    }
    return box;
  }

  /** kg/m. */
  public double massPerLength() {
    double sum = 0;
    for (var region : regions) {
      sum += region.material().density() * region.moments().area();
    }
    return sum;
  }

  /** Area and its moments, each region weighted with Young's modulus: EA in N, and so on. */
  Moments weighted() {
    var sum = Moments.NONE;
    for (var region : regions) {
      sum = sum.plus(region.moments(), region.material().axial());
    }
    return sum;
  }

  /**
   * Whether it is one piece of timber, or glued from one timber without a hollow; veneers of that
   * timber that lie square to it may be between.
   */
  public boolean solidTimber() {
    var timber = wood();
    return timber.isPresent()
        && regions.stream().allMatch(r -> !r.hollow() && isOf(timber.get(), r.material()))
        && filled();
  }

  /** The timber of the first region that is no veneer square to the beam. */
  public Optional<BeamMaterial> wood() {
    return regions.stream()
        .map(Region::material)
        .filter(m -> m.kind() == Kind.TIMBER && m.lay() != Lay.CROSS_VENEER)
        .findFirst();
  }

  private static boolean isOf(BeamMaterial timber, BeamMaterial other) {
    return other.equals(timber)
        || (other.lay() == Lay.CROSS_VENEER && other.name().equals(timber.name()));
  }

  private boolean filled() {
    if (!regions.stream().allMatch(Rectangle.class::isInstance)) {
      return true;
    }
    var box = bounds();
    if (regions.stream().allMatch(r -> r.bounds().height() >= (1 - 1e-9) * box.height())) {
      return true; // side by side, each as deep as all
    }
    return full();
  }
}
