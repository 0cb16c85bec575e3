package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Load;
import kitwright.ledger.Load.Shape;
import kitwright.mechanics.load.Overhang;
import kitwright.mechanics.load.SpanLoad;
import kitwright.value.Word;

/**
 * How a load came about, in words and formulas.
 *
 * @param stated as the ledger has it
 */
record LoadTold(BeamLoad load, Load stated) {
  /** A line each. */
  List<String> lines() {
    List<String> how = new ArrayList<>(forced());
    if (load.tip() > 0) {
      how.add("tip force " + Print.with(load.tip(), "N"));
    }
    stated
        .thrust()
        .ifPresent(
            push ->
                how.add(
                    "thrust "
                        + push
                        + ", ends "
                        + stated.ends().map(ends -> Word.key(ends)).orElse("?")));
    stated.torque().ifPresent(torque -> how.add("torque " + torque));
    load.own().forEach(part -> how.add(weight(part)));
    String weighing =
        load.own().isEmpty()
            ? ""
            : String.join(" and ", load.own().stream().map(one -> one.part().id()).toList()) + ": ";
    how.add(
        weighing
            + (load.arm().isPresent()
                ? hanging()
                : load.beyond().map(this::beyond).orElseGet(this::held)));
    return how;
  }

  private List<String> forced() {
    List<String> how = new ArrayList<>();
    stated.force().ifPresent(force -> how.add("force " + force));
    if (BeamLoad.isFlow(stated)) {
      how.add(
          "F = ½·ρ·V²·A·C_L = ½ · "
              + Print.number(BeamLoad.density(stated))
              + " · "
              + Print.number(stated.speed().get().base())
              + "² · "
              + Print.number(stated.area().get().base())
              + " · "
              + Print.number(stated.lift().get().doubleValue())
              + " = "
              + Print.with(BeamLoad.sideForce(stated), "N"));
    }
    if (BeamLoad.isPressed(stated)) {
      how.add(
          "F = p·b·L = "
              + stated.pressure().get()
              + " · "
              + stated.breadth().get()
              + " · "
              + stated.span().get()
              + stated.overhang().map(more -> " and " + more).orElse("")
              + " = "
              + Print.with(BeamLoad.pressed(stated), "N")
              + ", spread evenly");
    }
    return how;
  }

  private String hanging() {
    return "cantilever of "
        + Print.with(load.span(), "m")
        + (BeamLoad.shaped(stated) > 0 ? ", the force " + shape(stated) : "")
        + ": M = "
        + Print.with(load.moment(), "N·m")
        + " and V = "
        + Print.with(load.shear(), "N")
        + " at the support";
  }

  private String beyond(Overhang beam) {
    return "two supports "
        + Print.with(load.span(), "m")
        + " apart, "
        + Print.with(beam.beyond(), "m")
        + " beyond the second: R₁ = "
        + Print.with(beam.reaction(), "N")
        + ", M = "
        + Print.with(Math.abs(beam.moment(beam.span())), "N·m")
        + " over the second, greatest M = "
        + Print.with(load.moment(), "N·m")
        + ", V = "
        + Print.with(load.shear(), "N");
  }

  private static String shape(Load load) {
    return switch (load.shape().orElse(Shape.UNIFORM)) {
      case POINT -> "at the tip";
      case UNIFORM -> "spread evenly";
      case TRIANGULAR -> "spread as a triangle, greatest at the support";
      case ELLIPTIC -> "spread as a quarter ellipse";
    };
  }

  private String held() {
    return (BeamLoad.isSimple(stated) ? "simply supported" : "clamped at both ends")
        + " over "
        + Print.with(load.span(), "m")
        + (BeamLoad.shaped(stated) > 0 ? ", the force " + heldShape(stated) : "")
        + ": M = "
        + Print.with(load.moment(), "N·m")
        + ", V = "
        + Print.with(load.shear(), "N");
  }

  private static String heldShape(Load load) {
    return switch (load.shape().orElse(Shape.UNIFORM)) {
      case POINT -> "at the middle";
      case TRIANGULAR -> "spread as a triangle from nothing at one end";
      case UNIFORM, ELLIPTIC -> "spread evenly";
    };
  }

  private static String weight(BeamLoad.Own own) {
    return "self-weight of "
        + own.part().id()
        + ": w = m·g = "
        + Print.with(own.mass(), "kg/m")
        + " · 9.80665 m/s² = "
        + Print.with(own.mass() * SpanLoad.STANDARD_GRAVITY, "N/m")
        + ", as if level";
  }
}
