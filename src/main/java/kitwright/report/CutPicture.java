package kitwright.report;

import java.util.ArrayList;
import java.util.List;
import kitwright.cutting.CutPlan;
import kitwright.cutting.PieceCut;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Flaw;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.drawing.RackDrawing;
import kitwright.drawing.RackDrawing.Becomes;
import kitwright.drawing.RackDrawing.Piece;
import kitwright.drawing.RackDrawing.Stretch;
import kitwright.drawing.Svg;

/** A cut plan as a drawing to scale. */
public final class CutPicture {
  private static final double TENTH = 0.1;

  private CutPicture() {}

  /** Each piece of stock that is cut, in the order of the plan. */
  public static Svg of(CutPlan plan) {
    return RackDrawing.of(
        "Cut " + plan.cut().id(), plan.pieces().stream().map(piece -> piece(plan, piece)).toList());
  }

  private static Piece piece(CutPlan plan, PieceCut piece) {
    Rect whole = piece.board().rect();
    List<Stretch> stretches = new ArrayList<>();
    for (Flaw flaw : piece.flaws()) {
      Rect bad = new Rect(flaw.from(), 0, flaw.to() - flaw.from(), whole.width());
      stretches.add(stretch("", "", bad, Becomes.FLAW));
    }
    for (Board.Piece each : piece.board().pieces()) {
      String size = plan.tape().brief(each.rect());
      if (each.use() instanceof Use.Part part) {
        stretches.add(stretch(part.label(), size, each.rect(), Becomes.PART));
      } else if (each.use() instanceof Use.Left) {
        stretches.add(stretch("rest", size, each.rect(), Becomes.REMNANT));
      }
    }
    return new Piece(piece.name(), whole.length() * TENTH, whole.width() * TENTH, stretches);
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
