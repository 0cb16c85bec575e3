package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.load.Deflection;

/** A beam: both axes by the transformed section, first failure each way, shear, torsion, mass. */
public final class SectionMethod {
  private SectionMethod() {}

  /**
   * The figures of a part.
   *
   * @param bending of the part, along its height
   * @param sideways whether figures across are asked for
   * @param load without its factor
   */
  public static Outcome of(
      Part part, Bending bending, boolean sideways, Optional<BeamLoad> load, double factor) {
    Figures figures = new Figures();
    figures.put(Measure.STIFFNESS, bending.stiffness());
    figures.put(Measure.SHEAR_STIFFNESS, bending.shearStiffness());
    part.beam().torsion().ifPresent(gj -> figures.put(Measure.TORSION, gj));
    if (part.beam().torsion().isEmpty()) {
      figures.lacks(Measure.TORSION, part.id() + " is of a kind whose torsion is not known here");
    }
    Capacity sagging = bending.moment(Sense.SAGGING);
    Capacity hogging = bending.moment(Sense.HOGGING);
    Capacity shear = bending.shear();
    figures.put(Measure.MOMENT_SAGGING, sagging);
    figures.put(Measure.MOMENT_HOGGING, hogging);
    figures.put(Measure.SHEAR, shear);
    Optional<Step> notched = NotchedEnd.put(part, figures);
    if (bending.isSkew()) {
      String how =
          part.id() + " bends sideways under its load, and its shear is not worked out here";
      figures.lacks(Measure.SHEAR, how).lacks(Measure.SHEAR_STIFFNESS, how);
    }
    if (part.beam().open() && part.beam().lopsided()) {
      figures.lacks(
          Measure.SHEAR,
          part.id()
              + " is open at one side and twists under its load, which is not worked out here: turn"
              + " it so that both its sides are alike, or close it to a box");
    }
    if (sideways && part.beam().parted()) {
      String how = part.id() + " is of parts side by side, which bend sideways each on its own";
      figures
          .lacks(Measure.STIFFNESS_ACROSS, how)
          .lacks(Measure.MOMENT_ACROSS, how)
          .lacks(Measure.SHEAR_ACROSS, how);
    } else if (sideways) {
      across(figures, Bending.of(part.beam().turned()));
    }
    figures.put(Measure.MASS, part.beam().massPerLength());
    figures.put(Measure.THICKNESS, part.thickness() * 1000);
    Optional<Loaded> loaded = load.map(some -> loaded(figures, part, some, factor, bending));
    return new Outcome(
        figures,
        () ->
            List.of(
                SectionSteps.working(
                    part,
                    bending,
                    shear,
                    sagging,
                    hogging,
                    Stream.concat(
                            notched.stream(), loaded.map(Loaded::steps).orElse(List.of()).stream())
                        .toList())));
  }

  private static void across(Figures figures, Bending across) {
    figures.put(Measure.STIFFNESS_ACROSS, across.stiffness());
    Capacity left = across.moment(Sense.SAGGING);
    Capacity right = across.moment(Sense.HOGGING);
    figures.put(
        Measure.MOMENT_ACROSS, left.value().orElse(0) <= right.value().orElse(0) ? left : right);
    figures.put(Measure.SHEAR_ACROSS, across.shear());
  }

  /** What a load does to the part. */
  private record Loaded(
      BeamLoad load,
      double factor,
      Reserve reserve,
      Deflection deflection,
      Sideways aside,
      Optional<ThrustAndTorque> more) {
    List<Step> steps() {
      List<Step> steps = new ArrayList<>(more.map(ThrustAndTorque::steps).orElse(List.of()));
      aside.step().ifPresent(steps::add);
      if (more.isEmpty()) {
        reserve.step(load, factor).ifPresent(steps::add);
      } else {
        reserve
            .figure()
            .ifPresent(
                least ->
                    steps.add(
                        new Step(
                            "reserve factor, all loads together",
                            "(bending with thrust)² + (shear + torsion)² = 1 at failure",
                            least.governing().orElse(""),
                            Print.number(least.value()))));
      }
      steps.add(
          new Step(
              "deflection under the load, no safety factor",
              "w = ∫ M·m/EI dx + ∫ V·v/GA dx",
              "bending "
                  + Print.mm(deflection.bending())
                  + " + shear "
                  + Print.mm(deflection.shear()),
              Print.mm(deflection.total())));
      return steps;
    }
  }

