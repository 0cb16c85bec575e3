package kitwright.substitution;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What has changed between two statements, in words. */
public final class Changes {
  private Changes() {}

  /**
   * Each difference, a line: {@code Section blade, member: material was ash, is larch}. Empty where
   * both say the same.
   */
  public static List<String> between(String then, String now) {
    Map<String, String> before = values(then);
    Map<String, String> after = values(now);
    List<String> changes = new ArrayList<>();
    before.forEach(
        (path, value) -> {
          if (isWithin(path, before, after)) {
            changed(path, value, after.get(path)).ifPresent(changes::add);
          }
        });
    after.forEach(
        (path, value) -> {
          if (!before.containsKey(path) && isWithin(path, after, before)) {
            changes.add(path + (value.isEmpty() ? " is new" : " is " + value + ", was not there"));
          }
        });
    return List.copyOf(changes);
  }

  /** Whether what a line stands under is in both: of what is new or gone the head is told alone. */
  private static boolean isWithin(String path, Map<String, String> own, Map<String, String> other) {
    int end = path.lastIndexOf(", ");
    while (end >= 0) {
      String head = path.substring(0, end);
      if (own.containsKey(head) && !other.containsKey(head)) {
        return false;
      }
      end = path.lastIndexOf(", ", end - 1);
    }
    return true;
  }

  private static Optional<String> changed(String path, String then, @Nullable String now) {
    if (now == null) {
      return Optional.of(path + (then.isEmpty() ? " is gone" : " was " + then + ", is gone"));
    }
    return then.equals(now) ? Optional.empty() : Optional.of(path + " was " + then + ", is " + now);
  }

  /**
   * Every line by where it stands; of lines that stand at the same place, the later have numbers.
   */
  private static Map<String, String> values(String text) {
    Map<String, String> values = new LinkedHashMap<>();
    Map<String, Integer> seen = new HashMap<>();
    Deque<String> path = new ArrayDeque<>();
    for (String line : text.lines().filter(each -> !each.isBlank()).toList()) {
      int depth = (line.length() - line.stripLeading().length()) / 2;
      while (path.size() > depth) {
        path.removeLast();
      }
      String words = line.strip();
      int colon = words.indexOf(": ");
      String outer = path.isEmpty() ? "" : path.getLast() + ", ";
      String name = colon < 0 ? words : words.substring(0, colon);
      String place = numbered(outer + name, seen);
      values.put(place, colon < 0 ? "" : words.substring(colon + 2));
      path.addLast(place);
    }
    return values;
  }

  private static String numbered(String place, Map<String, Integer> seen) {
    int times = seen.merge(place, 1, Integer::sum);
    return times == 1 ? place : place + " " + times;
  }
}
