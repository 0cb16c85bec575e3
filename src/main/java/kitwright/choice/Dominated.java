package kitwright.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A way out that another beats: nowhere worse, somewhere better. What nobody knows counts as worse
 * than what is known, and a way out that nobody has assessed or signed beats nothing.
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

  /** What nobody knows of the other does not make this one stronger or lighter. */
  private static String why(WayOut one, WayOut other) {
    String known =
        Arrays.stream(Measuring.values())
            .filter(each -> each.of(other).isPresent() && each.isBetter(one, other))
            .map(Measuring::better)
            .collect(Collectors.joining(", "));
    return known.isEmpty() ? "known where the other is not" : known;
  }
}
