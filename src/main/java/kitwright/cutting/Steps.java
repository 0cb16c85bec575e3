package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Flaw;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.ledger.Cut;
import kitwright.value.Decimal;
import kitwright.value.Size;

/**
 * What to do at the bench, piece after piece, in the order of the saw. Every distance is measured
 * on the whole piece, before the first cut, from its marked end or its marked edge, to the line
 * that the blade runs beyond.
 *
 * @param heading which piece of stock, and its size
 * @param flaws what no part may hold, to be marked first
 * @param lines one a cut
 */
public record Steps(String heading, List<String> flaws, List<String> lines) {
  /** Its run to its rise. Common practice, no source. */
  private static final BigDecimal USUAL_SCARF = BigDecimal.valueOf(8);

  public Steps {
    flaws = List.copyOf(flaws);
    lines = List.copyOf(lines);
  }

  public static List<Steps> of(CutPlan plan) {
    Iterator<String> names = Remnants.ids(plan).iterator();
    return plan.pieces().stream().map(piece -> new Writer(plan, names).write(piece)).toList();
  }

  /** What to write on each part, in the order of the cuts. */
  public static List<String> labels(CutPlan plan) {
    return plan.pieces().stream()
        .flatMap(piece -> piece.board().becoming(Use.Part.class))
        .map(
            part ->
                ((Use.Part) part.use()).label()
                    + ", "
                    + plan.tape().told(size((Use.Part) part.use(), part.rect())))
        .toList();
  }

  /** A part’s own length and width, however it lies. */
  public static Rect size(Use.Part part, Rect rect) {
    return part.turned()
        ? new Rect(0, 0, /* length= */ rect.width(), /* width= */ rect.length())
        : rect;
  }

  /** The settings of the fence for ripping, each with how often it is used, widest first. */
  public static List<String> fence(CutPlan plan) {
    Map<Long, Integer> widths = new TreeMap<>(java.util.Comparator.reverseOrder());
    plan.pieces().forEach(piece -> rips(untrimmed(piece.board(), plan), widths));
    return widths.entrySet().stream()
        .map(
            each ->
                plan.tape().told(each.getKey())
                    + ", "
                    + (each.getValue() == 1 ? "once" : each.getValue() + " times"))
        .toList();
  }

  /** What is left after trimming. */
  private static Board untrimmed(Board whole, CutPlan plan) {
    Board board = whole;
    int trims =
        (Clearance.trim(plan.cut()) > 0 ? 1 : 0) + (Clearance.edgeTrim(plan.cut()) > 0 ? 1 : 0);
    for (int n = 0; n < trims; n++) {
      board = ((Board.Sawn) ((Board.Sawn) board).far()).near();
    }
    return board;
  }

  private static void rips(Board start, Map<Long, Integer> widths) {
    Board board = start;
    while (board instanceof Board.Sawn sawn) {
      if (sawn.way() == Way.RIP && !isWaste(sawn.near())) {
        widths.merge(sawn.near().rect().width(), 1, Integer::sum);
      }
      rips(sawn.near(), widths);
      board = sawn.far();
    }
  }

  private static boolean isWaste(Board board) {
    return board instanceof Board.Piece piece && piece.use() instanceof Use.Waste;
  }

  /** Writes the steps of one piece. */
  private static final class Writer {
    private final CutPlan plan;
    private final Tape tape;
    private final Iterator<String> names;
    private final List<String> lines = new ArrayList<>();
    private final IdentityHashMap<Board, String> leftovers = new IdentityHashMap<>();
    private int strips;
    private long thickness;

    Writer(CutPlan plan, Iterator<String> names) {
      this.plan = plan;
      this.tape = plan.tape();
      this.names = names;
    }

    Steps write(PieceCut piece) {
      piece.board().becoming(Use.Left.class).forEach(left -> leftovers.put(left, names.next()));
      thickness = piece.stock().size().flatMap(Size::thickness).map(Tenths::side).orElse(0L);
      List<String> flaws = new ArrayList<>();
      for (Flaw flaw : Clearance.flaws(piece.stock())) {
        flaws.add(
            "leave out from "
                + tape.told(flaw.from())
                + " to "
                + tape.told(flaw.to())
                + " from A"
                + (flaw.what().isEmpty() ? ": flaw" : ": " + flaw.what()));
      }
      Board inner = trimmed(piece.board());
      if (inner instanceof Board.Piece whole) {
        lines.add((lines.isEmpty() ? "no cut" : "no further cut") + ": it is " + piece(whole));
      }
      row(inner, "");
      return new Steps(
          piece.name()
              + ": "
              + (tape.inches()
                  ? tape.told(piece.board().rect())
                  : piece.stock().size().orElseThrow().toString()),
          flaws,
          lines);
    }

    /** Trims ends and edges, a line for each; what is left is parted further. */
    private Board trimmed(Board whole) {
      Board inner =
          Clearance.trim(plan.cut()) > 0 ? trimmed(whole, "trim the ends: ", " from A") : whole;
      return Clearance.edgeTrim(plan.cut()) > 0
          ? trimmed(inner, "trim the edges: ", " from B")
          : inner;
    }

