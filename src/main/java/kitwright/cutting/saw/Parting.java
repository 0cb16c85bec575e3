package kitwright.cutting.saw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the cuts that part a piece of stock into the parts that lie on it: every cut straight, from
 * edge to edge. Where several orders will do, that which leaves the most useful left-overs, the
 * largest first; then that with the fewest cuts.
 */
public final class Parting {
  private static final Use.Waste WASTE = new Use.Waste();

  /** One way to part a rectangle, with the areas of what is left, largest first. */
  private record Parted(Board board, List<Long> left, int cuts) {}

  private final Saw saw;
  private final List<Flaw> flaws;

  private Parting(Saw saw, List<Flaw> flaws) {
    this.saw = saw;
    this.flaws = flaws.stream().sorted(Comparator.comparingLong(Flaw::from)).toList();
  }

  /**
   * The cuts, trimming first; empty where no straight cuts with room for the blade part them.
   *
   * @param whole the piece, from its marked corner
   */
  public static Optional<Board> of(Rect whole, List<Flaw> flaws, List<Laid> parts, Saw saw) {
    return new Parting(saw, flaws).trimmed(whole, parts);
  }

  private Optional<Board> trimmed(Rect whole, List<Laid> parts) {
    Rect inner =
        new Rect(
            whole.along() + saw.trim(),
            whole.across() + saw.edgeTrim(),
            whole.length() - 2 * saw.trim(),
            whole.width() - 2 * saw.edgeTrim());
    return best(inner, parts, saw.first())
        .map(
            found ->
                trim(
                    whole.between(Way.CROSS, inner.from(Way.CROSS), inner.to(Way.CROSS)),
                    Way.RIP,
                    saw.edgeTrim(),
                    found.board()))
        .map(board -> trim(whole, Way.CROSS, saw.trim(), board));
  }

  private Board trim(Rect whole, Way way, long trim, Board inner) {
    if (trim == 0) {
      return inner;
    }
    long kerf = Math.min(saw.kerf(way), trim);
    long start = whole.from(way) + trim;
    long end = whole.to(way) - trim;
    Rect rest = whole.between(way, start, whole.to(way));
    Board far =
        cut(rest, way, end, kerf, inner, waste(rest.between(way, end + kerf, rest.to(way))));
    Rect near = whole.between(way, whole.from(way), start - kerf);
    return cut(whole, way, start - kerf, kerf, waste(near), far);
  }

  private static Board cut(Rect rect, Way way, long at, long kerf, Board near, Board far) {
    return new Board.Sawn(rect, way, at, kerf, near, far);
  }

  private static Board waste(Rect rect) {
    return new Board.Piece(rect, WASTE);
  }

  private Optional<Parted> best(Rect region, List<Laid> parts, Optional<Way> wanted) {
    if (parts.isEmpty()) {
      return Optional.of(bare(region));
    }
    if (parts.size() == 1 && parts.get(0).rect().equals(region)) {
      Board part = new Board.Piece(region, parts.get(0).part());
      return Optional.of(new Parted(part, List.of(), 0));
    }
    Optional<Parted> asked = wanted.flatMap(way -> parted(region, parts, way));
    return asked.isPresent()
        ? asked
        : Stream.of(Way.RIP, Way.CROSS)
            .flatMap(way -> parted(region, parts, way).stream())
            .min(Parting::compare);
  }

  private static int compare(Parted a, Parted b) {
    int n = Math.min(a.left().size(), b.left().size());
    for (int i = 0; i < n; i++) {
      int larger = Long.compare(b.left().get(i), a.left().get(i));
      if (larger != 0) {
        return larger;
      }
    }
    int more = Integer.compare(b.left().size(), a.left().size());
    return more != 0 ? more : Integer.compare(a.cuts(), b.cuts());
  }

