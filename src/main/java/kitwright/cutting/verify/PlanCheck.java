package kitwright.cutting.verify;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.ledger.Cut;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * Saws a plan on paper, from the records alone: every cut leaves what it should, every part comes
 * out at its size, from wood of its thickness and material, clear of flaws and trimmed edges, its
 * grain as asked, and every part wanted is there or said to be missing.
 */
public final class PlanCheck {
  private static final BigDecimal TEN = BigDecimal.TEN;

  private final Cut cut;
  private final List<String> faults = new ArrayList<>();
  private final Map<String, List<Length>> made = new HashMap<>();

  /** One piece of stock and the cuts that will be told. */
  public record Bench(Stock stock, int number, Board board) {}

  private record Length(Use.Part part, long length) {}

  private PlanCheck(Cut cut) {
    this.cut = cut;
  }

  /**
   * Everything wrong with a plan, in plain words; empty where it can be sawn as told.
   *
   * @param last the number of the last piece of each stock that the cut may take
   * @param missing how many of each part the plan says it does not make
   */
  public static List<String> faults(
      Cut cut, Map<String, Integer> last, List<Bench> bench, Map<String, Integer> missing) {
    PlanCheck check = new PlanCheck(cut);
    Set<String> seen = new HashSet<>();
    for (Bench piece : bench) {
      String name = piece.stock().id() + ", piece " + piece.number();
      if (!seen.add(name)) {
        check.faults.add(name + " is cut twice");
      }
      if (piece.number() < 1 || piece.number() > last.getOrDefault(piece.stock().id(), 0)) {
        check.faults.add("there is no free " + name);
      }
      if (cut.from().stream().noneMatch(ref -> ref.id().equals(piece.stock().id()))) {
        check.faults.add(name + " is not among the stock of the cut");
      }
      check.piece(piece, name);
    }
    check.parts(missing);
    return List.copyOf(check.faults);
  }

  private void piece(Bench piece, String name) {
    var size = piece.stock().size().orElseThrow();
    Rect whole = new Rect(0, 0, side(size.length()), side(size.width()));
    if (!piece.board().rect().equals(whole)) {
      faults.add(name + " is not as large as the plan says");
    }
    sawn(piece.board(), name);
    for (Board.Piece each : piece.board().pieces()) {
      if (each.use() instanceof Use.Part part) {
        part(part, each.rect(), piece.stock(), name);
      } else if (each.use() instanceof Use.Left) {
        sound(each.rect(), piece.stock(), name + ": a left-over");
      }
    }
  }

  /** Follows the cuts. */
  private void sawn(Board start, String name) {
    Board board = start;
    while (board instanceof Board.Sawn cutHere) {
      cut(cutHere, name);
      sawn(cutHere.near(), name);
      board = cutHere.far();
    }
  }

  private void cut(Board.Sawn sawn, String name) {
    Rect rect = sawn.rect();
    boolean across = sawn.way() == Way.CROSS;
    long begins = across ? rect.along() : rect.across();
    long ends = begins + (across ? rect.length() : rect.width());
    long beyond = sawn.at() + sawn.kerf();
    long blade = up(across ? cut.kerf() : cut.ripKerf().orElse(cut.kerf()));
    boolean rest = isTaken(sawn.near()) || isTaken(sawn.far());
    if (sawn.at() < begins || beyond > ends || sawn.kerf() < 0) {
      faults.add(name + ": a cut at " + sawn.at() + " runs outside its piece");
    }
    if (sawn.kerf() > blade || (sawn.kerf() < blade && !rest)) {
      faults.add(name + ": a cut at " + sawn.at() + " has no room for the blade");
    }
    Rect near =
        across
            ? new Rect(rect.along(), rect.across(), sawn.at() - begins, rect.width())
            : new Rect(rect.along(), rect.across(), rect.length(), sawn.at() - begins);
    Rect far =
        across
            ? new Rect(beyond, rect.across(), ends - beyond, rect.width())
            : new Rect(rect.along(), beyond, rect.length(), ends - beyond);
    if (!sawn.near().rect().equals(near) || !sawn.far().rect().equals(far)) {
      faults.add(name + ": the cut at " + sawn.at() + " does not leave what the plan says");
    }
  }

  /** A blade may hang over the edge where nothing is left beyond it. */
  private static boolean isTaken(Board board) {
    return board instanceof Board.Piece piece
        && piece.use() instanceof Use.Waste
        && piece.rect().isEmpty();
  }

  private void part(Use.Part part, Rect rect, Stock stock, String name) {
    Optional<Cut.Part> found =
        cut.parts().stream().filter(each -> each.mark().equals(part.mark())).findFirst();
    String what = name + ": " + part.label();
    if (found.isEmpty()) {
      faults.add(what + " is not wanted");
      return;
    }
    Cut.Part wanted = found.get();
    long length = part.turned() ? rect.width() : rect.length();
    long width = part.turned() ? rect.length() : rect.width();
    if (wanted.width().isPresent() && width != up(wanted.width().get()) + over(wanted)) {
      faults.add(what + " comes out " + width + " tenths wide");
    }
    made.computeIfAbsent(part.mark() + "\n" + part.copy(), k -> new ArrayList<>())
        .add(new Length(part, length));
    sound(rect, stock, what);
    wood(wanted, stock, what);
    grain(wanted, part.turned(), stock, what);
  }

