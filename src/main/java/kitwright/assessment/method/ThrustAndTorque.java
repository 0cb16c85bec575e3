package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Load;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Region;
import kitwright.mechanics.beam.Skin;
import kitwright.mechanics.column.Column;
import kitwright.mechanics.column.Ends;
import kitwright.mechanics.column.Rule;
import kitwright.value.Quantity;
import kitwright.value.Word;

/**
 * A push along a part and a torque about it, beside what bends it: a column by Ylinen (wood) or by
 * a buckling curve (metal); bending grows with the push; stress of torsion is added to that of the
 * shear force, and both to bending as squares, which for a metal is von Mises' rule.
 *
 * @see "Wood Handbook FPL-GTR-282, chapter 9; S. Timoshenko, Strength of Materials, part 1, section
 *     66"
 */
public final class ThrustAndTorque {
  /** NDS-2018, 3.7.1.4: a wooden column is at most 50 times as long as deep; times √12 for l/r. */
  private static final double SLENDEREST = 50 * Math.sqrt(12);

  /** So near to crushing it is crushing that is told. */
  private static final double CRUSHED = 0.95;

  private static final int STEPS = 100;

  private final Part part;
  private final BeamLoad load;
  private final List<String> lacking = new ArrayList<>();
  private final Optional<Column> column;
  private final Capacity torque;

  private ThrustAndTorque(Part part, Bending bending, BeamLoad load) {
    this.part = part;
    this.load = load;
    torque = part.beam().torque();
    column = load.stated().thrust().isPresent() ? column(bending) : Optional.empty();
    if (load.stated().torque().isPresent()) {
      if (part.source().shape().filter(Section.Shape.I::equals).isPresent()) {
        lacking.add(
            part.id()
                + " is open: where its end is held a torque bends its flanges too, which is not"
                + " worked out here: take a tube or a box, or leave the torque out");
      }
      torque.missing().forEach(missing -> lacking.add(Figures.words(missing)));
      if (torque.limits().isEmpty()) {
        lacking.add(part.id() + " is of a kind whose stress in torsion is not known here");
      }
    }
  }

  /** Nothing where the load pushes and twists nothing. */
  public static Optional<ThrustAndTorque> of(Part part, Bending bending, BeamLoad load) {
    Load stated = load.stated();
    return stated.thrust().isPresent() || stated.torque().isPresent()
        ? Optional.of(new ThrustAndTorque(part, bending, load))
        : Optional.empty();
  }

  public List<String> lacking() {
    return List.copyOf(lacking);
  }

  private double push() {
    return load.stated().thrust().map(Quantity::base).orElse(0.0);
  }

  private double twist() {
    return load.stated().torque().map(Quantity::base).orElse(0.0);
  }

  private Optional<Column> column(Bending bending) {
    Optional<Double> crushing = crushing();
    if (crushing.isEmpty() || load.stated().ends().isEmpty()) {
      return Optional.empty();
    }
    Bending aside = Bending.of(part.beam().turned());
    Bending weak = bending.stiffness() <= aside.stiffness() ? bending : aside;
    double length = load.span() * Ends.valueOf(load.stated().ends().get().name()).factor();
    boolean metal = kinds(Kind.METAL);
    boolean wood = kinds(Kind.TIMBER);
    if (part.beam().parted()) {
      lacking.add(part.id() + " is of parts side by side, of which no column is worked out");
    }
    if (bending.isSkew()) {
      lacking.add(
          part.id()
              + " has no axis of its own along the load: how it buckles and twists under a thrust"
              + " is not worked out here");
    }
    if (part.beam().open() && (part.beam().lopsided() || part.beam().turned().lopsided())) {
      lacking.add(
          part.id()
              + " is open at a side: it may twist as it buckles under a thrust, sooner than it only"
              + " bends, which is not worked out here");
    }
    double slender = length / Math.sqrt(weak.stiffness() / bending.axialStiffness());
    if (wood && slender > SLENDEREST) {
      lacking.add(
          part.id()
              + " is more slender as a column than wood is worked out: l/r "
              + Print.number(slender)
              + ", at most "
              + Print.number(SLENDEREST));
    }
    return Optional.of(
        new Column(
            crushing.get(),
            weak.stiffness(),
            weak.shearStiffness(),
            length,
            metal ? Rule.METAL : Rule.WOOD));
  }

  private boolean kinds(Kind kind) {
    return part.beam().regions().stream().allMatch(region -> region.material().kind() == kind);
  }

  /** One strain for all: the piece that reaches its limit first, or the wall that buckles. */
  private Optional<Double> crushing() {
    double strain = Double.POSITIVE_INFINITY;
    double stretch = 0;
    boolean known = true;
    for (Region region : part.beam().regions()) {
      BeamMaterial material = region.material();
      stretch += material.axial() * region.moments().area();
      if (material.strength().compression().isEmpty()) {
        lacking.add(
            material.name() + " (" + region.where() + ") does not state its compressive-strength");
        known = false;
      } else {
        strain =
            Math.min(strain, material.strength().compression().getAsDouble() / material.axial());
      }
    }
    for (Skin skin : part.beam().skins()) {
      if (skin.axialBuckling().isEmpty()) {
        lacking.add(part.id() + " has a wall of which it is not known when it buckles");
        known = false;
      } else {
        strain = Math.min(strain, skin.axialBuckling().getAsDouble() / skin.modulus());
      }
    }
    return known ? Optional.of(strain * stretch) : Optional.empty();
  }