  /** Parts a rectangle by cuts of one way; empty where there is none. */
  private Optional<Parted> parted(Rect region, List<Laid> parts, Way way) {
    List<Laid> sorted = new ArrayList<>(parts);
    sorted.sort(Comparator.comparingLong(laid -> laid.rect().from(way)));
    List<List<Laid>> shares = shares(sorted, way);
    long start = sorted.get(0).rect().from(way);
    long reach = end(shares.get(0), way);
    long kerf = saw.kerf(way);
    if (shares.size() > 1) {
      return inShares(region, shares, way);
    }
    if (start > region.from(way)) {
      long at = Math.max(region.from(way), start - kerf);
      return joined(
          region,
          way,
          at,
          start - at,
          Optional.of(bare(region.between(way, region.from(way), at))),
          best(region.between(way, start, region.to(way)), parts, Optional.empty()));
    }
    if (reach < region.to(way)) {
      long takes = Math.min(kerf, region.to(way) - reach);
      return joined(
          region,
          way,
          reach,
          takes,
          best(region.between(way, region.from(way), reach), parts, Optional.empty()),
          Optional.of(bare(region.between(way, reach + takes, region.to(way)))));
    }
    return Optional.empty();
  }

  /** Parts with room for a blade between them and the next. */
  private List<List<Laid>> shares(List<Laid> sorted, Way way) {
    List<List<Laid>> shares = new ArrayList<>();
    long reach = Long.MIN_VALUE / 2;
    for (Laid laid : sorted) {
      if (shares.isEmpty() || laid.rect().from(way) >= reach + saw.kerf(way)) {
        shares.add(new ArrayList<>());
      }
      shares.get(shares.size() - 1).add(laid);
      reach = Math.max(reach, laid.rect().to(way));
    }
    return shares;
  }

  private Optional<Parted> inShares(Rect region, List<List<Laid>> shares, Way way) {
    List<Rect> rects = new ArrayList<>();
    long from = region.from(way);
    for (int i = 0; i < shares.size(); i++) {
      boolean last = i + 1 == shares.size();
      long to = last ? region.to(way) : end(shares.get(i), way);
      rects.add(region.between(way, from, to));
      from = to + saw.kerf(way);
    }
    Optional<Parted> far =
        best(rects.get(rects.size() - 1), shares.get(shares.size() - 1), Optional.empty());
    for (int i = shares.size() - 2; i >= 0; i--) {
      Rect rest = region.between(way, rects.get(i).from(way), region.to(way));
      Optional<Parted> near = best(rects.get(i), shares.get(i), Optional.empty());
      far = joined(rest, way, rects.get(i).to(way), saw.kerf(way), near, far);
    }
    return far;
  }

  private static long end(List<Laid> share, Way way) {
    return share.stream().mapToLong(laid -> laid.rect().to(way)).max().orElseThrow();
  }

  private static Optional<Parted> joined(
      Rect region, Way way, long at, long kerf, Optional<Parted> near, Optional<Parted> far) {
    if (near.isEmpty() || far.isEmpty()) {
      return Optional.empty();
    }
    Parted a = near.get();
    Parted b = far.get();
    List<Long> largestFirst =
        Stream.concat(a.left().stream(), b.left().stream())
            .sorted(Comparator.reverseOrder())
            .toList();
    Board board = cut(region, way, at, kerf, a.board(), b.board());
    return Optional.of(new Parted(board, largestFirst, a.cuts() + b.cuts() + 1));
  }

  /**
   * A rectangle without parts: kept where it is sound and large enough, cut free of flaws first.
   */
  private Parted bare(Rect region) {
    Optional<Flaw> flaw =
        flaws.stream().filter(each -> region.areaWithin(each.from(), each.to()) > 0).findFirst();
    if (flaw.isEmpty()) {
      boolean useful = saw.isUseful(region);
      Use use = useful ? new Use.Left() : WASTE;
      return new Parted(
          new Board.Piece(region, use), useful ? List.of(region.area()) : List.of(), 0);
    }
    long kerf = saw.crossKerf();
    long end = region.to(Way.CROSS);
    boolean before = flaw.get().from() > region.along();
    long at = before ? flaw.get().from() : Math.max(region.along(), flaw.get().to() - kerf);
    long takes = Math.min(kerf, end - at);
    Parted near =
        before
            ? bare(region.between(Way.CROSS, region.along(), at))
            : new Parted(waste(region.between(Way.CROSS, region.along(), at)), List.of(), 0);
    Parted far =
        at + takes >= end
            ? new Parted(waste(region.between(Way.CROSS, at + takes, end)), List.of(), 0)
            : bare(region.between(Way.CROSS, at + takes, end));
    if (near.left().isEmpty() && far.left().isEmpty()) {
      return new Parted(waste(region), List.of(), 0);
    }
    return joined(region, Way.CROSS, at, takes, Optional.of(near), Optional.of(far)).orElseThrow();
  }
}
