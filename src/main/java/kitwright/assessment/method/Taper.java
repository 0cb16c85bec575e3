package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Bounds;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Deflection;
import kitwright.mechanics.load.Demand;
import kitwright.mechanics.load.Stretch;
import kitwright.mechanics.timber.TaperedEdge;

/**
 * A cantilever that tapers in a straight line: every section is set against what the load asks
 * there, and the worst counts. The sawn edge of wood bears less, as its grain runs out. Of such a
 * part only what a load does is told: its stiffness and strength are other at every place.
 *
 * @see "Wood Handbook FPL-GTR-282, equations 9-15 and 9-16"
 */
public final class Taper {
  /** Why nothing is told of one that tapers and may tip over sideways, by its thick end. */
  public static Optional<String> sideways(Part root, Bending bending, BeamLoad load) {
    Sideways aside = Sideways.of(root, bending, load);
    return aside.share() < 1
        ? Optional.of(root.id() + " tapers and may tip over sideways, which is not worked out")
        : aside.lacking();
  }

  /** How many sections are looked at, both ends among them. */
  public static final int PLACES = 41;

  private static final List<Measure> OF_ONE_PLACE =
      List.of(
          Measure.STIFFNESS,
          Measure.STIFFNESS_ACROSS,
          Measure.SHEAR_STIFFNESS,
          Measure.TORSION,
          Measure.MOMENT_SAGGING,
          Measure.MOMENT_HOGGING,
          Measure.MOMENT_ACROSS,
          Measure.SHEAR,
          Measure.SHEAR_ACROSS,
          Measure.THRUST,
          Measure.TORQUE);

  private final List<Part> parts;
  private final BeamLoad load;
  private final double factor;
  private final List<String> lacking = new ArrayList<>();

  private Taper(List<Part> parts, BeamLoad load, double factor) {
    this.parts = parts;
    this.load = load;
    this.factor = factor;
  }

  /** Nothing that is told of one place passes for the whole; without a load nothing else is. */
  public static Outcome without(Part root, Figures figures) {
    for (Measure measure : OF_ONE_PLACE) {
      figures.lacks(measure, root.id() + " tapers, and this is of its first section only");
    }
    for (Measure measure : List.of(Measure.RESERVE, Measure.FIRST_FAILURE, Measure.DEFLECTION)) {
      figures.lacks(
          measure, root.id() + " tapers, which is worked out under a load on a cantilever");
    }
    return new Outcome(figures, List::of);
  }

  /**
   * What a load does to it.
   *
   * @param parts at {@link #PLACES} places from the support to the tip, evenly apart
   * @param load on a cantilever, without its factor
   */
  public static Outcome of(List<Part> parts, BeamLoad load, double factor) {
    return new Taper(parts, load, factor).worked();
  }

  private Outcome worked() {
    Cantilever beam = load.cantilever().orElseThrow();
    Figures figures = new Figures();
    without(parts.get(0), figures);
    Figures told = new Figures();
    for (Measure measure : OF_ONE_PLACE) {
      figures.lacking(measure).forEach(what -> told.lacks(measure, what));
    }
    if (load.stated().thrust().isPresent() || load.stated().torque().isPresent()) {
      lacking.add("a thrust or torque on a part that tapers is not worked out");
    }
    Optional<Worst> worst = worst(beam);
    Deflection gives = gives(beam);
    told.put(Measure.DEFLECTION, 1000 * gives.total());
    told.put(Measure.MASS, mass());
    worst.ifPresent(
        one -> {
          Figure figure = Figure.of(one.times() / factor, one.words());
          told.put(Measure.RESERVE, figure);
          told.put(Measure.FIRST_FAILURE, figure);
        });
    lacking.forEach(what -> told.lacks(Measure.RESERVE, what).lacks(Measure.FIRST_FAILURE, what));
    return new Outcome(told, () -> List.of(working(worst, gives)));
  }

  /** Capacity over demand at the worst place. */
  private record Worst(double at, double times, String how) {
    String words() {
      return how + ", " + Print.mm(at) + " from the support";
    }
  }

  private Optional<Worst> worst(Cantilever beam) {
    Optional<Worst> worst = Optional.empty();
    for (int i = 0; i < PLACES; i++) {
      double x = beam.length() * i / (PLACES - 1);
      Demand asked = beam.at(Math.min(x, beam.length() * (1 - 1e-9)));
      Bending bending = Bending.of(parts.get(i).beam());
      double edge = edge(parts.get(i), beam.length());
      for (Sense sense : Sense.values()) {
        worst = lesser(worst, x, bending.moment(sense), edge, Math.abs(asked.moment()));
      }
      worst = lesser(worst, x, bending.shear(), 1, Math.abs(asked.shear()));
    }
    return worst;
  }

