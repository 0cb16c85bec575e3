package kitwright.substitution;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.ledger.Assessment;
import kitwright.value.Ref;

/** Whether an assessment asks what a structural part must be asked. */
final class Asked {
  private static final Set<String> STRENGTHS = Set.of("strength", "moment");

  private Asked() {}

  /**
   * What a structural assessment does not ask for: stiffness and strength against what was drawn,
   * and a reserve where a load is stated. Of bolts no stiffness is worked out.
   */
  static List<String> missing(Assessment assessment) {
    Set<String> asked =
        assessment.require().keySet().stream().map(Ref::id).collect(Collectors.toSet());
    List<String> missing = new ArrayList<>();
    if (assessment.method() != Assessment.Method.BOLT && !asked.contains("stiffness")) {
      missing.add("stiffness");
    }
    if (STRENGTHS.stream().noneMatch(asked::contains)) {
      missing.add("strength");
    }
    if (assessment.load().isPresent() && !asked.contains("reserve")) {
      missing.add("reserve");
    }
    return List.copyOf(missing);
  }

  /** Limits below 1, which accept less than was drawn or than the load asks, without a reason. */
  static Map<Ref, BigDecimal> unexplained(Assessment assessment) {
    Map<Ref, BigDecimal> all = new LinkedHashMap<>(assessment.require());
    all.entrySet()
        .removeIf(
            limit ->
                limit.getValue().compareTo(BigDecimal.ONE) >= 0
                    || isExplained(limit.getKey(), assessment));
    return all;
  }

  private static boolean isExplained(Ref measure, Assessment assessment) {
    return assessment.lessBecause().entrySet().stream()
        .anyMatch(
            reason -> reason.getKey().id().equals(measure.id()) && !reason.getValue().isBlank());
  }
}
