package kitwright.value;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to a misspelt one, by optimal string alignment distance. */
public final class Nearest {
  /** Shorter ones are part of too many words. Common practice, no source. */
  private static final int SHORTEST_PART = 4;

  private Nearest() {}

  private record Candidate(String word, int distance) {}

  /** The nearest of the known words, if any is near enough to be what was meant. */
  public static Optional<String> to(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    int reach = Math.max(1, Math.min(4, (wanted.length() + 1) / 3));
    return known.stream()
        .filter(each -> Math.abs(each.length() - wanted.length()) <= reach)
        .map(each -> new Candidate(each, distance(wanted, each.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.distance <= reach)
        .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
        .map(Candidate::word)
        .or(() -> onlyOneWith(wanted, known));
  }

  /** The known word that a shorter one is part of, where there is only one. */
  private static Optional<String> onlyOneWith(String part, Collection<String> known) {
    List<String> longer =
        known.stream()
            .filter(each -> each.toLowerCase(Locale.ROOT).contains(part))
            .limit(2)
            .toList();
    return longer.size() == 1 && part.length() >= SHORTEST_PART
        ? Optional.of(longer.get(0))
        : Optional.empty();
  }

  /** Insertions, deletions, changes and swaps of neighbours that turn one word into the other. */
  static int distance(String a, String b) {
    int[][] table = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      table[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      table[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(table[i - 1][j] + 1, table[i][j - 1] + 1);
        best = Math.min(best, table[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        table[i][j] = swapped ? Math.min(best, table[i - 2][j - 2] + 1) : best;
      }
    }
    return table[a.length()][b.length()];
  }
}
