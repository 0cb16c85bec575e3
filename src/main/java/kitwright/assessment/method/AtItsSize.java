package kitwright.assessment.method;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.ledger.Load.Shape;
import kitwright.ledger.Load.Support;
import kitwright.mechanics.load.Overhang;
import kitwright.mechanics.timber.SizeEffect;

/**
 * Solid timber by strengths of small clear pieces, at its own size: what meets what is asked only
 * as long as nobody counts that a large piece is weaker is not told.
 *
 * @param bending share of its modulus of rupture
 * @param shear share of its strength in shear
 * @see SizeEffect
 */
public record AtItsSize(double bending, double shear) {
  private static final AtItsSize WHOLE = new AtItsSize(1, 1);

  /**
   * What the size of a part leaves.
   *
   * @param small whether its values are means of small clear pieces
   * @param load where one is stated; without, both parts are taken to be as long as the small piece
   */
  public static AtItsSize of(Part part, boolean small, Optional<BeamLoad> load) {
    if (!small || !part.beam().solidTimber()) {
      return WHOLE;
    }
    double span = load.map(AtItsSize::length).orElse(SizeEffect.SPAN);
    double strained = load.filter(AtItsSize::isSpread).isPresent() ? SizeEffect.SPREAD : 1;
    return new AtItsSize(
        SizeEffect.bending(part.thickness(), span, strained),
        load.isEmpty() ? 1 : SizeEffect.shear(part.beam().bounds().width() * span));
  }

  private static double length(BeamLoad load) {
    return load.span() + load.beyond().map(Overhang::beyond).orElse(0.0);
  }

  /** On a cantilever, or clamped, no load strains more of the span than one at its middle does. */
  private static boolean isSpread(BeamLoad load) {
    Support support = load.stated().support().orElse(Support.CANTILEVER);
    boolean held = support == Support.SIMPLE || support == Support.OVERHANG;
    boolean point = load.stated().shape().filter(Shape.POINT::equals).isPresent();
    return held && !(point && load.stated().pressure().isEmpty() && load.own().isEmpty());
  }

  /** How it follows; nothing where size takes nothing. */
  public Optional<Working> working(Part part, Optional<BeamLoad> load) {
    if (equals(WHOLE) || load.isEmpty()) {
      return Optional.empty();
    }
    double span = length(load.get());
    Step bent =
        new Step(
            "what its size leaves of the modulus of rupture",
            "(h₀·L₀/(h·L·s))^(1/18), at most 1; 50.8 mm, 711.12 mm; s 3.876 of a spread load",
            "h "
                + Print.mm(part.thickness())
                + ", L "
                + Print.mm(span)
                + ", s "
                + Print.number(isSpread(load.get()) ? SizeEffect.SPREAD : 1),
            Print.ratio(bending));
    Step sheared =
        new Step(
            "what its size leaves of the strength in shear",
            "1.9·2/(b·L)^⅕, b·L in cm², at most 1",
            "b " + Print.mm(part.beam().bounds().width()) + ", L " + Print.mm(span),
            Print.ratio(shear));
    return Optional.of(
        new Working(part.id() + " at its size", List.of(), List.of(), List.of(bent, sheared)));
  }

  /** Adds to each row that is met why it is not told, where size turns it. */
  public static void judge(
      AtItsSize drawn, AtItsSize built, Optional<BeamLoad> load, double factor, List<Row> rows) {
    if (drawn.equals(WHOLE) && built.equals(WHOLE)) {
      return;
    }
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      Optional<Double> sized = sized(row, drawn, built, load, factor, rows);
      if (!row.fails()
          && row.limit().filter(one -> one.side() == Row.Limit.Side.AT_LEAST).isPresent()
          && sized.filter(one -> one < row.limit().get().value() * (1 - 1e-9)).isPresent()) {
        rows.set(i, row.lacking(why(drawn, built, sized.get())));
      }
    }
  }

  private static Optional<Double> sized(
      Row row,
      AtItsSize drawn,
      AtItsSize built,
      Optional<BeamLoad> load,
      double factor,
      List<Row> rows) {
    return switch (row.measure()) {
      case MOMENT_SAGGING, MOMENT_HOGGING -> ratio(row, built.bending / drawn.bending);
      case SHEAR -> ratio(row, built.shear / drawn.shear);
      case RESERVE -> built.reserve(row.built(), Row::built, load, factor, rows);
      case FIRST_FAILURE -> {
        Optional<Double> is = built.reserve(row.built(), Row::built, load, factor, rows);
        Optional<Double> was = drawn.reserve(row.designed(), Row::designed, load, factor, rows);
        yield is.flatMap(one -> was.map(other -> one / other));
      }
      default -> Optional.empty();
    };
  }

  private static Optional<Double> ratio(Row row, double share) {
    return row.ratio().isPresent()
        ? Optional.of(row.ratio().getAsDouble() * share)
        : Optional.empty();
  }

  /** A reserve set by neither bending nor shear alone is taken to fall as the worse of both. */
  private Optional<Double> reserve(
      Optional<Figure> whole,
      Function<Row, Optional<Figure>> side,
      Optional<BeamLoad> load,
      double factor,
      List<Row> rows) {
    if (load.isEmpty() || whole.isEmpty()) {
      return Optional.empty();
    }
    double all = whole.get().value();
    boolean more =
        load.get().stated().thrust().isPresent() || load.get().stated().torque().isPresent();
    double least = more ? all * Math.min(bending, shear) : all;
    for (Row other : more ? List.<Row>of() : rows) {
      boolean bent =
          other.measure() == Measure.MOMENT_SAGGING || other.measure() == Measure.MOMENT_HOGGING;
      boolean sheared = other.measure() == Measure.SHEAR;
      double asked = factor * (bent ? load.get().moment() : load.get().shear());
      Optional<Figure> bears = bent || sheared ? side.apply(other) : Optional.empty();
      if (bears.isPresent() && asked > 0) {
        least = Math.min(least, bears.get().value() / asked * (bent ? bending : shear));
      }
    }
    return Optional.of(least);
  }

  private static String why(AtItsSize drawn, AtItsSize built, double sized) {
    return "its strengths are means, as of small clear pieces, and a large piece is weaker: at its"
        + " size it is "
        + Print.ratio(sized)
        + " (as built "
        + built.words()
        + ", as drawn "
        + drawn.words()
        + "; Wood Handbook, equations 9-18 to 9-20). Make it larger, or state strengths of timber"
        + " of its size (basis: characteristic)";
  }

  private String words() {
    return Print.ratio(bending) + " in bending and " + Print.ratio(shear) + " in shear";
  }
}
