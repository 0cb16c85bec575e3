package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Assessment.Load;
import kitwright.ledger.Assessment.Shape;
import kitwright.ledger.Assessment.Support;
import kitwright.mechanics.load.BeamCase;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Deflection;
import kitwright.mechanics.load.SideForce;
import kitwright.mechanics.load.SpanLoad;
import kitwright.mechanics.load.Stretch;
import kitwright.value.Quantity;

/**
 * What a beam carries, without its safety factor.
 *
 * @param span m
 * @param moment the greatest, N·m
 * @param shear the greatest, N
 * @param held loads of a beam held at both ends; all bend it most at the same place
 * @param how in words and formulas, a line each
 */
record BeamLoad(
    double span,
    double moment,
    double shear,
    Optional<Cantilever> cantilever,
    List<Held> held,
    List<String> how) {
  private static final double SEA_WATER = 1025;

  /** A load in N on a beam held at both ends. */
  record Held(BeamCase beam, double force) {}

  /**
   * The own weight of a part that reaches along the span.
   *
   * @param mass kg/m
   * @param from m from the support
   * @param to m; cut off where the span ends
   */
  record Own(String part, double mass, double from, double to) {
    /** Of a part that reaches over the whole span. */
    static Own of(Part part) {
      return between(part, 0, Double.POSITIVE_INFINITY);
    }

    static Own between(Part part, double from, double to) {
      return new Own(part.id(), part.beam().massPerLength(), from, to);
    }

    /** One part up to a place, another from there to the tip. */
    static List<Own> joined(Part inner, Part outer, double at) {
      return List.of(between(inner, 0, at), between(outer, at, Double.POSITIVE_INFINITY));
    }

    private SpanLoad.Even weight(double span) {
      return SpanLoad.Even.weight(from, Math.min(to, span), mass);
    }

    private String how() {
      return "self-weight of "
          + part
          + ": w = m·g = "
          + Print.with(mass, "kg/m")
          + " · 9.80665 m/s² = "
          + Print.with(mass * SpanLoad.STANDARD_GRAVITY, "N/m")
          + ", as if level";
    }
  }

  BeamLoad {
    held = List.copyOf(held);
    how = List.copyOf(how);
  }

  /**
   * The load; empty where it is lacking something, which is told.
   *
   * @param own the parts whose weight counts where the load asks for it
   */
  static Optional<BeamLoad> of(Load load, List<Own> own, List<String> lacking) {
    if (load.span().filter(span -> !span.isNone()).isEmpty()) {
      lacking.add("the load does not state its span");
      return Optional.empty();
    }
    double span = load.span().get().base();
    List<String> how = new ArrayList<>();
    Optional<Double> force = force(load, how);
    double tip = load.tipForce().map(Quantity::base).orElse(0.0);
    if (force.isEmpty() && tip == 0 && !load.selfWeight()) {
      lacking.add(
          "the load states no force: force, tip-force, pressure and breadth, speed, area and"
              + " lift, or self-weight: yes");
      return Optional.empty();
    }
    if (tip > 0) {
      how.add("tip force " + Print.with(tip, "N"));
    }
    List<Own> weighing =
        load.selfWeight()
            ? own.stream().filter(part -> part.from() < Math.min(part.to(), span)).toList()
            : List.of();
    weighing.forEach(part -> how.add(part.how()));
    return switch (load.support().orElse(Support.CANTILEVER)) {
      case CANTILEVER -> Optional.of(cantilever(load, span, force.orElse(0.0), tip, weighing, how));
      case SIMPLE, CLAMPED -> held(load, span, force.orElse(0.0) + tip, weighing, how, lacking);
    };
  }

  private static String of(List<Own> weighing) {
    return weighing.isEmpty()
        ? ""
        : String.join(" and ", weighing.stream().map(Own::part).toList()) + ": ";
  }

  private static Optional<Double> force(Load load, List<String> how) {
    if (load.force().isPresent()) {
      how.add("force " + load.force().get());
      return load.force().map(Quantity::base);
    }
    if (load.speed().isPresent() && load.area().isPresent() && load.lift().isPresent()) {
      double rho = load.density().map(Quantity::base).orElse(SEA_WATER);
      double speed = load.speed().get().base();
      double area = load.area().get().base();
      double lift = load.lift().get().doubleValue();
      if (!(rho > 0) || !(area > 0)) {
        return Optional.empty();
      }
      double force = new SideForce(rho, speed, area, lift).force();
      how.add(
          "F = ½·ρ·V²·A·C_L = ½ · "
              + Print.number(rho)
              + " · "
              + Print.number(speed)
              + "² · "
              + Print.number(area)
              + " · "
              + Print.number(lift)
              + " = "
              + Print.with(force, "N"));
      return Optional.of(force).filter(some -> some > 0);
    }
    if (load.pressure().isPresent() && load.breadth().isPresent() && load.span().isPresent()) {
      double force =
          load.pressure().get().base() * load.breadth().get().base() * load.span().get().base();
      how.add(
          "F = p·b·L = "
              + load.pressure().get()
              + " · "
              + load.breadth().get()
              + " · "
              + load.span().get()
              + " = "
              + Print.with(force, "N"));
      return Optional.of(force).filter(some -> some > 0);
    }
    return Optional.empty();
  }

  private static BeamLoad cantilever(
      Load load, double span, double force, double tip, List<Own> weighing, List<String> how) {
    List<SpanLoad> loads = new ArrayList<>();
    weighing.forEach(part -> loads.add(part.weight(span)));
    if (tip > 0) {
      loads.add(new SpanLoad.Point(span, tip));
    }
    if (force > 0) {
      loads.add(
          switch (load.shape().orElse(Shape.UNIFORM)) {
            case POINT -> new SpanLoad.Point(span, force);
            case UNIFORM -> new SpanLoad.Even(0, span, force);
            case ELLIPTIC -> new SpanLoad.Elliptic(span, force);
          });
    }
    Cantilever beam = new Cantilever(span, loads);
    var root = beam.at(0);
    how.add(
        of(weighing)
            + "cantilever of "
            + Print.with(span, "m")
            + (force > 0 ? ", the force " + shape(load) : "")
            + ": M = "
            + Print.with(root.moment(), "N·m")
            + " and V = "
            + Print.with(root.shear(), "N")
            + " at the support");
    return new BeamLoad(span, root.moment(), root.shear(), Optional.of(beam), List.of(), how);
  }

  private static String shape(Load load) {
    return switch (load.shape().orElse(Shape.UNIFORM)) {
      case POINT -> "at the tip";
      case UNIFORM -> "spread evenly";
      case ELLIPTIC -> "spread as a quarter ellipse";
    };
  }

  private static Optional<BeamLoad> held(
      Load load,
      double span,
      double force,
      List<Own> weighing,
      List<String> how,
      List<String> lacking) {
    Shape shape = load.shape().orElse(Shape.UNIFORM);
    if (shape == Shape.ELLIPTIC) {
      lacking.add("an elliptic load is worked out on a cantilever only");
      return Optional.empty();
    }
    boolean simple = load.support().orElse(Support.SIMPLE) == Support.SIMPLE;
    BeamCase even = simple ? BeamCase.SIMPLE_EVEN : BeamCase.FIXED_EVEN;
    BeamCase middle = simple ? BeamCase.SIMPLE_CENTRE : BeamCase.FIXED_CENTRE;
    List<Held> held = new ArrayList<>();
    if (force > 0) {
      held.add(new Held(shape == Shape.POINT ? middle : even, force));
    }
    weighing.forEach(part -> held.add(new Held(even, part.weight(span).total())));
    double moment = held.stream().mapToDouble(one -> one.beam().moment(one.force(), span)).sum();
    double shear = held.stream().mapToDouble(one -> one.beam().shear(one.force())).sum();
    how.add(
        of(weighing)
            + (simple ? "simply supported" : "clamped at both ends")
            + " over "
            + Print.with(span, "m")
            + (force > 0
                ? (shape == Shape.POINT ? ", the force at the middle" : ", the force spread evenly")
                : "")
            + ": M = "
            + Print.with(moment, "N·m")
            + ", V = "
            + Print.with(shear, "N"));
    return Optional.of(new BeamLoad(span, moment, shear, Optional.empty(), held, how));
  }

  /** The greatest deflection of a beam of one section. */
  Deflection deflection(double bending, double shearing) {
    if (cantilever.isPresent()) {
      return cantilever.get().deflection(List.of(new Stretch(0, span, bending, shearing)), span);
    }
    double bent = 0;
    double sheared = 0;
    for (Held one : held) {
      Deflection more = one.beam().deflection(one.force(), span, bending, shearing);
      bent += more.bending();
      sheared += more.shear();
    }
    return new Deflection(bent, sheared);
  }
}
