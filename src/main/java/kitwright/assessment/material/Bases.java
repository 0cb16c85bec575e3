package kitwright.assessment.material;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.sheet.Input;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.MaterialProperty;
import kitwright.mechanics.scatter.Scattered;

/**
 * What sort of values the strengths of an assessment are: means, or values that few pieces fall
 * below. Unlike ones cannot be compared, unless every mean states how it scatters: then it counts
 * with what one piece in twenty falls below, like the others.
 *
 * @param means materials whose strengths are means
 * @param low materials whose strengths are characteristic or least
 * @param unsaid materials that do not say
 */
public record Bases(Set<String> means, Set<String> low, Set<String> unsaid) {
  private static final Set<MaterialProperty> STRENGTHS =
      Set.of(
          MaterialProperty.TENSILE_STRENGTH,
          MaterialProperty.TENSILE_STRENGTH_ACROSS,
          MaterialProperty.COMPRESSIVE_STRENGTH,
          MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS,
          MaterialProperty.BENDING_STRENGTH,
          MaterialProperty.SHEAR_STRENGTH,
          MaterialProperty.SHEAR_STRENGTH_ACROSS,
          MaterialProperty.BOND_STRENGTH,
          MaterialProperty.YIELD_STRENGTH,
          MaterialProperty.PROOF_STRESS);

  /** Of the strengths leaned on. */
  public static Bases of(List<Input> inputs) {
    Map<String, Optional<Basis>> all = new LinkedHashMap<>();
    inputs.stream()
        .filter(input -> STRENGTHS.contains(input.property()))
        .forEach(input -> all.putIfAbsent(input.material(), input.basis()));
    return of(all);
  }

  /** Of the materials that sections are of, as far as they state a strength. */
  public static Bases ofMaterials(List<Material> materials) {
    Map<String, Optional<Basis>> all = new LinkedHashMap<>();
    materials.stream()
        .filter(one -> one.properties().keySet().stream().anyMatch(STRENGTHS::contains))
        .forEach(one -> all.putIfAbsent(one.id(), one.basis()));
    return of(all);
  }

  private static Bases of(Map<String, Optional<Basis>> all) {
    Set<String> means = new LinkedHashSet<>();
    Set<String> low = new LinkedHashSet<>();
    Set<String> unsaid = new LinkedHashSet<>();
    all.forEach(
        (id, basis) -> basis.map(some -> some == Basis.MEAN ? means : low).orElse(unsaid).add(id));
    return new Bases(means, low, unsaid);
  }

  /** Whether strengths of more than one sort stand side by side. */
  public boolean mixed() {
    int sorts = (means.isEmpty() ? 0 : 1) + (low.isEmpty() ? 0 : 1) + (unsaid.isEmpty() ? 0 : 1);
    return sorts > 1;
  }

  /** What makes every mean the value that one in twenty falls below, where that is needed. */
  public Map<String, Double> toLow(List<Material> materials) {
    Map<String, Double> factors = new HashMap<>();
    if (mixed() && unsaid.isEmpty()) {
      for (Material one : materials) {
        if (means.contains(one.id()) && Materials.scatter(one) > 0) {
          factors.put(one.id(), spread(one).quantile(Spreads.BELOW));
        }
      }
    }
    return factors;
  }

  /** What makes every characteristic or least value a mean, of those that state their scatter. */
  public static Map<String, Double> toMean(List<Material> materials) {
    Map<String, Double> factors = new HashMap<>();
    for (Material one : materials) {
      boolean low = one.basis().filter(basis -> basis != Basis.MEAN).isPresent();
      if (low && Materials.scatter(one) > 0) {
        factors.put(one.id(), Spreads.above(spread(one)).mean());
      }
    }
    return factors;
  }

  private static Scattered spread(Material one) {
    return new Scattered(1, Materials.scatter(one), Scattered.Shape.LOGNORMAL);
  }

  /** Why strengths cannot be compared, each a clause; nothing where they can. */
  public List<String> lacking(Map<String, Double> converted) {
    if (!mixed()) {
      return List.of();
    }
    if (!unsaid.isEmpty()) {
      return List.of(
          String.join(", ", unsaid)
              + (unsaid.size() > 1 ? " do" : " does")
              + " not say what the strengths are, and others are known: write basis: mean,"
              + " characteristic or minimum");
    }
    List<String> bare = means.stream().filter(id -> !converted.containsKey(id)).toList();
    return bare.isEmpty()
        ? List.of()
        : List.of(
            sides()
                + ", which cannot be compared: state the scatter of "
                + String.join(", ", bare)
                + ", or values of one kind");
  }

  private String sides() {
    return "strengths of "
        + String.join(", ", means)
        + " are means, those of "
        + String.join(", ", low)
        + " characteristic or least values";
  }

  /** What they are and what they are not, a clause. */
  public String words() {
    if (mixed()) {
      return unsaid.isEmpty()
          ? sides() + ": the means count with what one piece in twenty falls below"
          : "what the strengths of " + String.join(", ", unsaid) + " are is not said";
    }
    if (!unsaid.isEmpty()) {
      return "no material says whether its strengths are means or least values; they are taken as"
          + " of one kind, and are no design values";
    }
    return low.isEmpty()
        ? "mean values are compared with mean values; they are no design values"
        : "characteristic or least values are compared with their like; no safety factor is in"
            + " them";
  }
}
