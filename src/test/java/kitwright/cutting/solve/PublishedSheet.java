package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** One sheet and what may be cut from it, with exact answers by means that the product has not. */
record PublishedSheet(int length, int width, boolean limited, List<Piece> pieces) {

  /**
   * What may be cut.
   *
   * @param copies at most; where they are not limited, as many as the area could hold
   * @param turned whether it may also lie the other way
   */
  record Piece(int length, int width, int copies, long value, boolean turned) {
    Piece crossed() {
      return new Piece(/* length= */ width, /* width= */ length, copies, value, turned);
    }
  }

  /** A rectangle put together from pieces, so many of each. */
  private record Built(int length, int width, List<Integer> made, long value) {}

  /** From the OR-Library's lines: length, width, (most copies,) value. */
  static PublishedSheet read(Path file, boolean limited, boolean turned) {
    List<int[]> lines =
        ReferenceLists.lines(file).stream()
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .map(line -> Arrays.stream(line.split("\\s+")).mapToInt(Integer::parseInt).toArray())
            .toList();
    int length = lines.get(1)[0];
    int width = lines.get(1)[1];
    List<Piece> pieces = new ArrayList<>();
    for (int[] line : lines.subList(2, lines.size())) {
      int copies = limited ? line[2] : length * width / (line[0] * line[1]);
      pieces.add(new Piece(line[0], line[1], copies, line[line.length - 1], turned));
    }
    assertThat(lines.get(0)[0]).isEqualTo(pieces.size());
    return new PublishedSheet(length, width, limited, pieces);
  }

  /** Length for width; strips along it are strips across this one. */
  PublishedSheet crossed() {
    List<Piece> others = pieces.stream().map(Piece::crossed).toList();
    return new PublishedSheet(/* length= */ width, /* width= */ length, limited, others);
  }

  /**
   * The most value by straight cuts from edge to edge, however often turned.
   *
   * @param asked with limited copies, what is worth less is not looked for
   */
  long inAnyStages(long asked) {
    long[][] unlimited = unlimited();
    return limited ? builtUp(asked, outside(unlimited)) : unlimited[length][width];
  }

  /** Gilmore and Gomory, Operations Research 14 (1966) 1045-1074: the better of every first cut. */
  private long[][] unlimited() {
    long[][] best = new long[length + 1][width + 1];
    for (int x = 1; x <= length; x++) {
      for (int y = 1; y <= width; y++) {
        best[x][y] = Math.max(best[x - 1][y], best[x][y - 1]);
        for (Piece piece : bothWays()) {
          if (piece.length() <= x && piece.width() <= y) {
            best[x][y] = Math.max(best[x][y], piece.value());
          }
        }
        for (int cut = 1; cut <= x / 2; cut++) {
          best[x][y] = Math.max(best[x][y], best[cut][y] + best[x - cut][y]);
        }
        for (int cut = 1; cut <= y / 2; cut++) {
          best[x][y] = Math.max(best[x][y], best[x][cut] + best[x][y - cut]);
        }
      }
    }
    return best;
  }

  private List<Piece> bothWays() {
    List<Piece> both = new ArrayList<>(pieces);
    pieces.stream().filter(Piece::turned).map(Piece::crossed).forEach(both::add);
    return both;
  }

  /**
   * The most that can be cut beside a rectangle of the sheet when copies are not limited: whatever
   * holds the rectangle is grown by a cut on one side or the other.
   */
  private long[][] outside(long[][] unlimited) {
    long[][] most = new long[length + 1][width + 1];
    for (int x = length; x >= 0; x--) {
      for (int y = width; y >= 0; y--) {
        for (int more = 1; more <= length - x; more++) {
          most[x][y] = Math.max(most[x][y], most[x + more][y] + unlimited[more][y]);
        }
        for (int more = 1; more <= width - y; more++) {
          most[x][y] = Math.max(most[x][y], most[x][y + more] + unlimited[x][more]);
        }
      }
    }
    return most;
  }