    private Board trimmed(Board board, String what, String from) {
      Board.Sawn first = (Board.Sawn) board;
      Board.Sawn second = (Board.Sawn) first.far();
      lines.add(
          what
              + "the piece begins at "
              + tape.told(first.at() + first.kerf())
              + " and ends at "
              + tape.told(second.at())
              + from);
      return second.near();
    }

    /** All cuts of one way, one beyond the other; then each of what they part. */
    private void row(Board start, String of) {
      if (!(start instanceof Board.Sawn first)) {
        return;
      }
      Map<Board, String> later = new java.util.LinkedHashMap<>();
      Board board = start;
      while (board instanceof Board.Sawn sawn && sawn.way() == first.way()) {
        boolean last = !(sawn.far() instanceof Board.Sawn far) || far.way() != first.way();
        String near = called(sawn.near(), later, sawn.way());
        String far = last && !isWaste(sawn.far()) ? called(sawn.far(), later, sawn.way()) : "";
        line(sawn, of, near, far, last);
        board = sawn.far();
      }
      later.forEach((part, name) -> row(part, name));
    }

    private void line(Board.Sawn sawn, String of, String near, String far, boolean last) {
      boolean cross = sawn.way() == Way.CROSS;
      String where =
          (of.isEmpty() ? "" : of + ": ")
              + (cross ? "cross-cut at " : "rip at ")
              + tape.told(sawn.at())
              + (cross ? " from A" : " from B");
      String beyond =
          last && isWaste(sawn.far()) && !sawn.far().rect().isEmpty()
              ? "; beyond it waste"
              : far.isEmpty() ? "" : "; beyond it " + far;
      lines.add(where + ": " + near + beyond);
    }

    /** What a board becomes, or the name under which its own cuts stand. */
    private String called(Board board, Map<Board, String> later, Way way) {
      if (board instanceof Board.Piece piece) {
        return piece(piece);
      }
      Rect rect = board.rect();
      String name = "strip " + ++strips;
      later.put(board, name);
      return name
          + ", "
          + (way == Way.RIP
              ? tape.told(rect.width()) + " wide"
              : tape.told(rect.length()) + " long");
    }

    private String piece(Board.Piece piece) {
      if (piece.use() instanceof Use.Part part) {
        return part(part, piece.rect());
      }
      if (piece.use() instanceof Use.Left) {
        return "keep " + tape.told(piece.rect()) + ", mark it " + leftovers.getOrDefault(piece, "");
      }
      return "waste";
    }

    private String part(Use.Part part, Rect rect) {
      Cut.Part wanted =
          plan.cut().parts().stream()
              .filter(each -> each.mark().equals(part.mark()))
              .findFirst()
              .orElseThrow();
      StringBuilder out = new StringBuilder(part.label());
      out.append(", ").append(tape.told(size(part, rect)));
      out.append(part.turned() ? ", turned: its length lies across" : "");
      if (part.of() > 1) {
        out.append(wanted.scarf().isPresent() ? ", to be scarfed" : ", to be butted");
      }
      return out + planed(wanted);
    }

    private String planed(Cut.Part wanted) {
      boolean thinner =
          wanted.thickness().map(Tenths::atLeast).filter(thick -> thick < thickness).isPresent();
      if (wanted.oversize().isEmpty() && !thinner) {
        return "";
      }
      return ", to be planed to "
          + Tenths.mm(Tenths.atLeast(wanted.length()))
          + wanted.width().map(width -> " x " + Tenths.mm(Tenths.atLeast(width))).orElse("")
          + wanted.thickness().map(thick -> " x " + Tenths.mm(Tenths.atLeast(thick))).orElse("")
          + " mm";
    }
  }

  /** What a joint needs, for each part that is joined. */
  public static List<String> joints(CutPlan plan) {
    List<String> all = new ArrayList<>();
    for (Cut.Part part : plan.cut().parts()) {
      boolean joined =
          plan.pieces().stream()
              .flatMap(piece -> piece.board().becoming(Use.Part.class))
              .map(piece -> (Use.Part) piece.use())
              .anyMatch(use -> use.mark().equals(part.mark()) && use.of() > 1);
      if (joined && part.scarf().isPresent()) {
        plan.lap(part)
            .ifPresent(
                lap ->
                    all.add(
                        part.mark()
                            + ": scarf 1 in "
                            + Decimal.print(part.scarf().get())
                            + ", the lengths lap "
                            + plan.tape().told(lap)
                            + (part.scarf().get().compareTo(USUAL_SCARF) < 0
                                ? "; steeper than the usual 1 in 8 it holds less: ask the designer"
                                : "")));
      } else if (joined) {
        all.add(
            part.mark()
                + ": butted, 2 mm allowed for truing each joint; a butt alone carries no pull or"
                + " bending");
      }
    }
    return all;
  }
}
