package kitwright.assessment.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.sheet.Row.Limit;
import kitwright.assessment.sheet.Row.Limit.Side;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.value.Ref;

/** Sets the part as built beside the part as designed, and both against what is asked. */
public final class Comparison {
  private final Assessment assessment;
  private final Figures designed;
  private final Figures built;
  private final List<String> lacking;

  public Comparison(Assessment assessment, Outcome designed, Outcome built, List<String> lacking) {
    this.assessment = assessment;
    this.designed = designed.figures();
    this.built = built.figures();
    this.lacking = lacking;
  }

  public List<Row> rows() {
    Set<Measure> known = EnumSet.noneOf(Measure.class);
    known.addAll(designed.known());
    known.addAll(built.known());
    Map<Measure, Limit> limits = new EnumMap<>(Measure.class);
    assessment.require().forEach((name, least) -> limit(name, Side.AT_LEAST, least, known, limits));
    assessment.allow().forEach((name, most) -> limit(name, Side.AT_MOST, most, known, limits));
    List<Row> rows = new ArrayList<>();
    for (Measure measure : known) {
      boolean shown = measure != Measure.FIRST_FAILURE && isNumber(measure);
      if (shown || limits.containsKey(measure)) {
        rows.add(row(measure, Optional.ofNullable(limits.get(measure))));
      }
    }
    return rows;
  }

  /** One that is known of neither, and that nobody asks for, would be a row of dashes. */
  private boolean isNumber(Measure measure) {
    return designed.of(measure).isPresent() || built.of(measure).isPresent();
  }

  private void limit(
      Ref name, Side side, BigDecimal value, Set<Measure> known, Map<Measure, Limit> limits) {
    List<Measure> measures = measures(name.id(), known);
    if (measures.isEmpty() && !known.isEmpty()) {
      lacking.add(
          "“"
              + name
              + "” is not told by this method"
              + (Measure.anyOf(name.id()).filter(Measure::loaded).isPresent()
                  ? because(name.id())
                  : "; it tells " + told(known)));
    }
    measures.forEach(measure -> limits.put(measure, new Limit(side, value.doubleValue())));
  }

  private static String told(Set<Measure> known) {
    return String.join(", ", known.stream().map(Measure::key).distinct().toList());
  }

  /** The strength of a beam without a load is that of each way it may fail. */
  private List<Measure> measures(String key, Set<Measure> known) {
    boolean beam = assessment.method() == Method.SECTION || assessment.method() == Method.TIMBER;
    if (beam && key.equals("strength") && assessment.load().isEmpty() && !known.isEmpty()) {
      return List.of(Measure.MOMENT_SAGGING, Measure.MOMENT_HOGGING, Measure.SHEAR);
    }
    return Measure.of(key, known);
  }

  private String because(String key) {
    boolean needsLoad =
        Measure.anyOf(key).isPresent()
            && assessment.load().isEmpty()
            && (key.equals("reserve") || key.equals("deflection"));
    if (assessment.load().isPresent()) {
      return ", since its load could not be taken";
    }
    return needsLoad ? ", since the assessment states no load" : "";
  }

  private Row row(Measure measure, Optional<Limit> limit) {
    List<String> lacks = new ArrayList<>(built.lacking(measure));
    if (!measure.absolute()) {
      lacks.addAll(designed.lacking(measure));
      if (limit.isPresent() && designed.isAtLeast(measure)) {
        lacks.add(
            "a wall of the part as drawn buckles in shear at the least at the load told, and may"
                + " bear more, which the part as built would have to bear too");
      }
      if (limit.isPresent() && assessment.designed().isEmpty()) {
        lacks.add("it does not name the section as designed (“designed”)");
      }
    }
    return new Row(
        measure,
        designed.of(measure),
        built.of(measure),
        limit,
        lacks.stream().distinct().toList());
  }
}
