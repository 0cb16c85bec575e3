package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.assessment.material.Bases;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.OnSide;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.material.Materials;
import kitwright.assessment.sheet.Inputs;
import kitwright.ledger.Assessment;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.value.Ref;

/**
 * An assessment that is being worked out.
 *
 * @param materials of this assessment
 * @param factors on the strengths that both sides are compared by
 * @param linked on their means, which tell what of a weak link breaks first
 * @param unlike why the strengths of its materials are not of one kind
 * @param lacking grows by whatever keeps the verdict open
 * @param failing grows by whatever fails without a number
 */
record Case(
    Assessment assessment,
    Function<Ref, Optional<Section>> sections,
    Materials materials,
    Factors factors,
    Factors linked,
    List<String> unlike,
    List<String> lacking,
    List<String> failing) {
  /**
   * @param materials of this assessment, none taken as yet
   */
  static Case of(
      Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    List<Material> used = new Used(assessment, sections, materials).all();
    Bases bases = Bases.ofMaterials(used);
    Map<String, Double> low = bases.toLow(used);
    used.stream()
        .filter(one -> low.containsKey(one.id()))
        .forEach(one -> materials.inputs().value(one, MaterialProperty.SCATTER));
    Factors stated = Factors.of(assessment);
    return new Case(
        assessment,
        sections,
        materials,
        stated.on(low),
        stated.on(Bases.toMean(used)),
        bases.lacking(low),
        new ArrayList<>(),
        new ArrayList<>());
  }

  Used used() {
    return new Used(assessment, sections, materials);
  }

  Optional<Section> section(Optional<Ref> ref) {
    return ref.flatMap(sections);
  }

  Inputs inputs() {
    return materials.inputs();
  }

  /** Notes what keeps the verdict open. */
  void lacks(String what) {
    lacking.add(what);
  }

  OnSide factors(Side side) {
    return new OnSide(factors, side);
  }

  /** The factor of safety of the load. */
  double safety() {
    return assessment.load().map(some -> some.safety().doubleValue()).orElse(1.0);
  }
}
