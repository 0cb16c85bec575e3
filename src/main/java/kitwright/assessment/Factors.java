package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Assessment;
import kitwright.ledger.Material.Sort;

/**
 * The factors that an assessment puts on strengths and moduli. {@code laminate}, {@code core},
 * {@code metal} and {@code stiffness} (moduli of timber) name what they are for; every other name,
 * such as {@code moisture}, {@code duration} or {@code grade}, is for the strengths of timber and
 * plywood.
 *
 * @param all by name, as written
 */
record Factors(Map<String, Double> all) {
  private static final double MOST = 2;

  Factors {
    all = Collections.unmodifiableMap(new LinkedHashMap<>(all));
  }

  static Factors none() {
    return new Factors(Map.of());
  }

  static Factors of(Assessment assessment) {
    Map<String, Double> all = new LinkedHashMap<>();
    assessment.factors().forEach((name, value) -> all.put(name.id(), value.doubleValue()));
    all.values().removeIf(value -> !isPossible(value));
    return new Factors(all);
  }

  /** Above nought, at most 2. */
  static boolean isPossible(BigDecimal factor) {
    return isPossible(factor.doubleValue());
  }

  private static boolean isPossible(double factor) {
    return factor > 0 && factor <= MOST;
  }

  double strength(Sort sort) {
    return switch (sort) {
      case TIMBER, PLYWOOD ->
          all.entrySet().stream()
              .filter(factor -> ofTimber(factor.getKey()))
              .mapToDouble(Map.Entry::getValue)
              .reduce(1, (a, b) -> a * b);
      case CLOTH, LAMINATE, OTHER -> all.getOrDefault("laminate", 1.0);
      case CORE -> all.getOrDefault("core", 1.0);
      case METAL, BOLT -> all.getOrDefault("metal", 1.0);
      case FIBRE, RESIN, GLUE -> 1;
    };
  }

  double stiffness(Sort sort) {
    return sort == Sort.TIMBER || sort == Sort.PLYWOOD ? all.getOrDefault("stiffness", 1.0) : 1;
  }

  /** What each is for, a line for what they change, multiplied out. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    List<String> timber = new ArrayList<>();
    all.forEach(
        (name, value) -> {
          if (ofTimber(name)) {
            timber.add(name + " " + Print.number(value));
          } else {
            lines.add(subject(name) + " times " + Print.number(value));
          }
        });
    if (!timber.isEmpty()) {
      lines.add(
          "strengths of timber and plywood times "
              + String.join(" · ", timber)
              + (timber.size() > 1 ? " = " + Print.number(strength(Sort.TIMBER)) : ""));
    }
    return lines;
  }

  private static String subject(String name) {
    return switch (name) {
      case "laminate" -> "strengths of cloths and laminates";
      case "core" -> "strengths of cores";
      case "metal" -> "strengths of metals and bolts";
      default -> "moduli of timber and plywood";
    };
  }

  private static boolean ofTimber(String name) {
    return switch (name) {
      case "laminate", "core", "metal", "stiffness" -> false;
      default -> true;
    };
  }
}
