package kitwright.history;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Who has touched which file.
 *
 * @param authors by path from the ledger's folder, in the order of their commits
 * @param uncommitted files that differ from the last commit
 */
public record Hands(Map<String, Set<String>> authors, Set<String> uncommitted) {
  /** How a change is told that nobody has committed yet. */
  public static final String NOT_COMMITTED = "not committed";

  /** Those who have touched a file. */
  Set<String> on(String file) {
    Set<String> all = new LinkedHashSet<>(authors.getOrDefault(file, Set.of()));
    if (uncommitted.contains(file)) {
      all.add(NOT_COMMITTED);
    }
    return all;
  }
}
