package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.laminate.Criterion;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Stiffness;

/** A stack as a sheet: stiffness and first ply failure in its plane by laminate theory. */
public final class LaminateMethod {
  private LaminateMethod() {}

  public static Outcome of(Part part) {
    Figures figures = new Figures();
    Laminate laminate = part.laminate();
    Stiffness stiffness = laminate.stiffness();
    figures.put(Measure.STRETCH, stiffness.a(1, 1) / 1e6);
    double free = laminate.inPlane().ex() * laminate.thickness();
    figures.put(Measure.STRETCH_FREE, free / 1e6);
    figures.put(Measure.STRETCH_ACROSS, stiffness.a(2, 2) / 1e6);
    figures.put(Measure.SHEAR_IN_PLANE, stiffness.a(3, 3) / 1e6);
    figures.put(Measure.BENDING, 1 / stiffness.inverse().d(1, 1));
    figures.put(Measure.PLATE_MASS, laminate.arealMass());
    figures.put(Measure.THICKNESS, laminate.thickness() * 1000);
    Laminate turned = laminate.rotated(90);
    List<Strength> strengths = new ArrayList<>();
    strength(figures, Measure.TENSION, part, laminate::tension, laminate.thickness(), strengths);
    strength(
        figures, Measure.COMPRESSION, part, laminate::compression, laminate.thickness(), strengths);
    strength(figures, Measure.TENSION_ACROSS, part, turned::tension, turned.thickness(), strengths);
    strength(
        figures,
        Measure.COMPRESSION_ACROSS,
        part,
        turned::compression,
        turned.thickness(),
        strengths);
    strength(
        figures, Measure.SHEAR_STRENGTH, part, laminate::shear, laminate.thickness(), strengths);
    if (part.stack().stream().anyMatch(layer -> layer.stuff().kind() == Kind.CORE)) {
      String how =
          part.id()
              + " has a core, on which its faces wrinkle before they are pushed in, and which is"
              + " there to bear bending: take method: panel, or section, which work that out";
      figures.lacks(Measure.COMPRESSION, how).lacks(Measure.COMPRESSION_ACROSS, how);
    }
    return new Outcome(figures, () -> List.of(working(part, steps(free, strengths))));
  }

  /** In kN/m, by maximum strain and by Tsai and Wu. */
  private record Strength(Measure measure, double one, double other) {
    Step step() {
      return new Step(
          measure.words(),
          "lower of maximum strain and Tsai–Wu, times thickness",
          Print.with(one, "kN/m") + " and " + Print.with(other, "kN/m"),
          Print.with(Math.min(one, other), "kN/m"));
    }
  }

  private static List<Step> steps(double free, List<Strength> strengths) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            Measure.STRETCH_FREE.words() + ": free to narrow and to shear, held flat",
            "E_x·t = 1/a₁₁, a = A⁻¹",
            "1 / " + Print.with(1e9 / free, "m/GN"),
            Print.with(free / 1e6, "MN/m")));
    strengths.forEach(strength -> steps.add(strength.step()));
    return steps;
  }

  /** By maximum strain and by Tsai and Wu; the lower counts. */
  private static void strength(
      Figures figures,
      Measure measure,
      Part part,
      Function<Criterion, OptionalDouble> stress,
      double thickness,
      List<Strength> strengths) {
    OptionalDouble strain = stress.apply(Criterion.MAXIMUM_STRAIN);
    OptionalDouble quadratic = stress.apply(Criterion.TSAI_WU);
    if (strain.isEmpty() || quadratic.isEmpty()) {
      part.stack().stream()
          .filter(layer -> layer.stuff().lamina().strength().isEmpty())
          .forEach(
              layer ->
                  figures.lacks(
                      measure,
                      layer.stuff().id()
                          + " ("
                          + layer.where()
                          + ") does not state all its strengths: tensile, compressive, both across,"
                          + " shear"));
      return;
    }
    double one = strain.getAsDouble() * thickness / 1000;
    double other = quadratic.getAsDouble() * thickness / 1000;
    String by = one <= other ? "by maximum strain" : "by Tsai and Wu";
    figures.put(measure, Figure.of(Math.min(one, other), "first ply failure " + by));
    strengths.add(new Strength(measure, one, other));
  }

  /** The plies as a table, then A, B and D. */
  public static Working working(Part part, List<Step> more) {
    List<List<String>> plies = new ArrayList<>();
    for (Part.StackLayer layer : part.stack()) {
      Lamina stuff = layer.stuff().lamina();
      plies.add(
          List.of(
              layer.where() + ", " + layer.stuff().id(),
              Print.number(layer.thickness() * 1000),
              Print.number(turn(layer.angle())),
              Print.number(stuff.e1() / 1e6) + ", " + Print.number(stuff.e2() / 1e6),
              Print.number(stuff.g12() / 1e6),
              Print.number(stuff.nu12())));
    }
    List<Step> steps = new ArrayList<>(StackSteps.of(part.laminate()));
    steps.addAll(more);
    return new Working(
        part.source().what().orElse(part.id()),
        List.of("layer", "t, mm", "angle, °", "E₁, E₂, MPa", "G₁₂, MPa", "ν₁₂"),
        plies,
        steps);
  }

  /** Between −90 and 90 degrees, as plies are named. */
  private static double turn(double angle) {
    double within = angle % 180;
    return within > 90 ? within - 180 : within;
  }
}
