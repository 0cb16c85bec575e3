package kitwright.assessment.method;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Region;
import kitwright.mechanics.beam.Ring;
import kitwright.mechanics.beam.ThinFaces;

/** How the figures of a beam came about, as lines of a sheet that a person can redo by hand. */
public final class SectionSteps {
  private SectionSteps() {}

  public static Working working(
      Part part,
      Bending bending,
      Capacity shear,
      Capacity sagging,
      Capacity hogging,
      List<Step> more) {
    List<List<String>> pieces = new ArrayList<>();
    double first = 0;
    double second = 0;
    // Heights count from the lowest point, so that a person can check the sums with a rule in hand.
    double foot = part.beam().bounds().minZ();
    for (Region region : part.beam().regions()) {
      double e = region.material().axial();
      var m = region.moments();
      double z = m.z() - foot * m.area();
      double zz = m.zz() - 2 * foot * m.z() + foot * foot * m.area();
      first += e * z;
      second += e * zz;
      pieces.add(
          List.of(
              region.where() + ", " + region.material().name(),
              Print.number(e / 1e6),
              Print.number(m.area() * 1e6),
              Print.number(z / m.area() * 1000),
              Print.number(e * m.area() / 1e3),
              Print.number(e * zz)));
    }
    double ea = bending.axialStiffness();
    double height = bending.neutralAxis() - foot;
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "neutral axis above the lowest point",
            "z₀ = Σ E·A·z / Σ E·A",
            Print.number(first) + " / " + Print.number(ea),
            Print.mm(height)));
    steps.add(
        new Step(
            "bending stiffness",
            "EI = Σ E·I − z₀²·Σ E·A",
            Print.number(second) + " − " + Print.number(height) + "² · " + Print.number(ea),
            Print.with(bending.stiffness(), "N·m²")));
    steps.add(
        new Step(
            "shear stiffness",
            "1/GA = ∫ (Σ E·S / EI)² / (Σ G·b) dz",
            "numerically, piece by piece",
            Print.with(bending.shearStiffness(), "N")));
    torsion(part, steps);
    capacity("moment, tension below", "N·m", sagging, steps);
    capacity("moment, tension above", "N·m", hogging, steps);
    capacity("shear force", "N", shear, steps);
    peak(shear, bending, foot, steps);
    mass(part, steps);
    part.beam().thinFaces().ifPresent(thin -> thin(thin, bending, steps));
    steps.addAll(more);
    return new Working(
        part.source().what().orElse(part.id()),
        List.of("piece", "E, MPa", "A, mm²", "z, mm", "E·A, kN", "E·I, N·m²"),
        pieces,
        steps);
  }

  /** Every limit, the first to fail first; each with how far above the first it lies. */
  private static void capacity(String what, String unit, Capacity capacity, List<Step> steps) {
    double least = capacity.value().orElse(1);
    boolean first = true;
    for (Limit limit : capacity.limits()) {
      double above = limit.capacity() / least - 1;
      steps.add(
          new Step(
              what + (first ? " at first failure: " : ": ") + Figures.words(limit),
              unit.equals("N") ? "V = τ / (Σ E·S / (EI·b))" : "M = σ·EI / (E·|z − z₀|)",
              Print.number(limit.allowable() / 1e6)
                  + " MPa / "
                  + Print.number(limit.perUnit() / 1e6)
                  + " MPa per "
                  + unit
                  + (first ? "" : " (" + Print.margin(above) + " on the first)"),
              Print.with(limit.capacity(), unit)));
      first = false;
    }
  }

  /** Where the shear that sets the capacity is greatest, with what its formula takes. */
  private static void peak(Capacity shear, Bending bending, double foot, List<Step> steps) {
    shear
        .governing()
        .flatMap(limit -> bending.shearPeak(limit.where()))
        .ifPresent(
            peak ->
                steps.add(
                    new Step(
                        "where " + peak.where() + " is sheared most",
                        "τ = V·Σ E·S / (EI·b), Σ E·S of what lies above",
                        "level "
                            + Print.mm((peak.level() - foot))
                            + ", Σ E·S "
                            + Print.with(peak.first(), "N·m")
                            + ", EI "
                            + Print.with(bending.stiffness(), "N·m²")
                            + ", b "
                            + Print.mm(peak.width()),
                        Print.with(peak.perUnit() / 1e6, "MPa per N"))));
  }

  private static void torsion(Part part, List<Step> steps) {
    part.beam()
        .torsion()
        .ifPresent(
            gj ->
                steps.add(
                    new Step(
                        "torsional stiffness",
                        twisting(part),
                        moduli(part)
                            + part.beam().cell().stream()
                                .mapToObj(a -> closed(a, gj))
                                .collect(joining()),
                        Print.with(gj, "N·m²"))));
  }

  private static String twisting(Part part) {
    List<Region> regions = part.beam().regions();
    boolean one = regions.size() == 1;
    if (one && regions.get(0) instanceof Ring) {
      return "GJ = G·π/32·(d⁴ − d_i⁴)";
    }
    if (part.beam().cell().isPresent()) {
      return "GJ = 4·A²/∮ ds/(G·t) along the middle of the closed wall";
    }
    return part.beam().solidTimber() || (one && !regions.get(0).hollow())
        ? "GJ = G·h·b³/3·(1 − 192/π⁵·b/h·Σ tanh(nπh/2b)/n⁵), n odd"
        : "GJ = Σ G·b·t³/3 of open walls";
  }

  private static String moduli(Part part) {
    return "G of "
        + part.beam().regions().stream()
            .map(Region::material)
            .map(m -> m.name() + " " + Print.with(m.shearModulus() / 1e6, "MPa"))
            .distinct()
            .collect(joining(", "));
  }

  private static String closed(double cell, double gj) {
    return ", A "
        + Print.with(cell * 1e6, "mm²")
        + ", ∮ ds/(G·t) "
        + Print.with(4 * cell * cell / gj * 1e6, "mm²/N");
  }

  private static void mass(Part part, List<Step> steps) {
    List<String> terms = new ArrayList<>();
    for (Region region : part.beam().regions()) {
      terms.add(
          Print.number(region.material().density())
              + " · "
              + Print.number(region.moments().area() * 1e6));
    }
    steps.add(
        new Step(
            "mass of a metre, without glue",
            "m = Σ ρ·A, kg/m³ and mm²",
            "(" + String.join(" + ", terms) + ") · 10⁻⁶",
            Print.with(part.beam().massPerLength(), "kg/m")));
  }

  private static void thin(ThinFaces thin, Bending bending, List<Step> steps) {
    ThinFaceSteps.compare(
        "bending stiffness by the thin-face formula, to compare",
        "EI ≈ b·d²·E₁t₁·E₂t₂/(E₁t₁ + E₂t₂)",
        thin.bendingStiffness(),
        bending.stiffness(),
        "N·m²",
        steps);
    ThinFaceSteps.compare(
        "shear stiffness by the thin-face formula, to compare",
        "GA ≈ G_c·b·d²/t_c",
        thin.shearStiffness(),
        bending.shearStiffness(),
        "N",
        steps);
  }
}
