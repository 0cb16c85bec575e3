package kitwright.assessment.joint;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.assessment.sheet.Faults;
import kitwright.ledger.Section;
import kitwright.value.Dimension;
import kitwright.value.Nearest;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The dimensions of a fastening, in m: lengths by name, and how many there are.
 *
 * @param lengths by name
 * @param count 1 where it is not said
 */
record Measures(Map<String, Double> lengths, double count) {
  private static final String COUNT = "count";

  /** m; more is a slip of the unit. */
  static final double GREATEST = 2;

  Measures {
    lengths = Map.copyOf(lengths);
  }

  /** What a section states; what is lacking, unknown or no length is a fault. */
  static Measures of(Section section, List<String> needs, List<String> may, Faults faults) {
    List<String> known = Stream.concat(needs.stream(), may.stream()).sorted().toList();
    Map<String, Double> lengths = new HashMap<>();
    section.dimensions().forEach((name, value) -> take(name, value, known, lengths, faults));
    needs.stream()
        .filter(need -> !lengths.containsKey(need))
        .forEach(need -> faults.add("dimensions", "It has no " + need, "Add it to “dimensions”."));
    Double count = lengths.remove(COUNT);
    return new Measures(lengths, count == null ? 1 : count);
  }

  private static void take(
      Ref name, Quantity value, List<String> known, Map<String, Double> lengths, Faults faults) {
    if (!known.contains(name.id())) {
      faults.add(
          name.at(),
          "It has no dimension “" + name + "”",
          Nearest.ofWords(name.id(), known)
              .map(near -> "Did you mean “" + near + "”?")
              .orElse("It has: " + String.join(", ", known) + "."));
      return;
    }
    Dimension is = value.unit().dimension();
    boolean counted = name.id().equals(COUNT);
    boolean fits =
        counted ? is == Dimension.RATIO || is == Dimension.COUNT : is == Dimension.LENGTH;
    boolean whole = !counted || isWhole(value.base());
    if (!fits || value.isNone() || !whole || (!counted && value.base() > GREATEST)) {
      faults.add(
          name.at(),
          "The " + name + " is " + value,
          counted ? "Write how many there are: count: 8." : "Write a length, such as 5 mm.");
      return;
    }
    lengths.put(name.id(), value.base());
  }

  /** There is no half a bolt. */
  static boolean isWhole(double count) {
    return count >= 1 && count == Math.rint(count);
  }

  double at(String name) {
    return maybe(name).orElse(0.0);
  }

  Optional<Double> maybe(String name) {
    return Optional.ofNullable(lengths.get(name));
  }
}