  private static Loaded loaded(
      Figures figures, Part part, BeamLoad load, double factor, Bending bending) {
    Optional<ThrustAndTorque> more = ThrustAndTorque.of(part, bending, load);
    more.ifPresent(one -> one.put(figures));
    Sideways aside = Sideways.of(part, bending, load);
    Reserve plain = Reserve.of(figures, load, factor, aside);
    if (more.isPresent() && aside.share() < 1) {
      plain
          .lacking()
          .add(
              part.id()
                  + " may tip over sideways, which is not worked out with a thrust or torque");
    }
    Reserve reserve =
        more.map(
                one ->
                    new Reserve(
                        one.reserve(figures, factor),
                        Optional.empty(),
                        new ArrayList<>(
                            Stream.concat(plain.lacking().stream(), one.lacking().stream())
                                .toList())))
            .orElse(plain);
    stocky(part, load).ifPresent(reserve.lacking()::add);
    reserve
        .figure()
        .ifPresent(
            figure -> {
              figures.put(Measure.RESERVE, figure);
              figures.put(Measure.FIRST_FAILURE, figure);
            });
    reserve
        .lacking()
        .forEach(
            what -> {
              figures.lacks(Measure.RESERVE, what);
              figures.lacks(Measure.FIRST_FAILURE, what);
            });
    boolean least = figures.isAtLeast(Measure.SHEAR) || figures.isAtLeast(Measure.TORQUE);
    if (least && (more.isPresent() || plain.measure().filter(Measure.SHEAR::equals).isPresent())) {
      figures.atLeast(Measure.FIRST_FAILURE).atLeast(Measure.RESERVE);
    }
    Deflection deflection = load.deflection(bending.stiffness(), bending.shearStiffness());
    double grows = more.map(ThrustAndTorque::grows).orElse(1.0);
    if (Double.isInfinite(grows)) {
      figures.lacks(
          Measure.DEFLECTION, part.id() + " buckles under the thrust: it gives without bound");
    } else {
      figures.put(Measure.DEFLECTION, 1000 * grows * deflection.total());
    }
    return new Loaded(load, factor, reserve, deflection, aside, more);
  }

  /**
   * Why nothing is told of a part hardly longer than deep: its sections do not stay plane, and it
   * is crushed where it is held.
   *
   * @see "EN 1992-1-1, 5.3.1: a beam is three times as long as deep, from memory"
   */
  private static Optional<String> stocky(Part part, BeamLoad load) {
    boolean hangs = load.cantilever().isPresent();
    double least = hangs ? 1.5 : 3;
    return load.moment() > 0 && load.span() < least * part.thickness() * (1 - 1e-9)
        ? Optional.of(
            part.id()
                + " is too short for its depth to be worked out as a beam: its span is less than "
                + Print.number(least)
                + " times that")
        : Optional.empty();
  }

  /** The least of moment and shear capacity over what the load asks. */
  private record Reserve(Optional<Figure> figure, Optional<Measure> measure, List<String> lacking) {
    Optional<Step> step(BeamLoad load, double factor) {
      return figure.map(
          least -> {
            boolean sheared = measure.filter(Measure.SHEAR::equals).isPresent();
            double asked = sheared ? load.shear() : load.moment();
            String unit = sheared ? "N" : "N·m";
            return new Step(
                "reserve factor",
                sheared ? "V at first failure / (γ·V)" : "M at first failure / (γ·M)",
                Print.with(least.value() * asked * factor, unit)
                    + " / ("
                    + Print.number(factor)
                    + " · "
                    + Print.with(asked, unit)
                    + ")",
                Print.number(least.value()));
          });
    }

    static Reserve of(Figures figures, BeamLoad load, double factor, Sideways aside) {
      List<String> lacking = new ArrayList<>(aside.lacking().stream().toList());
      Optional<Figure> least = Optional.empty();
      Optional<Measure> set = Optional.empty();
      for (Measure measure :
          List.of(Measure.MOMENT_SAGGING, Measure.MOMENT_HOGGING, Measure.SHEAR)) {
        double asked = factor * (measure == Measure.SHEAR ? load.shear() : load.moment());
        lacking.addAll(figures.lacking(measure));
        Optional<Figure> at =
            figures
                .of(measure)
                .filter(any -> asked > 0)
                .map(have -> new Figure(have.value() / asked, have.governing()))
                .map(have -> measure == Measure.SHEAR ? have : aside.of(have));
        if (at.isPresent() && (least.isEmpty() || at.get().value() < least.get().value())) {
          least = at;
          set = Optional.of(measure);
        }
      }
      return new Reserve(least, set, lacking);
    }
  }
}
