package kitwright.assessment.material;

import java.util.List;
import java.util.OptionalDouble;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.mechanics.laminate.Fibre;
import kitwright.mechanics.laminate.FibreContent;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.Matrix;

/** How thick, heavy and stiff one cured ply of a cloth is, as lines of a sheet. */
public final class CuredSteps {
  private CuredSteps() {}

  /**
   * The working of one cloth.
   *
   * @param weave in words
   * @param weight of the dry cloth, kg/m²
   * @param straight its fibre laid straight in the resin, crimp taken off
   * @param crimp share of the modulus that waviness leaves
   * @param moduli along, across and in shear, what the ply counts with; Pa
   * @param stated the modulus that the material itself states, if any
   */
  public static Working of(
      String cloth,
      String weave,
      double weight,
      FibreContent content,
      Fibre fibre,
      Matrix resin,
      Lamina straight,
      double crimp,
      double[] moduli,
      OptionalDouble stated) {
    double volume = content.byVolume();
    return new Working(
        "one ply of " + cloth + ", cured in " + resin.name(),
        List.of(),
        List.of(),
        List.of(
            new Step(
                "fibre by volume, from fibre by mass ψ",
                "φ = (ψ/ρ_f) / (ψ/ρ_f + (1 − ψ)/ρ_r)",
                "ψ = "
                    + Print.number(content.byMass())
                    + ", ρ_f = "
                    + Print.number(content.fibreDensity())
                    + ", ρ_r = "
                    + Print.with(content.matrixDensity(), "kg/m³"),
                Print.number(volume)),
            new Step(
                "thickness",
                "t = w / (ρ_f·φ)",
                Print.number(weight)
                    + " kg/m² / ("
                    + Print.number(content.fibreDensity())
                    + " · "
                    + Print.number(volume)
                    + ")",
                Print.mm(content.thickness(weight))),
            new Step(
                "mass with its resin",
                "m = w / ψ",
                Print.number(weight) + " / " + Print.number(content.byMass()),
                Print.with(content.laminateMass(weight), "kg/m²")),
            new Step(
                "modulus along a fibre",
                crimp < 1 ? "E_L = c·(φ·E_f + (1 − φ)·E_r)" : "E_L = φ·E_f + (1 − φ)·E_r",
                (crimp < 1 ? Print.number(crimp) + " · (" : "")
                    + Print.number(volume)
                    + " · "
                    + mpa(fibre.axial())
                    + " + "
                    + Print.number(1 - volume)
                    + " · "
                    + mpa(resin.modulus())
                    + (crimp < 1 ? ")" : ""),
                mpa(straight.e1())),
            new Step(
                "moduli across a fibre and in shear",
                "E_T, G_LT = M_r·(1 + ξ·η·φ)/(1 − η·φ), η = (M_f/M_r − 1)/(M_f/M_r + ξ)",
                "Halpin and Tsai, ξ = 2 and 1",
                Print.number(straight.e2() / 1e6) + ", " + mpa(straight.g12())),
            new Step(
                stated.isPresent()
                    ? "the ply in its own axes, with what the material itself states"
                    : "the ply in its own axes, its fibre directions by laminate theory",
                "E₁, E₂, G₁₂",
                weave,
                Print.number(moduli[0] / 1e6)
                    + ", "
                    + Print.number(moduli[1] / 1e6)
                    + ", "
                    + mpa(moduli[2]))));
  }

  private static String mpa(double pascal) {
    return Print.with(pascal / 1e6, "MPa");
  }
}
