package kitwright.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A way out that another beats: known to be nowhere worse and somewhere better. What nobody knows
 * beats nothing and is not beaten, nor does a way out beat any that nobody has assessed or signed.
 *
 * @param way name of the beaten one
 * @param by name of the other
 * @param reason what the other is, “cheaper, here sooner”
 */
public record Dominated(String way, String by, String reason) {

  /** Every beaten way with the first that beats it, in the order of the ways. */
  static List<Dominated> of(List<WayOut> ways) {
    List<Dominated> all = new ArrayList<>();
    for (WayOut beaten : ways) {
      ways.stream()
          .filter(other -> !other.name().equals(beaten.name()) && beats(other, beaten))
          .findFirst()
          .ifPresent(
              other -> all.add(new Dominated(beaten.name(), other.name(), why(other, beaten))));
    }
    return List.copyOf(all);
  }

  private static boolean beats(WayOut one, WayOut other) {
    return one.isReleased()
        && Measuring.allAtLeastAsGood(one, other)
        && Arrays.stream(Measuring.values()).anyMatch(each -> each.isBetter(one, other));
  }

  private static String why(WayOut one, WayOut other) {
    return Arrays.stream(Measuring.values())
        .filter(each -> each.isBetter(one, other))
        .map(Measuring::better)
        .collect(Collectors.joining(", "));
  }
}
