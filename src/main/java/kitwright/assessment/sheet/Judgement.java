package kitwright.assessment.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Assessment;
import kitwright.ledger.Load;
import kitwright.ledger.MaterialProperty;

/**
 * What the rows of an assessment come to. Nothing passes by not being there: what has no number, no
 * source or no basis keeps the verdict open.
 */
public final class Judgement {
  /** What one that asks for weight or size alone is answered. */
  public static final String NO_STRENGTH =
      "nothing about strength was asked: add what the part must bear under “require”, such as"
          + " moment, strength or reserve";

  /** What a part that is too weak has as well, or more of. */
  private static final Set<String> BEARS_NOTHING = Set.of("mass", "thickness", "deflection");

  private final Assessment assessment;
  private final List<Row> rows;
  private final Inputs inputs;
  private final List<String> lacking;
  private final List<String> unlike;

  /**
   * @param lacking what the working out lacked
   * @param unlike why strengths cannot be compared, where they cannot
   */
  public Judgement(
      Assessment assessment,
      List<Row> rows,
      Inputs inputs,
      List<String> lacking,
      List<String> unlike) {
    this.assessment = assessment;
    this.rows = rows;
    this.inputs = inputs;
    this.lacking = lacking;
    this.unlike = unlike;
  }

  /** Values that a requirement leans on and that nobody vouches for. */
  private List<Input> leaning() {
    Set<Measure> asked = EnumSet.noneOf(Measure.class);
    rows.stream().filter(row -> row.limit().isPresent()).map(Row::measure).forEach(asked::add);
    return inputs.all().stream()
        .filter(input -> !input.trust().holds())
        .filter(input -> asked.stream().anyMatch(measure -> leans(measure, input)))
        .toList();
  }

  private boolean leans(Measure measure, Input input) {
    return measure.leansOn(input.property(), input.sort()) || weighs(measure, input.property());
  }

  /** With self-weight what a load asks of a part leans on how heavy it is. */
  private boolean weighs(Measure measure, MaterialProperty property) {
    return property == MaterialProperty.DENSITY
        && measure.loaded()
        && assessment.load().filter(Load::selfWeight).isPresent();
  }

  /** Fails where something that is asked is missed; passes only where nothing is lacking. */
  public Verdict verdict(List<String> failing) {
    List<String> missed = new ArrayList<>(failing);
    rows.stream().filter(Row::fails).forEach(row -> missed.add(missed(row)));
    Set<String> open = open();
    if (!missed.isEmpty()) {
      open.forEach(unknown -> missed.add("not known: " + unknown));
      return Verdict.fail(missed);
    }
    if (open.isEmpty()) {
      open.addAll(untold());
    }
    return open.isEmpty() ? Verdict.pass() : Verdict.cannotTell(List.copyOf(open));
  }

  /** Whether nothing is lacking. */
  public boolean isClosed() {
    return open().isEmpty() && untold().isEmpty();
  }

  /** What is lacking for a verdict, each a clause. */
  private Set<String> open() {
    Set<String> open = new LinkedHashSet<>(inputs.lacking());
    open.addAll(lacking);
    if (leansOnStrength()) {
      open.addAll(unlike);
    }
    rows.stream().filter(row -> row.limit().isPresent()).forEach(row -> open.addAll(row.lacking()));
    rows.forEach(row -> row.divided().ifPresent(open::add));
    leaning().forEach(input -> open.add(because(input)));
    rows.stream().filter(Judgement::asksNothing).forEach(row -> open.add(nothing(row)));
    sourceOfLoad().ifPresent(open::add);
    if (assessment.require().isEmpty()
        && assessment.allow().isEmpty()
        && assessment.weakLink().isEmpty()) {
      open.add("it requires nothing (“require”)");
    } else if (asksOfNoLoad(assessment)) {
      open.add(NO_STRENGTH);
    }
    return open;
  }

  /**
   * Whether nothing that it asks for is missed by a part too weak: it asks for weight or size
   * alone, or sets but a most to what the part bears.
   */
  public static boolean asksOfNoLoad(Assessment assessment) {
    return assessment.weakLink().isEmpty()
        && assessment.require().keySet().stream().allMatch(one -> BEARS_NOTHING.contains(one.id()))
        && assessment.allow().keySet().stream().noneMatch(one -> one.id().equals("deflection"));
  }

  /** A least that everything meets. */
  private static boolean asksNothing(Row row) {
    return row.limit()
        .filter(limit -> limit.side() == Row.Limit.Side.AT_LEAST && !(limit.value() > 0))
        .isPresent();
  }

  private static String nothing(Row row) {
    return "of " + row.measure().key() + " it asks for zero, which everything meets";
  }

  private boolean leansOnStrength() {
    return rows.stream()
        .filter(row -> row.limit().isPresent())
        .anyMatch(row -> row.measure().isStrength());
  }

  private static String because(Input input) {
    String words = input.named() + " " + input.trust().words();
    return switch (input.trust()) {
      case UNCONFIRMED, ASSUMED -> words + " (" + input.source() + ")";
      case INVENTED -> "the values of " + input.material() + " are invented for a demonstration";
      case UNSOURCED, SOURCED, DERIVED, DEMONSTRATED ->
          words + "; write where it comes from with the material";
    };
  }

  /** What is asked and has no number: nothing passes by not being there. */
  private List<String> untold() {
    List<String> untold = new ArrayList<>();
    rows.stream()
        .filter(row -> row.outcome().filter(Verdict.Outcome.CANNOT_TELL::equals).isPresent())
        .forEach(row -> untold.add(row.measure().words() + " could not be worked out"));
    boolean asks = !assessment.require().isEmpty() || !assessment.allow().isEmpty();
    if (asks && rows.stream().allMatch(row -> row.limit().isEmpty())) {
      untold.add("nothing that it asks could be worked out");
    }
    return untold;
  }

  private Optional<String> sourceOfLoad() {
    boolean leans =
        rows.stream().anyMatch(row -> row.limit().isPresent() && row.measure().loaded());
    return assessment
        .load()
        .filter(some -> leans && some.source().filter(Sources::isOne).isEmpty())
        .map(some -> "the load has no source");
  }

  private static String missed(Row row) {
    Row.Limit limit = row.limit().orElseThrow();
    double number = row.compared().orElseThrow();
    boolean least = limit.side() == Row.Limit.Side.AT_LEAST;
    return row.measure().words()
        + " is "
        + (least ? Print.ratio(number) : Print.ratioUp(number))
        + (row.measure().absolute() ? "" : " of the design value")
        + row.built().flatMap(Figure::governing).map(how -> " (" + how + ")").orElse("")
        + ", where "
        + limit.side().words()
        + " "
        + Print.number(limit.value())
        + " is required";
  }
}
