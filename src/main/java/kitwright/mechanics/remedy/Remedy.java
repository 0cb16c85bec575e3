package kitwright.mechanics.remedy;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitwright.mechanics.Refuse;

/**
 * Searches a menu for the cheapest additions that meet every requirement. Whether more is always
 * better is not taken for granted (a ply in the wrong place can move the break), so every
 * combination cheaper than the answer is tried, in order of price: the first that serves is the
 * least, and nothing dearer is looked at.
 *
 * @param menu what may be added
 */
public record Remedy(List<Addition> menu) {
  /** More combinations than this are refused rather than left to run for hours. */
  private static final long MOST = 5_000_000;

  /**
   * An answer.
   *
   * @param counts how many of each, in the order of the menu
   * @param tried how many combinations were looked at, up to the answer
   */
  public record Found(List<Integer> counts, int tried) {}

  public Remedy {
    menu = List.copyOf(menu);
    Refuse.unless(!menu.isEmpty(), "a menu has a line");
    long all = 1;
    for (var line : menu) {
      all *= line.most() + 1;
      Refuse.unless(all <= MOST, () -> "more than " + MOST + " combinations: shorten the menu");
    }
  }

  /** How many combinations there are, adding nothing among them. */
  public int combinations() {
    return menu.stream().mapToInt(l -> l.most() + 1).reduce(1, (a, b) -> a * b);
  }

  /**
   * The cheapest that serves; of equal price the one that adds fewer, then earlier lines. Dearer
   * ones may be looked at meanwhile, on other cores, and change nothing.
   *
   * @param serves asked from several threads at once
   */
  public Optional<Found> cheapest(Predicate<int[]> serves) {
    List<Candidate> candidates = candidates();
    var first =
        IntStream.range(0, candidates.size())
            .parallel()
            .filter(i -> serves.test(counts(candidates.get(i).number())))
            .findFirst();
    return first.stream().mapToObj(i -> found(candidates.get(i), i + 1)).findFirst();
  }

  private Found found(Candidate candidate, int tried) {
    var counts = Arrays.stream(counts(candidate.number())).boxed().toList();
    return new Found(counts, tried);
  }

  /** A combination by its number: the counts are its digits, the last line the highest. */
  private record Candidate(int number, double price, int pieces) {}

  private List<Candidate> candidates() {
    return IntStream.range(0, combinations())
        .mapToObj(this::candidate)
        .sorted(Comparator.comparingDouble(Candidate::price).thenComparingInt(Candidate::pieces))
        .toList();
  }

  private Candidate candidate(int number) {
    int[] counts = counts(number);
    double price = 0;
    int pieces = 0;
    for (int i = 0; i < counts.length; i++) {
      price += counts[i] * menu.get(i).price();
      pieces += counts[i];
    }
    return new Candidate(number, price, pieces);
  }

  private int[] counts(int number) {
    return Addition.counts(number, menu);
  }
}
