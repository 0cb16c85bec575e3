package kitwright.assessment.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitwright.assessment.sheet.Row.Limit;
import kitwright.assessment.sheet.Row.Limit.Side;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.value.Ref;

/** Sets the part as built beside the part as designed, and both against what is asked. */
public final class Comparison {
  private static final double ROUNDING = 1e-9;

  /**
   * Of what is asked along: a skin that bears less than half in shear is of another kind. Common
   * practice, no source.
   */
  private static final double SHEARED = 0.5;

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
    if (assessment.method() == Method.LAMINATE) {
      weakerAside(limits);
    }
    if (assessment.method() == Method.BOLT) {
      throughWood(known, limits);
    }
    return rows;
  }

  /**
   * A bolt that is pulled or sheared bears no more than what it goes through: what is asked of the
   * one alone says nothing of the other.
   */
  private void throughWood(Set<Measure> known, Map<Measure, Limit> limits) {
    for (Measure pressed : List.of(Measure.BOLT_WASHER, Measure.CRUSHING)) {
      as(Measure.BOLT_TENSION, pressed, known, limits);
      as(Measure.BOLT_PROOF, pressed, known, limits);
      as(pressed, Measure.BOLT_TENSION, known, limits);
    }
    as(Measure.BOLT_SHEAR, Measure.BOLT_BEARING, known, limits);
  }

  /** What bears the same load must reach the same limit, where nobody asked for less of it. */
  private void as(Measure asked, Measure aside, Set<Measure> known, Map<Measure, Limit> limits) {
    Limit limit = limits.get(asked);
    if (limit == null
        || limit.side() != Side.AT_LEAST
        || limits.containsKey(aside)
        || !known.contains(aside)) {
      return;
    }
    Row row = row(aside, Optional.of(limit));
    boolean told = row.lacking().isEmpty() && row.ratio().isPresent();
    if (told && !row.fails()) {
      return;
    }
    lacking.add(
        told
            ? aside.words()
                + " is "
                + Print.ratio(row.ratio().getAsDouble())
                + " of the design value, and only “"
                + asked.key()
                + "” was asked: ask for "
                + aside.key()
                + " too, with the reason (less-because) where less is enough"
            : (row.lacking().isEmpty()
                    ? "only one of both sections lists what its bolts go through"
                    : String.join("; ", row.lacking()))
                + ": so the "
                + aside.words()
                + " is not known, and it bears what “"
                + asked.key()
                + "” asks");
  }

  /**
   * What is asked of a laminate along its length alone says nothing of what it bears across or
   * sheared, where fibres of one direction are put in place of a woven cloth.
   */
  private void weakerAside(Map<Measure, Limit> limits) {
    weaker(Measure.STRETCH, Measure.STRETCH_ACROSS, 1, limits);
    weaker(Measure.TENSION, Measure.TENSION_ACROSS, 1, limits);
    weaker(Measure.COMPRESSION, Measure.COMPRESSION_ACROSS, 1, limits);
    weaker(Measure.TENSION, Measure.SHEAR_STRENGTH, SHEARED, limits);
  }

  private void weaker(Measure asked, Measure aside, double share, Map<Measure, Limit> limits) {
    Limit limit = limits.get(asked);
    if (limit == null || limit.side() != Side.AT_LEAST || limits.containsKey(aside)) {
      return;
    }
    OptionalDouble ratio = row(aside, Optional.empty()).ratio();
    if (ratio.isPresent()
        && ratio.getAsDouble() < share * Math.min(1, limit.value()) * (1 - ROUNDING)) {
      lacking.add(
          aside.words()
              + " is "
              + Print.ratio(ratio.getAsDouble())
              + " of the design value, and only what it bears along was asked: ask for "
              + aside.key()
              + " too, with the reason (less-because) where less is enough");
    }
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
    if (assessment.method().isOfBeam()
        && key.equals("strength")
        && assessment.load().isEmpty()
        && !known.isEmpty()) {
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

  /** What bears too little by a value that it reaches at least may bear enough. */
  private static Row untold(Row row) {
    List<String> lacks = new ArrayList<>(row.lacking());
    lacks.add(
        "a wall of the part as built buckles in shear at the least at less than is asked, and may"
            + " bear more: a thicker wall, or one that somebody has worked out");
    return new Row(row.measure(), row.designed(), Optional.empty(), row.limit(), lacks);
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
    Row row =
        new Row(
            measure,
            designed.of(measure),
            built.of(measure),
            limit,
            lacks.stream().distinct().toList());
    return built.isAtLeast(measure) && row.fails() ? untold(row) : row;
  }
}