  /** How much of all loads it bears together; empty where a strength is not known. */
  public Optional<Figure> reserve(Figures figures, double factor) {
    Optional<Figure> moment =
        least(figures.of(Measure.MOMENT_SAGGING), figures.of(Measure.MOMENT_HOGGING));
    Optional<Figure> shear = figures.of(Measure.SHEAR);
    if (moment.isEmpty() || shear.isEmpty() || !lacking.isEmpty()) {
      return Optional.empty();
    }
    double bends = moment.get().value();
    double low = 0;
    double high = 1e9;
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (used(middle, bends, shear.get().value()) < 1) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low > 0
        ? Optional.of(
            new Figure(low / factor, Optional.of(governing(low, moment.get(), shear.get()))))
        : Optional.empty();
  }

  private static Optional<Figure> least(Optional<Figure> one, Optional<Figure> other) {
    return one.flatMap(a -> other.map(b -> a.value() <= b.value() ? a : b));
  }

  private double bent(double times, double strength) {
    if (column.isEmpty()) {
      return times * load.moment() / strength;
    }
    double alone = column.get().factor(push(), load.moment(), strength);
    return times / alone;
  }

  private double sheared(double times, double strength) {
    double twisted =
        torque.value().isPresent() ? times * twist() / torque.value().getAsDouble() : 0;
    return times * load.shear() / strength + twisted;
  }

  private double used(double times, double moment, double shear) {
    double bent = bent(times, moment);
    double sheared = sheared(times, shear);
    return twist() > 0 ? Math.hypot(bent, sheared) : Math.max(bent, sheared);
  }

  private String governing(double times, Figure moment, Figure shear) {
    boolean bends = bent(times, moment.value()) >= sheared(times, shear.value());
    if (!bends) {
      return twist() > 0 ? "torsion with shear" : shear.governing().orElse("shear");
    }
    String how = push() > 0 ? "thrust with bending" : moment.governing().orElse("bending");
    return twist() > 0 ? how + ", with torsion" : how;
  }

  /** What bending grows by under the push, no safety factor; without bound where it buckles. */
  double grows() {
    return column
        .map(
            one ->
                push() < one.buckling()
                    ? 1 / (1 - push() / one.buckling())
                    : Double.POSITIVE_INFINITY)
        .orElse(1.0);
  }

  /** Puts the capacities beside the others. */
  public void put(Figures figures) {
    column.ifPresent(
        one ->
            figures.put(
                Measure.THRUST,
                Figure.of(
                    one.capacity(),
                    one.capacity() < CRUSHED * one.crushing()
                        ? "buckling as a column"
                        : "crushing")));
    if (load.stated().torque().isPresent()) {
      figures.put(Measure.TORQUE, torque);
    }
    lacking.forEach(what -> figures.lacks(Measure.RESERVE, what).lacks(Measure.THRUST, what));
  }

  /** As lines of a sheet. */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    column.ifPresent(
        one -> {
          steps.add(
              new Step(
                  "push at which it buckles, the weak way",
                  "P_E = π²·EI/l², P_b = P_E/(1 + P_E/GA)",
                  "EI "
                      + Print.with(one.bending(), "N·m²")
                      + ", l "
                      + Print.with(one.length(), "m")
                      + " (ends "
                      + Word.key(load.stated().ends().orElseThrow())
                      + ")",
                  Print.with(one.buckling(), "N")));
          steps.add(
              new Step(
                  "push at which it fails",
                  one.rule() == Rule.WOOD
                      ? "Ylinen: (P_c + P_b)/2c − √(((P_c + P_b)/2c)² − P_c·P_b/c), c = 0.8"
                      : "EN 1993-1-1, 6.3.1.2, curve c: P_c/(Φ + √(Φ² − λ²)), Φ = (1 + 0.49·(λ −"
                          + " 0.2) + λ²)/2, λ² = P_c/P_b",
                  "crushing " + Print.with(one.crushing(), "N"),
                  Print.with(one.capacity(), "N")));
          steps.add(
              new Step(
                  "bending grows under the push, no safety factor",
                  "1/(1 − P/P_b)",
                  "P " + Print.with(push(), "N"),
                  Double.isInfinite(grows()) ? "without bound" : Print.number(grows())));
        });
    if (load.stated().torque().isPresent()) {
      torque
          .governing()
          .ifPresent(
              first ->
                  steps.add(
                      new Step(
                          "torque at first failure: " + Figures.words(first),
                          "T = τ / (stress for one N·m)",
                          Print.number(first.allowable() / 1e6)
                              + " MPa / "
                              + Print.number(first.perUnit() / 1e6)
                              + " MPa per N·m",
                          Print.with(first.capacity(), "N·m"))));
    }
    return steps;
  }
}
