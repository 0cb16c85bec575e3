package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Load;
import kitwright.ledger.Load.Shape;
import kitwright.ledger.Load.Support;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.LayeredSection;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.beam.Strip;
import kitwright.mechanics.beam.ThinFaces;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Stiffness;
import kitwright.mechanics.load.SpanLoad;
import kitwright.mechanics.panel.Panel;
import kitwright.mechanics.panel.PlateResponse;
import kitwright.mechanics.panel.PlateStiffness;

/**
 * A flat plate under even pressure. Stiffness of any stack by laminate theory, free to stretch;
 * transverse shear stiffness of a strip 1 m wide in each direction, energy-consistent; deflection,
 * moments and edge shear by Navier's series (simple supports) or Ritz (clamped); what a strip
 * carries before it first fails is set against what the plate asks of it.
 */
public final class PanelMethod {
  /** Coupling of bend and twist above this share is more than the plate theory here allows. */
  private static final double COUPLED = 0.05;

  /** As of beams: shorter ones are blocks. */
  private static final double STOUT = 3;

  private static final double QUARTER = 90;

  private PanelMethod() {}

  /**
   * What is asked of the panel: sides in m, pressure in Pa without its factor.
   *
   * @param selfWeight whether its own weight is added, as if it lay level
   */
  public record Pressed(
      double span,
      double breadth,
      double pressure,
      Support support,
      double factor,
      boolean selfWeight) {
    public static Optional<Pressed> of(Load load, List<String> lacking) {
      List<String> others = others(load);
      if (!others.isEmpty()) {
        lacking.add(
            "a panel bears an even pressure here, and its load also states "
                + String.join(", ", others)
                + ": nothing is left out of a load");
        return Optional.empty();
      }
      if (load.pressure().filter(p -> !p.isNone()).isEmpty()
          || load.span().filter(a -> !a.isNone()).isEmpty()
          || load.breadth().filter(b -> !b.isNone()).isEmpty()) {
        lacking.add("a panel’s load states pressure, span and breadth");
        return Optional.empty();
      }
      if (load.support().isEmpty()) {
        lacking.add("the load does not say how the panel is held: support: simple or clamped");
      }
      Support support = load.support().orElse(Support.SIMPLE);
      if (support != Support.SIMPLE && support != Support.CLAMPED) {
        lacking.add("a panel is held at all four sides: support: simple or clamped");
        return Optional.empty();
      }
      return Optional.of(
          new Pressed(
              load.span().get().base(),
              load.breadth().get().base(),
              load.pressure().get().base(),
              support,
              load.safety().doubleValue(),
              load.selfWeight()));
    }

    private static List<String> others(Load load) {
      List<String> others = new ArrayList<>();
      load.force().ifPresent(any -> others.add("a force"));
      load.tipForce().ifPresent(any -> others.add("a tip-force"));
      load.speed().ifPresent(any -> others.add("a speed"));
      load.area().ifPresent(any -> others.add("an area"));
      load.lift().ifPresent(any -> others.add("a lift"));
      load.density().ifPresent(any -> others.add("a density"));
      load.thrust().ifPresent(any -> others.add("a thrust"));
      load.torque().ifPresent(any -> others.add("a torque"));
      load.heldSideways().ifPresent(any -> others.add("how it is held sideways"));
      load.overhang().ifPresent(any -> others.add("an overhang"));
      load.bearing().ifPresent(any -> others.add("a bearing"));
      load.ends().ifPresent(any -> others.add("how its ends are held (ends)"));
      load.shape()
          .filter(shape -> shape != Shape.UNIFORM)
          .ifPresent(shape -> others.add("a shape that is not uniform"));
      return others;
    }

    private Pressed under(double total) {
      return new Pressed(span, breadth, total, support, factor, selfWeight);
    }

    /** With the own weight of a panel of so many kg/m² where that is asked. */
    private Pressed with(double mass) {
      return selfWeight ? under(pressure + mass * SpanLoad.STANDARD_GRAVITY) : this;
    }

    private Step step(double mass, double total) {
      return new Step(
          "pressure with its own weight, as if level",
          "p + m·g",
          Print.number(pressure) + " + " + Print.number(mass) + " · 9.80665",
          Print.with(total, "Pa"));
    }
  }

