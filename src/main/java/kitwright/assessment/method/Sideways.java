package kitwright.assessment.method;

import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Load.Support;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.beam.SideStability;
import kitwright.value.Quantity;

/**
 * Whether a loaded beam tips over sideways before it breaks; one no deeper than wide does not
 * (NDS-2018, 3.3.3.1).
 *
 * @param share what is left of the moment that it bears, 1 at most
 * @param lacking why that cannot be told
 * @see SideStability
 * @see "Florida Building Code, 2306.7: depth to thickness two to one, no lateral support is
 *     required; read on 2026-11-30"
 */
public record Sideways(double share, Optional<String> lacking, Optional<Step> step) {
  /** E₀.₀₅ of softwood is 0.67 of the mean, which is what is mostly stated: EN 338. */
  private static final double LOW = 0.67;

  /** EN 1993-1-1, 6.3.2.2 (4): a metal beam less slender than this does not tip. */
  private static final double STEADY = 0.4;

  /** Solid wood up to twice as deep as wide needs no hold at its sides. */
  private static final double STOUT = 2;

  /** Two that tip alike but for rounding. */
  private static final double ALIKE = 1.001;

  private static final Sideways NONE = new Sideways(1, Optional.empty(), Optional.empty());

  static Sideways of(Part part, Bending bending, BeamLoad load) {
    var box = part.beam().bounds();
    double moment = held(bending);
    if (!(load.moment() > 0) || !(moment > 0) || !isDeep(part, bending)) {
      return NONE;
    }
    OptionalDouble torsion = part.beam().torsionAtLeast();
    if (part.beam().parted() || torsion.isEmpty()) {
      return untold(part, "make it wider, or write it as layers of one width");
    }
    double across = Bending.of(part.beam().turned()).stiffness();
    boolean wood =
        part.beam().regions().stream().allMatch(one -> one.material().kind() == Kind.TIMBER);
    double low = wood ? LOW : 1;
    SideStability beam =
        new SideStability(low * across, low * torsion.getAsDouble(), length(load, box.height()));
    double slender = beam.slenderness(moment);
    if (!wood) {
      return slender <= STEADY ? NONE : untold(part, oftener(load) + ", or make it wider");
    }
    double share = SideStability.share(slender);
    return new Sideways(share, Optional.empty(), Optional.of(step(beam, moment, slender, share)));
  }

  /** What is left of a reserve in bending. */
  Figure of(Figure held) {
    return share < 1 ? Figure.of(share * held.value(), "tipping over sideways") : held;
  }

  /** What it bears where its side is held, the lesser way, N·m. */
  private static double held(Bending bending) {
    return Math.min(
        bending.moment(Sense.SAGGING).value().orElse(0),
        bending.moment(Sense.HOGGING).value().orElse(0));
  }

  private static boolean isDeep(Part part, Bending bending) {
    var box = part.beam().bounds();
    return box.height() > box.width()
        && (part.beam().parted()
            || Bending.of(part.beam().turned()).stiffness() < bending.stiffness());
  }

  /** How soon it tips for what it bears, M·l/M_crit in 1/m; nothing where it does not. */
  private static double soon(Part part, Bending bending) {
    double moment = held(bending);
    if (!(moment > 0) || !isDeep(part, bending)) {
      return 0;
    }
    OptionalDouble torsion = part.beam().torsionAtLeast();
    if (part.beam().parted() || torsion.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double across = Bending.of(part.beam().turned()).stiffness();
    return moment / new SideStability(across, torsion.getAsDouble(), 1).critical();
  }

  /**
   * Why a moment set beside that of another part says too little: the one as built tips over
   * sideways, and sooner than the one as drawn. Nothing where both tip alike or neither does.
   *
   * @param load that says how long it is and how its side is held, where one is stated
   */
  public static Optional<String> sooner(
      Part drawn, Bending asDrawn, Part made, Bending asMade, Optional<BeamLoad> load) {
    double soon = soon(made, asMade);
    if (isStout(made)) {
      return Optional.empty();
    }
    if (!(soon > ALIKE * soon(drawn, asDrawn)) && Double.isFinite(soon)) {
      return Optional.empty();
    }
    if (load.isPresent()) {
      Sideways aside = of(made, asMade, load.get());
      if (aside.lacking().isPresent()) {
        return aside.lacking();
      }
      if (!(aside.share < 1)) {
        return Optional.empty();
      }
    }
    return Optional.of(
        made.id()
            + " is deep for its width and may tip over sideways before it breaks, sooner than "
            + drawn.id()
            + ", of which a moment set beside a moment says nothing: ask for its reserve under a"
            + " load, or give a load that says its span and how often its side is held"
            + " (held-sideways)");
  }

  private static boolean isStout(Part part) {
    var box = part.beam().bounds();
    return part.beam().solidTimber() && box.height() <= STOUT * box.width();
  }

  /**
   * Why it is not told that a part outlasts another: it may tip over before it breaks.
   *
   * @param margin how much more it bears where its side is held
   * @param asked the least of that
   */
  public static Optional<String> outlasts(
      Part part, Bending bending, BeamLoad load, double margin, double asked) {
    Sideways aside = of(part, bending, load);
    return aside.share * margin < asked && !isStout(part)
        ? Optional.of(
            part.id()
                + " may tip over sideways before it breaks, and which part goes first is not told"
                + " then: say how often its side is held (held-sideways), or make it wider")
        : aside.lacking();
  }

  private static Sideways untold(Part part, String mend) {
    return new Sideways(
        1,
        Optional.of(
            part.id()
                + " is deep for its width and may tip over sideways before it breaks, which is not"
                + " worked out for it: "
                + mend),
        Optional.empty());
  }

  private static String oftener(BeamLoad load) {
    return load.stated()
        .heldSideways()
        .map(held -> "hold its side oftener than each " + held + " (held-sideways)")
        .orElse("say how often its side is held (held-sideways)");
  }

  /** Table 6.1, the load on the edge that is pushed: 2·h is added. */
  private static double length(BeamLoad load, double height) {
    Optional<Quantity> held = load.stated().heldSideways();
    if (held.isPresent()) {
      return Math.min(held.get().base(), reach(load)) + 2 * height;
    }
    boolean hangs = load.stated().support().orElse(Support.CANTILEVER) == Support.CANTILEVER;
    return (hangs ? 0.8 : 1) * reach(load) + 2 * height;
  }

  private static double reach(BeamLoad load) {
    return load.span() + load.stated().overhang().map(Quantity::base).orElse(0.0);
  }

  private static Step step(SideStability beam, double moment, double slender, double share) {
    return new Step(
        "share of the moment before it tips over sideways",
        "k_crit, EN 1995-1-1, 6.34; λ = √(M/M_crit), M_crit = π·√(E₀.₀₅I_z·G₀.₀₅J)/l_ef, 0.67 of"
            + " the moduli",
        "l_ef "
            + Print.mm(beam.length())
            + ", M "
            + Print.with(moment, "N·m")
            + ", M_crit "
            + Print.with(beam.critical(), "N·m")
            + ", λ "
            + Print.number(slender),
        Print.number(share));
  }
}
