package kitwright.report.stores;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import kitwright.cutting.CutPlan;
import kitwright.cutting.PieceCut;
import kitwright.cutting.Remnants;
import kitwright.cutting.Steps;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Flaw;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.drawing.RackDrawing;
import kitwright.drawing.RackDrawing.Becomes;
import kitwright.drawing.RackDrawing.Piece;
import kitwright.drawing.RackDrawing.Stretch;
import kitwright.drawing.Svg;
import kitwright.report.words.Cautions;

/** A cut plan as a drawing to scale. */
public final class CutPicture {
  private static final double TENTH = 0.1;

  private CutPicture() {}

  /**
   * Each piece of stock that is cut, in the order of the plan; the numbers are the bench sheet’s.
   */
  public static Svg of(CutPlan plan) {
    Iterator<String> names = Remnants.ids(plan).iterator();
    List<String> above = new ArrayList<>(List.of(plan.quality(), kerf(plan)));
    plan.missing().forEach((mark, n) -> above.add("Not made: " + n + " of " + mark + "."));
    return RackDrawing.of(
        "Cut " + plan.cut().id(),
        above,
        plan.pieces().stream().map(piece -> piece(plan, piece, names)).toList(),
        Cautions.of(plan));
  }

  private static String kerf(CutPlan plan) {
    return "Kerf "
        + plan.cut().kerf()
        + plan.cut().ripKerf().map(rip -> ", ripping " + rip).orElse("")
        + ". Sizes in "
        + (plan.tape().inches() ? "inches." : "mm.");
  }

  private static Piece piece(CutPlan plan, PieceCut piece, Iterator<String> names) {
    Rect whole = piece.board().rect();
    List<Stretch> stretches = new ArrayList<>();
    for (Flaw flaw : piece.flaws()) {
      Rect bad = new Rect(flaw.from(), 0, flaw.to() - flaw.from(), whole.width());
      String from = plan.tape().brief(flaw.from()) + " to " + plan.tape().brief(flaw.to());
      stretches.add(stretch(flaw.what().isEmpty() ? "flaw" : flaw.what(), from, bad, Becomes.FLAW));
    }
    for (Board.Piece each : piece.board().pieces()) {
      String size = plan.tape().brief(each.rect());
      if (each.use() instanceof Use.Part part) {
        String own = plan.tape().brief(Steps.size(part, each.rect()));
        stretches.add(
            stretch(
                part.label(), part.turned() ? own + ", turned" : own, each.rect(), Becomes.PART));
      } else if (each.use() instanceof Use.Left) {
        stretches.add(stretch(names.next(), size, each.rect(), Becomes.REMNANT));
      }
    }
    return new Piece(
        piece.name() + ": " + plan.tape().told(whole),
        whole.length() * TENTH,
        whole.width() * TENTH,
        stretches);
  }

  private static Stretch stretch(String mark, String size, Rect rect, Becomes becomes) {
    return new Stretch(
        mark,
        size,
        rect.along() * TENTH,
        rect.across() * TENTH,
        rect.length() * TENTH,
        rect.width() * TENTH,
        becomes);
  }
}
