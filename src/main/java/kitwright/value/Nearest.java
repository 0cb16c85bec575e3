package kitwright.value;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The known word nearest to a misspelt one, by optimal string alignment distance. A name that
 * somebody gave may be near to any other ({@link #to}); a word of the program’s own is near in
 * meaning too, or not at all ({@link #ofWords}).
 */
public final class Nearest {
  /** Shorter ones are part of too many words. Common practice, no source. */
  private static final int SHORTEST_PART = 4;

  /** From so many letters on a word is misspelt by two slips of the hand. Common practice. */
  private static final int LONG = 7;

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

  /**
   * The known word that another is a form or a part of, or misspells by a slip or two behind its
   * first letter. A word that is right English misspells none, but for two letters swapped.
   */
  public static Optional<String> ofWords(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    return known.stream()
        .filter(each -> isFormOf(wanted, each.toLowerCase(Locale.ROOT)))
        .findFirst()
        .or(() -> onlyOf(known, each -> isPart(wanted, each)))
        .or(() -> known.stream().filter(each -> isSwapped(wanted, each)).findFirst())
        .or(() -> English.words().contains(wanted) ? Optional.empty() : misspelt(wanted, known));
  }

  /** One and several, or, of a longer word, now and then: item and items, receive and received. */
  private static boolean isFormOf(String one, String other) {
    String stem = stem(one);
    return (stem.length() >= SHORTEST_PART && stem.equals(stem(other)))
        || one.equals(other + "s")
        || other.equals(one + "s");
  }

  private static String stem(String word) {
    return word.replaceFirst("(s|es|d|ed|e)$", "");
  }

  /** Whether it is one of the parts that hyphens join. */
  private static boolean isPart(String part, String word) {
    return part.length() >= SHORTEST_PART
        && !word.startsWith("not-")
        && List.of(word.split("-")).contains(part);
  }

  private static boolean isSwapped(String wanted, String known) {
    return wanted.length() == known.length()
        && distance(wanted, known) == 1
        && wanted.chars().sum() == known.chars().sum();
  }

  private static Optional<String> misspelt(String wanted, Collection<String> known) {
    int slips = wanted.length() < LONG ? 1 : 2;
    return known.stream()
        .filter(each -> Math.min(each.length(), wanted.length()) > 2)
        .filter(each -> each.charAt(0) == wanted.charAt(0))
        .map(each -> new Candidate(each, distance(wanted, each.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.distance <= slips)
        .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
        .map(Candidate::word);
  }

  private static Optional<String> onlyOf(Collection<String> known, Predicate<String> test) {
    List<String> all = known.stream().filter(test).limit(2).toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  /** The known word that a shorter one is part of, where there is only one. */
  private static Optional<String> onlyOneWith(String part, Collection<String> known) {
    return part.length() < SHORTEST_PART
        ? Optional.empty()
        : onlyOf(known, each -> each.toLowerCase(Locale.ROOT).contains(part));
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
