package kitwright.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import kitwright.cutting.CutPlan;
import kitwright.cutting.Steps;
import kitwright.cutting.solve.Area;
import kitwright.cutting.solve.BarPiece;
import kitwright.cutting.solve.CutBar;
import kitwright.cutting.solve.CutPanel;
import kitwright.cutting.solve.Span;
import kitwright.drawing.RackDrawing;
import kitwright.drawing.RackDrawing.Becomes;
import kitwright.drawing.RackDrawing.Piece;
import kitwright.drawing.RackDrawing.Stretch;
import kitwright.drawing.Svg;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/** A cut plan as a drawing to scale. */
public final class CutPicture {
  private static final double TENTH = 0.1;

  private CutPicture() {}

  /** Each piece of stock that is cut, in the order of the plan. */
  public static Svg of(CutPlan plan) {
    List<Piece> pieces = new ArrayList<>();
    plan.lengths().ifPresent(bars -> bars.bars().forEach(bar -> pieces.add(piece(plan, bar))));
    plan.panels()
        .ifPresent(panels -> panels.panels().forEach(panel -> pieces.add(piece(plan, panel))));
    return RackDrawing.of("Cut " + plan.cut().id(), pieces);
  }

  private static Piece piece(CutPlan plan, CutBar bar) {
    Stock stock = plan.stock(bar.stock());
    double width = width(stock);
    List<Stretch> stretches = flaws(stock);
    for (BarPiece part : bar.pieces()) {
      stretches.add(
          new Stretch(
              Steps.label(part),
              part.from() * TENTH,
              0,
              part.length() * TENTH,
              partWidth(plan, part.mark(), width),
              Becomes.PART));
    }
    for (Span rest : bar.remnants()) {
      stretches.add(
          new Stretch(
              "rest", rest.from() * TENTH, 0, rest.length() * TENTH, width, Becomes.REMNANT));
    }
    return new Piece(bar.stock() + ", piece " + bar.number(), length(stock), width, stretches);
  }

  private static Piece piece(CutPlan plan, CutPanel panel) {
    Stock stock = plan.stock(panel.stock());
    List<Stretch> stretches = flaws(stock);
    panel.strips().stream()
        .flatMap(strip -> strip.pieces().stream())
        .forEach(
            part ->
                stretches.add(stretch(part.mark() + " " + part.copy(), part.area(), Becomes.PART)));
    panel.remnants().forEach(rest -> stretches.add(stretch("rest", rest, Becomes.REMNANT)));
    return new Piece(
        panel.stock() + ", piece " + panel.number(), length(stock), width(stock), stretches);
  }

  private static Stretch stretch(String mark, Area area, Becomes becomes) {
    return new Stretch(
        mark,
        area.along() * TENTH,
        area.across() * TENTH,
        area.length() * TENTH,
        area.width() * TENTH,
        becomes);
  }

  private static List<Stretch> flaws(Stock stock) {
    List<Stretch> all = new ArrayList<>();
    stock
        .flaws()
        .forEach(
            flaw -> {
              double from = mm(flaw.from());
              all.add(new Stretch("", from, 0, mm(flaw.to()) - from, width(stock), Becomes.FLAW));
            });
    return all;
  }

  private static double partWidth(CutPlan plan, String mark, double stock) {
    return plan.cut().parts().stream()
        .filter(part -> part.mark().equals(mark))
        .flatMap(part -> part.width().stream())
        .mapToDouble(CutPicture::mm)
        .findFirst()
        .orElse(stock);
  }

  private static double mm(Quantity length) {
    return length.in(Unit.MM).amount().doubleValue();
  }

  private static double length(Stock stock) {
    return stock.size().map(Size::length).map(BigDecimal::doubleValue).orElse(0.0);
  }

  private static double width(Stock stock) {
    return stock.size().map(Size::width).map(BigDecimal::doubleValue).orElse(0.0);
  }
}
