package kitwright.assessment.method;

import java.util.Optional;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Rectangle;
import kitwright.mechanics.timber.Notch;
import kitwright.value.Quantity;

/**
 * A notch at the support of a solid wooden beam: it splits from the corner. On the other side of
 * the support only the depth is less. What is left over the support is not bent there.
 *
 * @see Notch
 */
final class NotchedEnd {
  private NotchedEnd() {}

  /** Puts the shear force at which it splits in place of the beam's; nothing without a notch. */
  static Optional<Step> put(Part part, Figures figures) {
    return part.source().notch().flatMap(stated -> put(part, stated, figures));
  }

  private static Optional<Step> put(Part part, Section.Notch stated, Figures figures) {
    var box = part.beam().bounds();
    double depth = box.height();
    double cut = stated.depth().base();
    Optional<Double> corner = stated.corner().map(Quantity::base);
    Optional<Figure> whole = figures.of(Measure.SHEAR);
    Optional<BeamMaterial> wood = part.beam().wood();
    String lacks =
        !part.beam().solidTimber() || wood.isEmpty() || !isRectangular(part)
            ? "is no rectangle of solid wood, and its notch is not worked out"
            : corner.isEmpty()
                ? "does not state how far the corner of its notch is from the support’s force"
                : cut >= depth / 2 ? "is notched by half its depth or more" : "";
    if (!lacks.isEmpty() || whole.isEmpty()) {
      figures.lacks(Measure.SHEAR, part.id() + " " + (lacks.isEmpty() ? "is notched" : lacks));
      return Optional.empty();
    }
    Notch notch =
        new Notch(
            depth,
            depth - cut,
            corner.orElse(0.0),
            stated.slope().map(Number::doubleValue).orElse(0.0),
            part.beam().regions().size() > 1);
    double share = stated.opposite() ? 1 : notch.share();
    double strength = wood.get().strength().shear().orElse(0);
    double bears = share * strength * box.width() * (depth - cut) / 1.5;
    if (!notch.isShort(bears, box.width(), wood.get().strength().bending().orElse(0))) {
      figures.lacks(
          Measure.SHEAR,
          part.id()
              + " is notched so far from its support that what is left may bend before it splits,"
              + " which is not worked out");
    }
    if (bears < whole.get().value()) {
      figures.put(Measure.SHEAR, Figure.of(bears, "splitting from the notch at the support"));
    }
    return Optional.of(
        new Step(
            "shear force at which it splits from its notch",
            "V = k_v·f_v·b·h_ef/1.5, EN 1995-1-1, 6.60 to 6.63",
            "k_v "
                + Print.number(share)
                + ", f_v "
                + Print.with(strength / 1e6, "MPa")
                + ", b "
                + Print.mm(box.width())
                + ", h_ef "
                + Print.mm(depth - cut),
            Print.with(bears, "N")));
  }

  private static boolean isRectangular(Part part) {
    double width = part.beam().bounds().width();
    return part.beam().regions().stream()
        .allMatch(
            region ->
                region instanceof Rectangle one && Math.abs(one.width() - width) < 1e-9 * width);
  }
}