  public static Outcome of(Part part, Pressed given) {
    Figures figures = new Figures();
    Laminate laminate = part.laminate();
    double mass = laminate.arealMass();
    Pressed asked = given.with(mass);
    Bending along = strip(part, 0);
    Bending across = strip(part, QUARTER);
    Stiffness give = laminate.stiffness().inverse();
    PlateStiffness plate = plate(give, along.shearStiffness(), across.shearStiffness());
    Panel panel = new Panel(asked.span(), asked.breadth(), asked.pressure(), plate);
    PlateResponse response =
        asked.support() == Support.SIMPLE ? panel.simplySupported() : panel.clamped();
    figures.put(Measure.PLATE_STIFFNESS, asked.pressure() / (response.deflection() * 1000));
    figures.put(Measure.DEFLECTION, response.deflection() * 1000);
    figures.put(Measure.PLATE_MASS, mass);
    figures.put(Measure.THICKNESS, laminate.thickness() * 1000);
    if (coupled(give)) {
      figures.lacks(
          Measure.PLATE_STIFFNESS, part.id() + " couples bend and twist, which is left out here");
    }
    double small = Math.min(asked.span(), asked.breadth());
    if (small < STOUT * laminate.thickness() * (1 - 1e-9)) {
      String how =
          part.id()
              + " is too small for its thickness to be worked out as a plate: a side is less than "
              + Print.number(STOUT)
              + " times that";
      figures.lacks(Measure.PLATE_STRENGTH, how).lacks(Measure.RESERVE, how);
    }
    double beyond = Math.abs(response.deflection()) / laminate.thickness();
    if (beyond > 1) {
      String how =
          part.id()
              + " gives "
              + Print.number(beyond)
              + " times its own thickness under the load: it stretches then as well as bends, which"
              + " is not worked out here";
      figures.lacks(Measure.PLATE_STRENGTH, how).lacks(Measure.RESERVE, how);
    }
    Capacity mx = weaker(along);
    Capacity my = weaker(across);
    Capacity qx = along.shear();
    Capacity qy = across.shear();
    figures.put(Measure.PLATE_MOMENT, mx);
    figures.put(Measure.PLATE_MOMENT_ACROSS, my);
    figures.put(Measure.PLATE_SHEAR, qx);
    figures.put(Measure.PLATE_SHEAR_ACROSS, qy);
    double momentX = Math.max(Math.abs(response.mx()), Math.abs(response.edgeMx()));
    double momentY = Math.max(Math.abs(response.my()), Math.abs(response.edgeMy()));
    List<Share> shares = new ArrayList<>();
    share(mx, momentX, "along the span", "m_x", "N", shares);
    share(my, momentY, "across the span", "m_y", "N", shares);
    share(qx, Math.abs(response.qx()), "along the span", "q_x", "N/m", shares);
    share(qy, Math.abs(response.qy()), "across the span", "q_y", "N/m", shares);
    Twist.Borne twist = Twist.of(part, laminate, give);
    double twisted = Math.abs(response.cornerMxy());
    twist
        .limit()
        .filter(any -> twisted > 0)
        .ifPresent(limit -> shares.add(new Share(limit, twisted, "at a corner", "m_xy", "N")));
    if (twisted > 0) {
      twist
          .lacking()
          .forEach(
              what -> figures.lacks(Measure.PLATE_STRENGTH, what).lacks(Measure.RESERVE, what));
    }
    Optional<Share> least = shares.stream().min(Comparator.comparingDouble(Share::value));
    least.ifPresent(
        first -> {
          Optional<String> how = Optional.of(first.how());
          figures.put(
              Measure.PLATE_STRENGTH, new Figure(first.value() * asked.pressure() / 1000, how));
          figures.put(Measure.RESERVE, new Figure(first.value() / asked.factor(), how));
        });
    for (Measure measure :
        List.of(
            Measure.PLATE_MOMENT,
            Measure.PLATE_MOMENT_ACROSS,
            Measure.PLATE_SHEAR,
            Measure.PLATE_SHEAR_ACROSS)) {
      figures
          .lacking(measure)
          .forEach(
              what -> figures.lacks(Measure.PLATE_STRENGTH, what).lacks(Measure.RESERVE, what));
    }
    return new Outcome(
        figures,
        () -> {
          List<Step> steps = new ArrayList<>();
          if (asked.selfWeight()) {
            steps.add(given.step(mass, asked.pressure()));
          }
          stiffness(plate, asked, response, steps);
          thin(part, plate, steps);
          shares.forEach(share -> steps.add(share.step()));
          least.ifPresent(first -> steps.add(reserve(first, asked)));
          return List.of(LaminateMethod.working(part, steps));
        });
  }

  private static Step reserve(Share least, Pressed asked) {
    return new Step(
        "reserve factor",
        "least of these / γ",
        Print.number(least.value()) + " / " + Print.number(asked.factor()),
        Print.number(least.value() / asked.factor()));
  }

  /**
   * Faces of whole layers on one core, thought thin and the core without stiffness of its own: D =
   * d²·A₁·A₂/(A₁ + A₂), S = G·d²/t_c.
   *
   * @see ThinFaces
   */
  private static void thin(Part part, PlateStiffness plate, List<Step> steps) {
    thinFaces(part, 0)
        .ifPresent(
            along -> {
              compareD("D₁₁", along, plate.d11(), steps);
              ThinFaceSteps.compare(
                  "transverse shear stiffness along the span by the thin-face formula, to compare",
                  "S ≈ G_c·d²/t_c",
                  along.shearStiffness(),
                  plate.shearX(),
                  "N/m",
                  steps);
            });
    thinFaces(part, QUARTER).ifPresent(across -> compareD("D₂₂", across, plate.d22(), steps));
  }