  private void sound(Rect rect, Stock stock, String what) {
    var size = stock.size().orElseThrow();
    long trim = cut.trim().map(PlanCheck::up).orElse(0L);
    long edge = cut.edgeTrim().or(cut::trim).map(PlanCheck::up).orElse(0L);
    if (rect.along() < trim
        || rect.along() + rect.length() > side(size.length()) - trim
        || rect.across() < edge
        || rect.across() + rect.width() > side(size.width()) - edge) {
      faults.add(what + " lies in what is trimmed off");
    }
    for (Stock.Flaw flaw : stock.flaws()) {
      long from = down(mm(flaw.from()));
      if (from < rect.along() + rect.length() && rect.along() < up(flaw.to())) {
        faults.add(what + " holds a flaw: " + flaw.what().orElse("from " + flaw.from()));
      }
    }
  }

  private void wood(Cut.Part wanted, Stock stock, String what) {
    Optional<BigDecimal> thick = stock.size().orElseThrow().thickness();
    if (wanted.thickness().isPresent()
        && thick.filter(has -> has.compareTo(mm(wanted.thickness().get())) >= 0).isEmpty()) {
      faults.add(what + " comes from wood too thin, or of unknown thickness");
    }
    if (wanted.material().isPresent()
        && stock.material().filter(is -> is.id().equals(wanted.material().get().id())).isEmpty()) {
      faults.add(what + " comes from another material");
    }
    if (!wanted.from().isEmpty()
        && wanted.from().stream().noneMatch(ref -> ref.id().equals(stock.id()))) {
      faults.add(what + " comes from stock that is not named for it");
    }
  }

  /** Where the part says how its grain runs, the stock must say it too. */
  private void grain(Cut.Part wanted, boolean turned, Stock stock, String what) {
    String has =
        stock.grain().map(text -> text.strip().toLowerCase(java.util.Locale.ROOT)).orElse("");
    Optional<Cut.Grain> asked = wanted.grain().filter(grain -> grain != Cut.Grain.ANY);
    if (asked.isPresent() && !has.equals("any") && !has.equals("none")) {
      boolean alike = has.equals(asked.get() == Cut.Grain.ALONG ? "along" : "across");
      boolean other = has.equals(asked.get() == Cut.Grain.ALONG ? "across" : "along");
      if (turned ? !other : !alike) {
        faults.add(what + " lies wrong to the grain, or the grain is not known");
      }
    }
  }

  private void parts(Map<String, Integer> missing) {
    for (Cut.Part part : cut.parts()) {
      int there = 0;
      for (int copy = 1; copy <= part.qty(); copy++) {
        List<Length> lengths = made.remove(part.mark() + "\n" + copy);
        if (lengths != null) {
          there++;
          whole(part, copy, lengths);
        }
      }
      int lacks = missing.getOrDefault(part.mark(), 0);
      if (there + lacks != part.qty()) {
        faults.add(
            part.mark() + ": " + part.qty() + " wanted, " + there + " made, " + lacks + " missing");
      }
    }
    made.keySet().forEach(extra -> faults.add(extra.replace('\n', ' ') + " is made beyond need"));
  }

  private void whole(Cut.Part part, int copy, List<Length> lengths) {
    String name = part.mark() + " " + copy;
    int of = lengths.get(0).part().of();
    long pieces = lengths.stream().map(each -> each.part().piece()).distinct().count();
    if (pieces != of || lengths.size() != of) {
      faults.add(name + " has " + lengths.size() + " of its " + of + " lengths");
    }
    if (of > 1 && part.scarf().isEmpty() && !part.butt()) {
      faults.add(name + " is joined, though nothing permits it");
    }
    long sum = lengths.stream().mapToLong(Length::length).sum();
    long wanted = up(part.length()) + over(part);
    if (of == 1 ? sum != wanted : sum < wanted + overlap(part) * (of - 1)) {
      faults.add(name + " comes out " + sum + " tenths long");
    }
  }

  /** A scarf laps at least the thickness that the part states times its run. */
  private static long overlap(Cut.Part part) {
    return part.scarf().isPresent() && part.thickness().isPresent()
        ? up(part.thickness().get().times(part.scarf().get()))
        : 0;
  }

  private static long over(Cut.Part part) {
    return part.oversize().map(PlanCheck::up).orElse(0L);
  }

  private static BigDecimal mm(Quantity length) {
    return length.in(Unit.MM).amount();
  }

  private static long up(Quantity length) {
    return mm(length).multiply(TEN).setScale(0, RoundingMode.CEILING).longValueExact();
  }

  /** A side of stock reaches into its last tenth. */
  private static long side(BigDecimal mm) {
    return mm.multiply(TEN).setScale(0, RoundingMode.CEILING).longValueExact();
  }

  private static long down(BigDecimal mm) {
    return mm.multiply(TEN).setScale(0, RoundingMode.FLOOR).longValueExact();
  }
}
