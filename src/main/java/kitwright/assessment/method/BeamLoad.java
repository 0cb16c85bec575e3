package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.part.Part;
import kitwright.ledger.Load;
import kitwright.ledger.Load.Shape;
import kitwright.ledger.Load.Support;
import kitwright.mechanics.load.BeamCase;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Deflection;
import kitwright.mechanics.load.Overhang;
import kitwright.mechanics.load.SideForce;
import kitwright.mechanics.load.SpanLoad;
import kitwright.mechanics.load.Stretch;
import kitwright.value.Quantity;

/**
 * What a beam carries, without its safety factor.
 *
 * @param stated as the ledger has it
 * @param span m
 * @param force spread or at a point, N
 * @param tip N
 * @param own the weights that count
 * @param moment the greatest, N·m
 * @param shear the greatest, N
 * @param arm where it is a cantilever
 * @param held loads of a beam held at both ends; all bend it most at the same place
 * @param beyond where it reaches beyond its second support
 */
public record BeamLoad(
    Load stated,
    double span,
    double force,
    double tip,
    List<Own> own,
    double moment,
    double shear,
    Optional<Arm> arm,
    List<Held> held,
    Optional<Overhang> beyond) {
  private static final double SEA_WATER = 1025;

  /**
   * A cantilever.
   *
   * @param give what its tip gives under all but its own weight, where EI is 1 N·m² and GA 1 N
   * @param weights among the loads
   */
  record Arm(Cantilever beam, Deflection give, List<SpanLoad> weights) {
    public Arm {
      weights = List.copyOf(weights);
    }

    public static Arm of(double span, List<SpanLoad> loads) {
      Cantilever beam = new Cantilever(span, loads);
      return new Arm(beam, give(beam), List.of());
    }

    private static Deflection give(Cantilever beam) {
      return beam.deflection(List.of(new Stretch(0, beam.length(), 1, 1)), beam.length());
    }

    /** With weights on it. */
    public Arm with(List<SpanLoad> more) {
      List<SpanLoad> all = new ArrayList<>(more);
      all.addAll(beam.loads());
      return new Arm(new Cantilever(beam.length(), all), give, more);
    }

    /** What each load brings is added. */
    public Deflection deflection(double bending, double shearing) {
      Deflection own =
          weights.isEmpty() ? new Deflection(0, 0) : give(new Cantilever(beam.length(), weights));
      return new Deflection(
          (give.bending() + own.bending()) / bending, (give.shear() + own.shear()) / shearing);
    }
  }

  /** A load in N on a beam held at both ends. */
  record Held(BeamCase beam, double force) {}

  /**
   * The own weight of a part that reaches along the span.
   *
   * @param from m from the support
   * @param to m; cut off where the span ends
   */
  public record Own(Part part, double from, double to) {
    /** Of a part that reaches over the whole span. */
    public static Own of(Part part) {
      return new Own(part, 0, Double.POSITIVE_INFINITY);
    }

    /** kg/m. */
    double mass() {
      return part.beam().massPerLength();
    }

    /** One part up to a place, another from there to the tip. */
    public static List<Own> joined(Part inner, Part outer, double at) {
      return List.of(new Own(inner, 0, at), new Own(outer, at, Double.POSITIVE_INFINITY));
    }

    private SpanLoad.Even weight(double span) {
      return SpanLoad.Even.weight(from, Math.min(to, span), mass());
    }
  }

  public BeamLoad {
    own = List.copyOf(own);
    held = List.copyOf(held);
  }

  /**
   * The load; empty where it is lacking something, which is told.
   *
   * @param own the parts whose weight counts where the load asks for it
   */
  public static Optional<BeamLoad> of(Load load, List<Own> own, List<String> lacking) {
    return of(load, lacking).map(bare -> bare.with(own));
  }

  /** The load without the weight of any part. */
  public static Optional<BeamLoad> of(Load load, List<String> lacking) {
    if (load.span().filter(span -> !span.isNone()).isEmpty()) {
      lacking.add("the load does not state its span");
      return Optional.empty();
    }
    if (!LoadStated.isWhole(load, lacking)) {
      return Optional.empty();
    }
    double span = load.span().get().base();
    double shaped = shaped(load);
    double pressed = isPressed(load) ? pressed(load) : 0;
    double tip = load.tipForce().map(Quantity::base).orElse(0.0);
    return switch (load.support().orElse(Support.CANTILEVER)) {
      case CANTILEVER -> Optional.of(cantilever(load, span, shaped, pressed, tip));
      case OVERHANG -> Optional.of(beyond(load, span, shaped, pressed, tip));
      case SIMPLE, CLAMPED -> held(load, span, shaped, pressed, lacking);
    };
  }

  /** What lies along the part as its shape says: a force given, or that of a stream; N. */
  static double shaped(Load load) {
    return load.force().map(Quantity::base).orElseGet(() -> isFlow(load) ? sideForce(load) : 0.0);
  }

  static boolean isFlow(Load load) {
    return load.speed().isPresent() && load.area().isPresent() && load.lift().isPresent();
  }

  static double density(Load load) {
    return load.density().map(Quantity::base).orElse(SEA_WATER);
  }

  static double sideForce(Load load) {
    return new SideForce(
            density(load),
            load.speed().orElseThrow().base(),
            load.area().orElseThrow().base(),
            load.lift().orElseThrow().doubleValue())
        .force();
  }

  static boolean isPressed(Load load) {
    return load.pressure().isPresent() && load.breadth().isPresent() && load.span().isPresent();
  }

  /** On all of its length, an overhang too. */
  static double pressed(Load load) {
    return load.pressure().orElseThrow().base()
        * load.breadth().orElseThrow().base()
        * (load.span().orElseThrow().base() + load.overhang().map(Quantity::base).orElse(0.0));
  }

  private static BeamLoad beyond(
      Load load, double span, double shaped, double pressed, double tip) {
    double reach = load.overhang().map(Quantity::base).orElseThrow();
    return beyond(load, new Overhang(span, reach, tip, shaped + pressed), List.of());
  }

  private static BeamLoad beyond(Load load, Overhang beam, List<Own> own) {
    return new BeamLoad(
        load,
        beam.span(),
        beam.spread(),
        beam.tip(),
        own,
        beam.greatestMoment(),
        beam.greatestShear(),
        Optional.empty(),
        List.of(),
        Optional.of(beam));
  }

  private static BeamLoad cantilever(
      Load load, double span, double shaped, double pressed, double tip) {
    List<SpanLoad> loads = new ArrayList<>();
    if (tip > 0) {
      loads.add(new SpanLoad.Point(span, tip));
    }
    if (pressed > 0) {
      loads.add(new SpanLoad.Even(0, span, pressed));
    }
    if (shaped > 0) {
      loads.add(
          switch (load.shape().orElse(Shape.UNIFORM)) {
            case POINT -> new SpanLoad.Point(span, shaped);
            case UNIFORM -> new SpanLoad.Even(0, span, shaped);
            case TRIANGULAR -> new SpanLoad.Triangular(span, shaped);
            case ELLIPTIC -> new SpanLoad.Elliptic(span, shaped);
          });
    }
    return on(load, span, shaped + pressed, tip, List.of(), Arm.of(span, loads));
  }

  private static BeamLoad on(
      Load load, double span, double force, double tip, List<Own> own, Arm arm) {
    var root = arm.beam().at(0);
    return new BeamLoad(
        load,
        span,
        force,
        tip,
        own,
        root.moment(),
        root.shear(),
        Optional.of(arm),
        List.of(),
        Optional.empty());
  }

  private static Optional<BeamLoad> held(
      Load load, double span, double shaped, double pressed, List<String> lacking) {
    Shape shape = load.shape().orElse(Shape.UNIFORM);
    if (shape == Shape.ELLIPTIC) {
      lacking.add("an elliptic load is worked out on a cantilever only");
      return Optional.empty();
    }
    List<Held> held = new ArrayList<>();
    if (shaped > 0) {
      held.add(new Held(held(load, shape), shaped));
    }
    if (pressed > 0) {
      held.add(new Held(even(load), pressed));
    }
    return Optional.of(between(load, span, shaped + pressed, 0, List.of(), held));
  }

  private static BeamCase held(Load load, Shape shape) {
    return switch (shape) {
      case POINT -> isSimple(load) ? BeamCase.SIMPLE_CENTRE : BeamCase.FIXED_CENTRE;
      case TRIANGULAR -> isSimple(load) ? BeamCase.SIMPLE_TRIANGLE : BeamCase.FIXED_TRIANGLE;
      case UNIFORM, ELLIPTIC -> even(load);
    };
  }

  private static BeamLoad between(
      Load load, double span, double force, double tip, List<Own> own, List<Held> held) {
    double moment = held.stream().mapToDouble(one -> one.beam().moment(one.force(), span)).sum();
    double shear = held.stream().mapToDouble(one -> one.beam().shear(one.force())).sum();
    return new BeamLoad(
        load, span, force, tip, own, moment, shear, Optional.empty(), held, Optional.empty());
  }

  static boolean isSimple(Load load) {
    return load.support().orElse(Support.SIMPLE) == Support.SIMPLE;
  }

  private static BeamCase even(Load load) {
    return isSimple(load) ? BeamCase.SIMPLE_EVEN : BeamCase.FIXED_EVEN;
  }

  /** The same with the own weight of so many parts, where the load asks for that. */
  public BeamLoad with(List<Own> parts) {
    if (!stated.selfWeight()) {
      return this;
    }
    if (beyond.isPresent()) {
      double length = span + beyond.get().beyond();
      double weight =
          parts.stream().mapToDouble(Own::mass).sum() * length * SpanLoad.STANDARD_GRAVITY;
      return beyond(stated, beyond.get().with(weight), parts);
    }
    List<Own> weighing =
        parts.stream().filter(part -> part.from() < Math.min(part.to(), span)).toList();
    if (arm.isPresent()) {
      List<SpanLoad> weights = new ArrayList<>();
      weighing.forEach(part -> weights.add(part.weight(span)));
      return on(stated, span, force, tip, weighing, arm.get().with(weights));
    }
    List<Held> all = new ArrayList<>(held);
    weighing.forEach(part -> all.add(new Held(even(stated), part.weight(span).force())));
    return between(stated, span, force, tip, weighing, all);
  }

  public Optional<Cantilever> cantilever() {
    return arm.map(Arm::beam);
  }

  /** The greatest that a support it lies on bears, N; none where it is built in at one end. */
  double reaction() {
    return arm.isPresent() ? 0 : beyond.map(Overhang::greatestReaction).orElse(shear);
  }

  /** What stands on it at one place, N. */
  double atOnePlace() {
    boolean point = stated.shape().filter(Shape.POINT::equals).isPresent();
    return tip + (point ? shaped(stated) : 0);
  }

  /** How it came about, in words and formulas, a line each. */
  public List<String> how() {
    return new LoadTold(this, stated).lines();
  }

  /** The greatest deflection of a beam of one section. */
  public Deflection deflection(double bending, double shearing) {
    if (arm.isPresent()) {
      return arm.get().deflection(bending, shearing);
    }
    if (beyond.isPresent()) {
      return beyond.get().deflection(bending, shearing);
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
