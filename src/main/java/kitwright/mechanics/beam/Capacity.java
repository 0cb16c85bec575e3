package kitwright.mechanics.beam;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a section can carry before it first fails.
 *
 * @param limits every mode that was checked, the first to fail first
 * @param missing what could not be checked; a capacity that leans on it cannot be told
 */
public record Capacity(List<Limit> limits, List<Missing> missing) {
  public Capacity {
    limits = inOrder(limits);
    missing = missing.isEmpty() ? List.of() : missing.stream().distinct().toList();
  }

  private static List<Limit> inOrder(List<Limit> limits) {
    Limit[] sorted = limits.toArray(new Limit[0]);
    Arrays.sort(sorted, Comparator.comparingDouble(Limit::capacity));
    return List.of(sorted);
  }

  /** The limit that comes first, if any could be checked. */
  public Optional<Limit> governing() {
    return limits.isEmpty() ? Optional.empty() : Optional.of(limits.get(0));
  }

  /** Whether it may bear more: what comes first is a value that is reached at least. */
  public boolean atLeast() {
    return !limits.isEmpty() && limits.get(0).mode() == FailureMode.SHEARED_WALL;
  }

  /** N·m, or N for shear; empty where nothing could be checked. */
  public OptionalDouble value() {
    return limits.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(limits.get(0).capacity());
  }
}
