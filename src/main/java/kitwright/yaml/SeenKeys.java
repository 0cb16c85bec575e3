package kitwright.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys of one group so far. A record has a few, which a list serves best; a map takes more. */
final class SeenKeys {
  private static final int FEW = 24;

  private final List<Node.Scalar> few = new ArrayList<>(FEW);
  private final Map<String, Node.Scalar> many = new HashMap<>(0);
  private final List<String> twice = new ArrayList<>(0);

  /** The same key where it was seen before; remembers it where it was not. */
  Optional<Node.Scalar> before(Node.Scalar key) {
    for (Node.Scalar each : few) {
      if (each.text().equals(key.text())) {
        twice.add(key.text());
        return Optional.of(each);
      }
    }
    if (few.size() < FEW) {
      few.add(key);
      return Optional.empty();
    }
    Optional<Node.Scalar> first = Optional.ofNullable(many.putIfAbsent(key.text(), key));
    first.ifPresent(any -> twice.add(key.text()));
    return first;
  }

  /** Whether a key stands there more than once. */
  boolean isTwice(Node.Scalar key) {
    return !twice.isEmpty() && twice.contains(key.text());
  }
}
