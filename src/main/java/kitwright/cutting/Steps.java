package kitwright.cutting;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitwright.cutting.solve.Area;
import kitwright.cutting.solve.BarPiece;
import kitwright.cutting.solve.CutBar;
import kitwright.cutting.solve.CutPanel;
import kitwright.cutting.solve.CutStrip;
import kitwright.cutting.solve.PanelPiece;
import kitwright.cutting.solve.Run;
import kitwright.cutting.solve.Span;

/**
 * What to do at the bench, piece after piece, in the order of the cuts.
 *
 * @param heading which piece of stock
 * @param lines one a cut or a strip
 */
public record Steps(String heading, List<String> lines) {
  public Steps {
    lines = List.copyOf(lines);
  }

  /** The steps of a plan. */
  public static List<Steps> of(CutPlan plan) {
    List<Steps> all = new ArrayList<>();
    Iterator<String> marks = Remnants.ids(plan).iterator();
    plan.lengths()
        .ifPresent(bars -> bars.bars().forEach(bar -> all.add(of(bar, plan.tape(), marks))));
    plan.panels()
        .ifPresent(
            panels -> panels.panels().forEach(panel -> all.add(of(panel, plan.tape(), marks))));
    return List.copyOf(all);
  }

  private static Steps of(CutBar bar, Tape tape, Iterator<String> marks) {
    List<String> lines = new ArrayList<>();
    for (BarPiece piece : bar.pieces()) {
      lines.add(
          "from "
              + Tenths.mm(piece.from())
              + " to "
              + Tenths.mm(piece.to())
              + ": "
              + label(piece)
              + ", "
              + tape.told(piece.length())
              + (piece.of() > 1 ? ", to be joined" : ""));
    }
    for (Span rest : bar.remnants()) {
      lines.add("keep " + tape.told(rest.length()) + ", mark it " + marks.next());
    }
    return new Steps(bar.stock() + ", piece " + bar.number(), lines);
  }

  /** What to write on a length. */
  public static String label(BarPiece piece) {
    return piece.mark()
        + " "
        + piece.copy()
        + (piece.of() > 1 ? ", piece " + piece.piece() + " of " + piece.of() : "");
  }

  private static Steps of(CutPanel panel, Tape tape, Iterator<String> marks) {
    List<String> lines = new ArrayList<>();
    int number = 1;
    for (CutStrip strip : panel.strips()) {
      boolean rip = strip.run() == Run.ALONG;
      long wide = rip ? strip.area().width() : strip.area().length();
      lines.add(
          (rip ? "rip" : "cross-cut")
              + " strip "
              + number++
              + ", "
              + tape.told(wide)
              + " wide; from it, in order:");
      for (PanelPiece piece : strip.pieces()) {
        lines.add(
            "    "
                + piece.mark()
                + " "
                + piece.copy()
                + ", "
                + tape.told(piece.area())
                + trimmed(piece, strip, tape));
      }
    }
    for (Area rest : panel.remnants()) {
      lines.add("keep " + tape.told(rest) + ", mark it " + marks.next());
    }
    return new Steps(panel.stock() + ", piece " + panel.number(), lines);
  }

  private static String trimmed(PanelPiece piece, CutStrip strip, Tape tape) {
    boolean rip = strip.run() == Run.ALONG;
    long part = rip ? piece.area().width() : piece.area().length();
    long wide = rip ? strip.area().width() : strip.area().length();
    return part < wide ? ", trimmed to " + tape.told(part) : "";
  }

  /** What to write on each part, in the order of the cuts. */
  public static List<String> labels(CutPlan plan) {
    List<String> all = new ArrayList<>();
    plan.lengths()
        .ifPresent(
            bars ->
                bars.bars()
                    .forEach(
                        bar ->
                            bar.pieces()
                                .forEach(
                                    piece ->
                                        all.add(
                                            label(piece)
                                                + ", "
                                                + plan.tape().told(piece.length())))));
    plan.panels()
        .ifPresent(
            panels ->
                panels.panels().stream()
                    .flatMap(panel -> panel.strips().stream())
                    .flatMap(strip -> strip.pieces().stream())
                    .forEach(
                        piece ->
                            all.add(
                                piece.mark()
                                    + " "
                                    + piece.copy()
                                    + ", "
                                    + plan.tape().told(piece.area()))));
    return List.copyOf(all);
  }

  /** The settings of the fence, each with the strips that are ripped or cut at it, widest first. */
  public static List<String> fence(CutPlan plan) {
    Map<Long, Integer> widths = new TreeMap<>(java.util.Comparator.reverseOrder());
    plan.panels()
        .ifPresent(
            panels ->
                panels.panels().stream()
                    .flatMap(panel -> panel.strips().stream())
                    .forEach(
                        strip ->
                            widths.merge(
                                strip.run() == Run.ALONG
                                    ? strip.area().width()
                                    : strip.area().length(),
                                1,
                                Integer::sum)));
    return widths.entrySet().stream()
        .map(
            each ->
                plan.tape().told(each.getKey())
                    + " for "
                    + each.getValue()
                    + (each.getValue() == 1 ? " strip" : " strips"))
        .toList();
  }

  /** How many of each part the plan makes, in the order of the cut. */
  public static Map<String, Integer> made(CutPlan plan) {
    Map<String, Integer> missing =
        plan.missing().stream()
            .collect(Collectors.toMap(each -> each.mark(), each -> each.missing()));
    Map<String, Integer> made = new java.util.LinkedHashMap<>();
    plan.cut()
        .parts()
        .forEach(part -> made.put(part.mark(), part.qty() - missing.getOrDefault(part.mark(), 0)));
    return made;
  }
}