  /**
   * Rectangles are put together two by two, end to end or side by side (after Wang, Operations
   * Research 31 (1983) 573-586); one that cannot come to what is asked, even with unlimited copies
   * beside it, is dropped (after Viswanathan and Bagchi, Operations Research 41 (1993) 768-776).
   * Both articles from memory.
   */
  private long builtUp(long asked, long[][] outside) {
    Map<List<Integer>, List<Built>> known = new HashMap<>();
    List<Built> all = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      int[] made = new int[pieces.size()];
      made[i] = 1;
      List<Integer> one = Arrays.stream(made).boxed().toList();
      keep(
          new Built(piece.length(), piece.width(), one, piece.value()), asked, outside, known, all);
    }
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j <= i; j++) {
        join(all.get(i), all.get(j), asked, outside, known, all);
      }
    }
    return all.stream().mapToLong(Built::value).max().orElse(0);
  }

  private void join(
      Built a,
      Built b,
      long asked,
      long[][] outside,
      Map<List<Integer>, List<Built>> known,
      List<Built> all) {
    boolean endToEnd = a.length() + b.length() <= length;
    boolean sideBySide = a.width() + b.width() <= width;
    if (!endToEnd && !sideBySide) {
      return;
    }
    List<Integer> made =
        IntStream.range(0, pieces.size()).mapToObj(i -> a.made().get(i) + b.made().get(i)).toList();
    if (IntStream.range(0, made.size()).anyMatch(i -> made.get(i) > pieces.get(i).copies())) {
      return;
    }
    long value = a.value() + b.value();
    if (endToEnd) {
      int wider = Math.max(a.width(), b.width());
      keep(new Built(a.length() + b.length(), wider, made, value), asked, outside, known, all);
    }
    if (sideBySide) {
      int longer = Math.max(a.length(), b.length());
      keep(new Built(longer, a.width() + b.width(), made, value), asked, outside, known, all);
    }
  }

  /** Unless it is worth too little, or the same pieces are known in a rectangle no larger. */
  private static void keep(
      Built built,
      long asked,
      long[][] outside,
      Map<List<Integer>, List<Built>> known,
      List<Built> all) {
    List<Built> same = known.computeIfAbsent(built.made(), made -> new ArrayList<>());
    boolean larger =
        same.stream().anyMatch(b -> b.length() <= built.length() && b.width() <= built.width());
    if (!larger && built.value() + outside[built.length()][built.width()] >= asked) {
      same.add(built);
      all.add(built);
    }
  }

  /** The most value in strips along the length, each filled with what is no wider. */
  long inStrips() {
    return limited ? inLimitedStrips() : inUnlimitedStrips();
  }

  /** Two sacks, one in the other. */
  private long inUnlimitedStrips() {
    long[] one = IntStream.rangeClosed(0, width).mapToLong(this::strip).toArray();
    long[] over = new long[width + 1];
    for (int y = 1; y <= width; y++) {
      over[y] = over[y - 1];
      for (int strip = 1; strip <= y; strip++) {
        over[y] = Math.max(over[y], one[strip] + over[y - strip]);
      }
    }
    return over[width];
  }

  private long strip(int widest) {
    long[] down = new long[length + 1];
    for (int x = 1; x <= length; x++) {
      down[x] = down[x - 1];
      for (Piece piece : bothWays()) {
        if (piece.width() <= widest && piece.length() <= x) {
          down[x] = Math.max(down[x], piece.value() + down[x - piece.length()]);
        }
      }
    }
    return down[length];
  }

  /**
   * For every choice of pieces the least width of strips that yields just these: one strip holds
   * the widest of them with some of the others, and the rest is a smaller choice.
   */
  private long inLimitedStrips() {
    List<Piece> widestFirst =
        pieces.stream().sorted(Comparator.comparingInt(p -> -p.width())).toList();
    int choices = widestFirst.stream().mapToInt(p -> p.copies() + 1).reduce(1, (a, b) -> a * b);
    int[] least = new int[choices];
    long best = 0;
    for (int choice = 1; choice < choices; choice++) {
      int[] made = new int[pieces.size()];
      long value = 0;
      int rest = choice;
      for (int i = pieces.size() - 1; i >= 0; i--) {
        made[i] = rest % (widestFirst.get(i).copies() + 1);
        rest /= widestFirst.get(i).copies() + 1;
        value += made[i] * widestFirst.get(i).value();
      }
      int widest = 0;
      while (made[widest] == 0) {
        widest++;
      }
      made[widest]--;
      int without = choice - weight(widestFirst, widest);
      int left = length - widestFirst.get(widest).length();
      least[choice] =
          widestFirst.get(widest).width() + least(widestFirst, made, widest, left, without, least);
      best = least[choice] <= width ? Math.max(best, value) : best;
    }
    return best;
  }

  /** What one of them adds to the number of a choice. */
  private static int weight(List<Piece> order, int of) {
    return order.stream().skip(of + 1L).mapToInt(p -> p.copies() + 1).reduce(1, (a, b) -> a * b);
  }

  /** The least width for what remains of a choice when more of it goes into a strip begun. */
  private static int least(
      List<Piece> order, int[] made, int from, int left, int choice, int[] least) {
    int best = least[choice];
    int number = choice;
    for (int i = from; i < order.size(); i++) {
      int weight = weight(order, i);
      int at = number;
      for (int n = 1; n <= made[i] && n * order.get(i).length() <= left; n++) {
        at -= weight;
        int rest = left - n * order.get(i).length();
        best = Math.min(best, least(order, made, i + 1, rest, at, least));
      }
    }
    return best;
  }
}