  private Optional<Worst> lesser(
      Optional<Worst> worst, double x, Capacity capacity, double share, double asked) {
    capacity.missing().forEach(missing -> lack(Figures.words(missing)));
    if (capacity.atLeast()) {
      lack("a wall of it may buckle in shear, which is not worked out of a part that tapers");
    }
    if (capacity.governing().isEmpty() || !(asked > 0)) {
      return worst;
    }
    double times = share * capacity.value().orElseThrow() / asked;
    return worst.isPresent() && worst.get().times() <= times
        ? worst
        : Optional.of(new Worst(x, times, Figures.words(capacity.governing().get())));
  }

  private void lack(String what) {
    if (!lacking.contains(what)) {
      lacking.add(what);
    }
  }

  /** As if all of the taper were sawn off one edge. */
  private double edge(Part part, double length) {
    Bounds first = parts.get(0).beam().bounds();
    Bounds last = parts.get(parts.size() - 1).beam().bounds();
    double slope =
        Math.max(Math.abs(first.height() - last.height()), Math.abs(first.width() - last.width()))
            / length;
    if (slope > TaperedEdge.STEEPEST) {
      lack("it tapers by more than 25 degrees");
      return 1;
    }
    double least = 1;
    for (var region : part.beam().regions()) {
      BeamMaterial one = region.material();
      if (one.kind() == BeamMaterial.Kind.TIMBER && one.lay() == BeamMaterial.Lay.ALONG) {
        least = Math.min(least, edge(one, slope, part.beam().solidTimber()));
      }
    }
    return least;
  }

  /** What acts across at 1 in 20 is a four-hundredth of what bends: left out where unknown. */
  private double edge(BeamMaterial wood, double slope, boolean solid) {
    var bending = solid ? wood.strength().bending() : wood.tensionLimit();
    var shear = wood.strength().shear();
    if (slope == 0) {
      return 1;
    }
    if (bending.isEmpty()) {
      lack(
          wood.name()
              + " does not state its "
              + (solid ? "bending-strength" : "tensile-strength")
              + ", of which a sawn edge bears a share");
      return 1;
    }
    if (shear.isEmpty() || slope > 0.05) {
      lack(
          wood.name()
              + " tapers by "
              + Print.number(slope)
              + (shear.isEmpty()
                  ? " and does not state its shear-strength"
                  : ": more than 1 in 20 leans on its strength across, which is not taken here"));
      return 1;
    }
    return new TaperedEdge(slope).share(bending.getAsDouble(), shear.getAsDouble(), 1e12);
  }

  private Deflection gives(Cantilever beam) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < PLACES; i++) {
      Bending one = Bending.of(parts.get(i).beam());
      Bending other = Bending.of(parts.get(i + 1).beam());
      double from = beam.length() * i / (PLACES - 1);
      double to = beam.length() * (i + 1) / (PLACES - 1);
      stretches.add(
          new Stretch(
              from,
              to,
              Math.sqrt(one.stiffness() * other.stiffness()),
              Math.sqrt(one.shearStiffness() * other.shearStiffness())));
    }
    return beam.deflection(stretches, beam.length());
  }

  private double mass() {
    double sum = 0;
    for (int i = 0; i + 1 < PLACES; i++) {
      sum += parts.get(i).beam().massPerLength() + parts.get(i + 1).beam().massPerLength();
    }
    return sum / 2 / (PLACES - 1);
  }

  private Working working(Optional<Worst> worst, Deflection gives) {
    List<Step> steps = new ArrayList<>();
    worst.ifPresent(
        one ->
            steps.add(
                new Step(
                    "the worst of " + PLACES + " sections: " + one.words(),
                    "capacity / (γ·demand), of wood times 1/√(1 + (tan θ·F_x/F_xy)²)",
                    Print.number(one.times()) + " / " + Print.number(factor),
                    Print.number(one.times() / factor))));
    steps.add(
        new Step(
            "deflection at the tip, no safety factor",
            "w = ∫ M·m/EI dx + ∫ V·v/GA dx over " + (PLACES - 1) + " lengths",
            "bending " + Print.mm(gives.bending()) + " + shear " + Print.mm(gives.shear()),
            Print.mm(gives.total())));
    return new Working(
        parts.get(0).source().what().orElse(parts.get(0).id()) + ", tapering",
        List.of(),
        List.of(),
        steps);
  }
}