  private static void compareD(String name, ThinFaces thin, double exact, List<Step> steps) {
    ThinFaceSteps.compare(
        name + " by the thin-face formula, to compare",
        "D ≈ d²·A₁·A₂/(A₁ + A₂), A = Σ Q̄·t of each face",
        thin.bendingStiffness(),
        exact,
        "N·m",
        steps);
  }

  private static Optional<ThinFaces> thinFaces(Part part, double turn) {
    List<Part.StackLayer> stack = part.stack();
    List<Integer> cores =
        IntStream.range(0, stack.size())
            .filter(i -> stack.get(i).stuff().kind() == Kind.CORE)
            .boxed()
            .toList();
    int at = cores.size() == 1 ? cores.get(0) : 0;
    if (at == 0 || at == stack.size() - 1) {
      return Optional.empty();
    }
    Laminate lower = Part.laminate(stack.subList(0, at)).rotated(turn);
    Laminate upper = Part.laminate(stack.subList(at + 1, stack.size())).rotated(turn);
    return Optional.of(
        new ThinFaces(
            1,
            lower.stiffness().a(1, 1),
            upper.stiffness().a(1, 1),
            lower.thickness(),
            upper.thickness(),
            stack.get(at).thickness(),
            stack.get(at).stuff().elastic().shear()));
  }

  /** A strip 1 m wide that runs at an angle to the span. */
  private static Bending strip(Part part, double turn) {
    LayeredSection strip = LayeredSection.ofWidth(1);
    part.stack()
        .forEach(
            layer ->
                strip.add(
                    new kitwright.mechanics.beam.Layer(
                        layer.where(), layer.thickness(), List.of(Strip.of(1, layer.beam(turn))))));
    return Bending.of(strip.section());
  }

  private static Capacity weaker(Bending strip) {
    Capacity sagging = strip.moment(Sense.SAGGING);
    Capacity hogging = strip.moment(Sense.HOGGING);
    return sagging.value().orElse(0) <= hogging.value().orElse(0) ? sagging : hogging;
  }

  /** D of a stack that is free to stretch: the inverse of the bending part of its inverse. */
  private static PlateStiffness plate(Stiffness give, double shearX, double shearY) {
    double det = give.d(1, 1) * give.d(2, 2) - give.d(1, 2) * give.d(1, 2);
    return new PlateStiffness(
        give.d(2, 2) / det,
        -give.d(1, 2) / det,
        give.d(1, 1) / det,
        1 / give.d(3, 3),
        shearX,
        shearY);
  }

  private static boolean coupled(Stiffness give) {
    double one = Math.abs(give.d(1, 3)) / Math.sqrt(give.d(1, 1) * give.d(3, 3));
    double other = Math.abs(give.d(2, 3)) / Math.sqrt(give.d(2, 2) * give.d(3, 3));
    return Math.max(one, other) > COUPLED;
  }

  /** What a strip bears in one way over what the plate asks of it. */
  private record Share(Limit limit, double asked, String way, String symbol, String unit) {
    double value() {
      return limit.capacity() / asked;
    }

    String how() {
      return Figures.words(limit) + ", " + way;
    }

    Step step() {
      return new Step(
          "first failure by " + how(),
          symbol + " at first failure over " + symbol + " asked",
          Print.with(limit.capacity(), unit) + " / " + Print.with(asked, unit),
          Print.number(value()));
    }
  }

  private static void share(
      Capacity capacity, double asked, String way, String symbol, String unit, List<Share> shares) {
    capacity
        .governing()
        .filter(any -> asked > 0)
        .ifPresent(limit -> shares.add(new Share(limit, asked, way, symbol, unit)));
  }

  private static void stiffness(
      PlateStiffness plate, Pressed asked, PlateResponse response, List<Step> steps) {
    steps.add(
        new Step(
            "plate stiffness, free to stretch",
            "D* = D − B·A⁻¹·B",
            "D₁₁, D₁₂, D₂₂, D₆₆",
            Print.number(plate.d11())
                + ", "
                + Print.number(plate.d12())
                + ", "
                + Print.number(plate.d22())
                + ", "
                + Print.with(plate.d66(), "N·m")));
    steps.add(
        new Step(
            "transverse shear stiffness per width",
            "1/S = ∫ (Σ E·S / EI)² / (Σ G·b) dz of a strip",
            "along, across the span",
            Print.number(plate.shearX()) + ", " + Print.with(plate.shearY(), "N/m")));
    boolean simple = asked.support() == Support.SIMPLE;
    steps.add(
        new Step(
            "deflection at the middle, of which shear " + Print.mm(response.shearDeflection()),
            simple
                ? "w = Σ Σ w_mn·sin(m·π/2)·sin(n·π/2), Navier’s series with shear"
                : "Ritz, shapes (1 − ξ²)²·P₂ᵢ(ξ), with shear added",
            Print.with(asked.pressure() / 1000, "kPa")
                + " on "
                + Print.number(asked.span() * 1000)
                + " × "
                + Print.mm(asked.breadth())
                + (simple ? ", simply supported" : ", clamped"),
            Print.mm(response.deflection())));
  }
}
