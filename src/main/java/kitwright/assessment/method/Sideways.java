package kitwright.assessment.method;

import java.util.Optional;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Assessment.Support;
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
 */
record Sideways(double share, Optional<String> lacking, Optional<Step> step) {
  /** E₀.₀₅ of softwood is 0.67 of the mean, which is what is mostly stated: EN 338. */
  private static final double LOW = 0.67;

  /** EN 1993-1-1, 6.3.2.2 (4): a metal beam less slender than this does not tip. */
  private static final double STEADY = 0.4;

  private static final Sideways NONE = new Sideways(1, Optional.empty(), Optional.empty());

  static Sideways of(Part part, Bending bending, BeamLoad load) {
    var box = part.beam().bounds();
    double moment =
        Math.min(
            bending.moment(Sense.SAGGING).value().orElse(0),
            bending.moment(Sense.HOGGING).value().orElse(0));
    if (!(load.moment() > 0) || !(moment > 0) || box.height() <= box.width()) {
      return NONE;
    }
    if (part.beam().parted() || part.beam().torsion().isEmpty()) {
      return untold(part, "is deep");
    }
    double across = Bending.of(part.beam().turned()).stiffness();
    if (across >= bending.stiffness()) {
      return NONE;
    }
    boolean wood =
        part.beam().regions().stream().allMatch(one -> one.material().kind() == Kind.TIMBER);
    double low = wood ? LOW : 1;
    SideStability beam =
        new SideStability(
            low * across, low * part.beam().torsion().getAsDouble(), length(load, box.height()));
    double slender = beam.slenderness(moment);
    if (!wood) {
      return slender <= STEADY ? NONE : untold(part, "is deep");
    }
    double share = SideStability.share(slender);
    return new Sideways(share, Optional.empty(), Optional.of(step(beam, moment, slender, share)));
  }

  /** What is left of a reserve in bending. */
  Figure of(Figure held) {
    return share < 1 ? Figure.of(share * held.value(), "tipping over sideways") : held;
  }

  private static Sideways untold(Part part, String how) {
    return new Sideways(
        1,
        Optional.of(
            part.id()
                + " "
                + how
                + " for its width and may tip over sideways before it breaks, which is not worked"
                + " out for it: say how often its side is held (held-sideways), or make it wider"),
        Optional.empty());
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
