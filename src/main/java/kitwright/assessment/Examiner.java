package kitwright.assessment;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.assessment.BeamLoad.Own;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.load.Cantilever;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Works one assessment out. Local to that one: it gathers what is lacking on the way. Nothing is
 * guessed: what has no value or no source keeps the verdict open.
 */
final class Examiner {
  private final Assessment assessment;
  private final Function<Ref, Optional<Section>> sections;
  private final Stuffs stuffs;
  private final List<String> lacking = new ArrayList<>();
  private final List<String> failing = new ArrayList<>();
  private final Map<String, Optional<Part>> parts = new LinkedHashMap<>();
  private final Map<String, Bending> bendings = new HashMap<>();
  private final List<BeamLoad> loads = new ArrayList<>();
  private Optional<BeamLoad> bare = Optional.empty();
  private Optional<Outcome> drawn = Optional.empty();
  private boolean sideways = true;

  /**
   * @param stuffs of this assessment, empty as yet
   */
  Examiner(Assessment assessment, Function<Ref, Optional<Section>> sections, Stuffs stuffs) {
    this.assessment = assessment;
    this.sections = sections;
    this.stuffs = stuffs;
  }

  /** What both sides come to. */
  private record Compared(Outcome designed, Outcome built, List<Row> rows) {}

  /**
   * One that has worked out whatever does not hang on the built section: many an {@link #again} may
   * follow. None of them notes anything here.
   */
  static Examiner ahead(
      Assessment assessment, Function<Ref, Optional<Section>> sections, Stuffs stuffs) {
    Examiner ahead = new Examiner(assessment, sections, stuffs);
    ahead.start();
    ahead.sideways =
        Stream.concat(assessment.require().keySet().stream(), assessment.allow().keySet().stream())
            .anyMatch(name -> name.id().endsWith("-across"));
    if (!ahead.isBuilt(assessment.designed())) {
      ahead.drawn = Optional.of(ahead.side(assessment.designed(), "designed"));
    }
    assessment
        .weakLink()
        .filter(link -> ahead.isBeam())
        .ifPresent(
            link ->
                Stream.of(link.sacrificial(), link.protectedPart())
                    .filter(ref -> !ahead.isBuilt(Optional.of(ref)))
                    .flatMap(ref -> sections.apply(ref).stream())
                    .filter(section -> !isBolt(section))
                    .forEach(section -> ahead.part(section).ifPresent(ahead::bending)));
    return ahead;
  }

  /** The same assessment with another built section. */
  Examiner again(Function<Ref, Optional<Section>> other) {
    Examiner again = new Examiner(assessment, other, stuffs.branch());
    again.lacking.addAll(lacking);
    again.parts.putAll(parts);
    again.bendings.putAll(bendings);
    again.bare = bare;
    again.drawn = drawn;
    again.sideways = sideways;
    return again;
  }

  private boolean isBuilt(Optional<Ref> ref) {
    return ref.map(Ref::id).equals(assessment.built().map(Ref::id));
  }

  private void start() {
    checkFactors();
    if (isBeam()) {
      bare = assessment.load().flatMap(some -> BeamLoad.of(some, lacking));
      load(List.of());
    }
  }

  private Compared compared() {
    Outcome designed = drawn.orElseGet(() -> side(assessment.designed(), "designed"));
    Outcome built = side(assessment.built(), "built");
    if (assessment.built().isEmpty()) {
      lacking.add("it does not name the section as built (“built”)");
    }
    return new Compared(
        designed, built, new Comparison(assessment, designed, built, lacking).rows());
  }

  /**
   * Whether the verdict may be a pass, as a search asks many times over: nothing that nobody asks
   * for is worked out, no more once something that is asked does not hold, and nothing is put into
   * words. Where it says no, {@link #result} does not pass.
   */
  boolean mayPass() {
    List<Row> rows = new ArrayList<>(compared().rows());
    if (!rows.stream().allMatch(Examiner::holds)) {
      return false;
    }
    judgeAlike(rows);
    links(rows);
    return failing.isEmpty()
        && rows.stream().allMatch(Examiner::holds)
        && open(rows, leaning(rows)).isEmpty()
        && untold(rows).isEmpty();
  }

