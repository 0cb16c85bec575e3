package kitwright.cutting.solve;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Where there are very many kinds of stock, those that a search looks at: the cheapest for what
 * they give, and for every part the cheapest that it may come from. What is found is then proved of
 * nothing but these.
 */
final class Shortlist {
  private static final int MOST = 240;

  private Shortlist() {}

  /**
   * The kinds to look at, in their order; all of them where they are few.
   *
   * @param dearness what a kind costs for what it gives
   * @param fits whether a part, by its place, may come from a kind
   */
  static <K> List<K> of(
      List<K> kinds, int parts, ToDoubleFunction<K> dearness, BiPredicate<Integer, K> fits) {
    if (kinds.size() <= MOST) {
      return kinds;
    }
    List<Integer> cheapest =
        IntStream.range(0, kinds.size())
            .boxed()
            .sorted(Comparator.comparingDouble(k -> dearness.applyAsDouble(kinds.get(k))))
            .toList();
    TreeSet<Integer> chosen = new TreeSet<>(cheapest.subList(0, MOST / 2));
    int each = Math.max(1, MOST / 2 / Math.max(1, parts));
    for (int p = 0; p < parts; p++) {
      int part = p;
      cheapest.stream().filter(k -> fits.test(part, kinds.get(k))).limit(each).forEach(chosen::add);
    }
    return chosen.stream().map(kinds::get).toList();
  }
}
