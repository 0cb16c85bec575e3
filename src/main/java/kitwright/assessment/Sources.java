package kitwright.assessment;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Assessment;

/**
 * The sources that an assessment names, each for what stands before its colon: “larch: test of the
 * yard, 2026-02-01” vouches for the values of larch and for nothing else.
 */
record Sources(List<String> all) {
  Sources {
    all = List.copyOf(all);
  }

  static Sources none() {
    return new Sources(List.of());
  }

  static Sources of(Assessment assessment) {
    return new Sources(assessment.sources());
  }

  /** What is said of a material or factor, if something is. */
  Optional<String> about(String name) {
    String head = name + ":";
    return all.stream()
        .map(String::strip)
        .filter(source -> source.startsWith(head))
        .map(source -> source.substring(head.length()).strip())
        .filter(source -> !source.isEmpty())
        .findFirst();
  }

  /** Whether something is said, but not of what. */
  boolean areOfNothing() {
    return all.stream().anyMatch(source -> !source.contains(":"));
  }
}