  private static boolean holds(Row row) {
    return row.limit().isEmpty() || row.outcome().filter(Verdict.Outcome.PASS::equals).isPresent();
  }

  Result result() {
    start();
    Compared compared = compared();
    List<Row> rows = new ArrayList<>(compared.rows());
    judgeAlike(rows);
    WeakLinks links = links(rows);
    List<Input> leaning = leaning(rows);
    List<Working> working = new ArrayList<>(stuffs.cured());
    working.addAll(compared.designed().working().get());
    working.addAll(compared.built().working().get());
    depth().ifPresent(working::add);
    return new Result(
        assessment,
        verdict(rows, leaning),
        rows,
        stuffs.inputs(),
        leaning,
        Factors.of(assessment).lines(),
        List.copyOf(loadLines()),
        working,
        links.stations(),
        stuffs.notes(),
        cautions(rows, links),
        parts.values().stream()
            .flatMap(Optional::stream)
            .map(part -> Sketch.of(part, stuffs))
            .toList());
  }

  private void checkFactors() {
    assessment
        .factors()
        .forEach(
            (name, value) -> {
              if (!Factors.isPossible(value)) {
                lacking.add("the factor “" + name + "” lies outside 0 to 2");
              }
            });
  }

  /** The load is told even where a section cannot be worked out. */
  private Set<String> loadLines() {
    Set<String> lines = new LinkedHashSet<>();
    loads.forEach(load -> lines.addAll(load.how()));
    return lines;
  }

  private boolean isBeam() {
    return assessment.method() == Method.SECTION || assessment.method() == Method.TIMBER;
  }

  /** The load with the own weight of so many parts, where it asks for that. */
  private Optional<BeamLoad> load(List<Own> own) {
    Optional<BeamLoad> load = bare.map(some -> some.with(own));
    load.filter(some -> !some.stated().selfWeight() || !own.isEmpty()).ifPresent(loads::add);
    return load;
  }

  private Outcome side(Optional<Ref> ref, String which) {
    if (ref.isEmpty()) {
      return Outcome.nothing();
    }
    Optional<Section> section = sections.apply(ref.get());
    if (section.isEmpty()) {
      lacking.add("there is no section “" + ref.get() + "” (" + which + ")");
      return Outcome.nothing();
    }
    return switch (assessment.method()) {
      case SECTION, TIMBER ->
          part(section.get())
              .map(
                  part ->
                      SectionMethod.of(
                          part, bending(part), sideways, load(List.of(Own.of(part))), factor()))
              .orElseGet(Outcome::nothing);
      case PANEL -> panel(section.get());
      case LAMINATE -> stack(section.get()).map(LaminateMethod::of).orElseGet(Outcome::nothing);
      case BOLT -> bolt(section.get());
      case EXTERNAL -> Outcome.nothing();
    };
  }

  private Optional<Working> depth() {
    return isBeam()
        ? drawn(assessment.designed())
            .flatMap(
                drawn -> drawn(assessment.built()).flatMap(made -> TimberDepth.of(drawn, made)))
        : Optional.empty();
  }

  private Optional<Part> drawn(Optional<Ref> ref) {
    return ref.flatMap(sections).flatMap(this::part);
  }

  private List<String> cautions(List<Row> rows, WeakLinks links) {
    List<String> all = new ArrayList<>(links.cautions().get());
    rows.stream()
        .filter(row -> row.measure() == Measure.MOMENT_SAGGING)
        .forEach(
            row ->
                drawn(assessment.designed())
                    .flatMap(
                        one ->
                            drawn(assessment.built())
                                .flatMap(other -> Unlike.caution(one, other, row)))
                    .ifPresent(all::add));
    Bases bases = Bases.of(stuffs.inputs());
    if (bases.mixed()) {
      all.add(bases.words());
    }
    all.addAll(Galvanic.cautions(assessment, sections, stuffs::material));
    return all;
  }

  private Outcome panel(Section section) {
    Optional<PanelMethod.Pressed> pressed =
        assessment.load().flatMap(some -> PanelMethod.Pressed.of(some, lacking));
    if (assessment.load().isEmpty()) {
      lacking.add("a panel needs a load: pressure, span, breadth and support");
    }
    Optional<Part> part = stack(section);
    return pressed
        .flatMap(asked -> part.map(one -> PanelMethod.of(one, asked)))
        .orElseGet(Outcome::nothing);
  }

