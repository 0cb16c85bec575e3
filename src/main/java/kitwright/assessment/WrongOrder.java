package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.material.Materials;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.WeakLink;
import kitwright.mechanics.scatter.Chance;

/** How likely it is that the protected part of a weak link breaks first. */
record WrongOrder(Case of) {
  /** The chance of the wrong order that is allowed where the assessment does not say. */
  private static final double LIKELY = 0.01;

  Row row(WeakLink link) {
    double most = link.chance().map(BigDecimal::doubleValue).orElse(LIKELY);
    List<String> still = still(link);
    Optional<Chance> chance =
        still.isEmpty()
            ? Chances.wrongOrder(of.assessment(), of.sections(), of.materials().branch())
            : Optional.empty();
    chance
        .filter(one -> one.probability() <= most && one.most() > most)
        .ifPresent(
            one ->
                still.add(
                    "the chance of the wrong order is "
                        + one.words()
                        + ", too near to what is allowed to be told by samples"));
    return new Row(
        Measure.LINK_CHANCE,
        Optional.empty(),
        chance.map(one -> new Figure(100 * one.probability(), Optional.of(one.words()))),
        Optional.of(new Row.Limit(Row.Limit.Side.AT_MOST, 100 * most)),
        still);
  }

  /** Parts of a weak link of which nobody says how they scatter. */
  private List<String> still(WeakLink link) {
    List<String> still = new ArrayList<>();
    List<Material> parts =
        link.parts()
            .flatMap(ref -> of.sections().apply(ref).stream())
            .flatMap(Used::materials)
            .flatMap(ref -> of.materials().material(ref).stream())
            .filter(one -> one.sort() != Material.Sort.GLUE)
            .toList();
    parts.forEach(one -> of.inputs().value(one, MaterialProperty.SCATTER));
    parts.stream()
        .filter(one -> !(Materials.scatter(one) > 0))
        .map(
            one ->
                one.id()
                    + " does not state its scatter, and which part of a weak link breaks first is a"
                    + " matter of chance")
        .distinct()
        .forEach(still::add);
    return still;
  }
}