  private Outcome bolt(Section section) {
    if (!isBolt(section)) {
      lacking.add(section.named() + " is no bolt (shape: bolt, with a diameter)");
      return Outcome.nothing();
    }
    return BoltMethod.of(section, stuffs, new Findings());
  }

  private static boolean isBolt(Section section) {
    return section.shape().filter(Section.Shape.BOLT::equals).isPresent();
  }

  /** A part of layers that reach over its whole width. */
  private Optional<Part> stack(Section section) {
    Optional<Part> part = part(section);
    part.filter(one -> one.stack().isEmpty())
        .ifPresent(
            one ->
                lacking.add(
                    section.named()
                        + " is no stack of layers over its whole width, which a panel or laminate"
                        + " needs: list its layers"));
    return part.filter(one -> !one.stack().isEmpty());
  }

  private double factor() {
    return assessment.load().map(some -> some.factor().doubleValue()).orElse(1.0);
  }

  private Optional<Part> part(Section section) {
    if (isBolt(section)) {
      lacking.add(section.named() + " is a bolt, which method: bolt works out");
      return Optional.empty();
    }
    return parts.computeIfAbsent(section.id(), id -> new Parts(stuffs, new Findings()).of(section));
  }

  private Bending bending(Part part) {
    return bendings.computeIfAbsent(part.id(), id -> Bending.of(part.beam()));
  }

  private void judgeAlike(List<Row> rows) {
    if (isBeam()) {
      drawn(assessment.designed())
          .ifPresent(
              one ->
                  drawn(assessment.built())
                      .ifPresent(other -> Unlike.judge(one, other, rows, failing, lacking)));
    }
  }

  private WeakLinks links(List<Row> rows) {
    if (assessment.weakLink().isEmpty()) {
      return WeakLinks.lacking(List.of());
    }
    Assessment.WeakLink link = assessment.weakLink().get();
    WeakLinks worked = worked(link);
    lacking.addAll(worked.lacking());
    Row.Limit least = new Row.Limit(Row.Limit.Side.AT_LEAST, link.margin().doubleValue());
    Row row = link(worked.margin(), least, worked.lacking());
    rows.add(row);
    worked
        .alike()
        .filter(alike -> link(Optional.of(alike), least, List.of()).fails() && !row.fails())
        .ifPresent(
            alike ->
                failing.add(
                    "protected over sacrificial part is "
                        + Print.ratio(alike)
                        + " with both judged by tension and compression, not at least "
                        + Print.number(least.value())));
    double meant = link.breaksAt().map(Quantity::base).orElse(0.0);
    worked
        .first()
        .filter(first -> !first.part().equals(link.sacrificial().id()) || far(first.at(), meant))
        .ifPresent(
            first ->
                failing.add(
                    "it breaks first "
                        + Print.with(first.at() * 1000, "mm")
                        + " from the support, in "
                        + first.part()
                        + " ("
                        + first.mode()
                        + "), not in "
                        + link.sacrificial()));
    return worked;
  }

  private static Row link(Optional<Double> margin, Row.Limit least, List<String> lacking) {
    return new Row(
        Measure.LINK, Optional.empty(), margin.map(Figure::of), Optional.of(least), lacking);
  }

  private static boolean far(double at, double meant) {
    return Math.abs(at - meant) > 1e-6;
  }

  private WeakLinks worked(Assessment.WeakLink link) {
    if (link.sacrificial().id().equals(link.protectedPart().id())) {
      return WeakLinks.lacking(List.of("its weak link protects a section from itself"));
    }
    Optional<Section> weak = sections.apply(link.sacrificial());
    Optional<Section> safe = sections.apply(link.protectedPart());
    if (!isBeam() || load(List.of()).flatMap(BeamLoad::cantilever).isEmpty()) {
      return WeakLinks.lacking(List.of("a weak link needs a load on a cantilever"));
    }
    if (weak.isEmpty() || safe.isEmpty()) {
      return WeakLinks.lacking(List.of("a section of its weak link does not exist"));
    }
    double at = link.breaksAt().map(Quantity::base).orElse(0.0);
    Optional<Part> kept = part(safe.get());
    if (isBolt(weak.get())) {
      return kept.map(
              one ->
                  PinLink.of(
                      weak.get(), one, bending(one), cantilever(List.of(Own.of(one))), at, stuffs))
          .orElseGet(() -> WeakLinks.lacking(List.of()));
    }
    return part(weak.get())
        .flatMap(
            one ->
                kept.map(
                    other ->
                        WeakLinks.of(
                            one, other, this::bending, cantilever(Own.joined(other, one, at)), at)))
        .orElseGet(() -> WeakLinks.lacking(List.of()));
  }

  private Cantilever cantilever(List<Own> own) {
    return load(own).flatMap(BeamLoad::cantilever).orElseThrow();
  }

  /** Values that a requirement leans on and that nobody vouches for. */
  private List<Input> leaning(List<Row> rows) {
    Set<Measure> asked = EnumSet.noneOf(Measure.class);
    rows.stream().filter(row -> row.limit().isPresent()).map(Row::measure).forEach(asked::add);
    return stuffs.inputs().stream()
        .filter(input -> !input.trust().holds())
        .filter(
            input ->
                asked.stream()
                    .anyMatch(
                        measure ->
                            measure.leansOn(input.property(), input.sort())
                                || weighs(measure, input.property())))
        .toList();
  }

  /** With self-weight what a load asks of a part leans on how heavy it is. */
  private boolean weighs(Measure measure, MaterialProperty property) {
    return property == MaterialProperty.DENSITY
        && measure.loaded()
        && assessment.load().filter(Assessment.Load::selfWeight).isPresent();
  }

  private Verdict verdict(List<Row> rows, List<Input> leaning) {
    rows.stream().filter(Row::fails).forEach(row -> failing.add(missed(row)));
    Set<String> open = open(rows, leaning);
    if (!failing.isEmpty()) {
      List<String> reasons = new ArrayList<>(failing);
      open.forEach(unknown -> reasons.add("not known: " + unknown));
      return Verdict.fail(reasons);
    }
    if (open.isEmpty()) {
      open.addAll(untold(rows));
    }
    return open.isEmpty() ? Verdict.pass() : Verdict.cannotTell(List.copyOf(open));
  }

  /** What is lacking for a verdict, each a clause. */
  private Set<String> open(List<Row> rows, List<Input> leaning) {
    Set<String> open = new LinkedHashSet<>(stuffs.lacking());
    open.addAll(lacking);
    rows.stream().filter(row -> row.limit().isPresent()).forEach(row -> open.addAll(row.lacking()));
    leaning.forEach(
        input ->
            open.add(
                input.named()
                    + " "
                    + input.trust().words()
                    + (input.trust() == Trust.UNCONFIRMED
                        ? " (" + input.source() + ")"
                        : "; write where it comes from with the material")));
    sourceOfLoad(rows).ifPresent(open::add);
    if (assessment.require().isEmpty()
        && assessment.allow().isEmpty()
        && assessment.weakLink().isEmpty()) {
      open.add("it requires nothing (“require”)");
    }
    return open;
  }

  /** What is asked and has no number: nothing passes by not being there. */
  private List<String> untold(List<Row> rows) {
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

  private Optional<String> sourceOfLoad(List<Row> rows) {
    boolean leans =
        rows.stream().anyMatch(row -> row.limit().isPresent() && row.measure().absolute());
    return assessment
        .load()
        .filter(some -> leans && some.source().filter(source -> !source.isBlank()).isEmpty())
        .map(some -> "the load has no source");
  }

  private static String missed(Row row) {
    Row.Limit limit = row.limit().orElseThrow();
    double number = row.compared().orElseThrow();
    boolean least = limit.side() == Row.Limit.Side.AT_LEAST;
    return row.measure().words()
        + " is "
        + (least ? Print.ratio(number) : Print.ratioUp(number))
        + (row.measure().absolute() ? "" : " of the designed")
        + ", not "
        + limit.side().words()
        + " "
        + Print.number(limit.value())
        + row.built().flatMap(Figure::governing).map(how -> " (" + how + ")").orElse("");
  }
}
