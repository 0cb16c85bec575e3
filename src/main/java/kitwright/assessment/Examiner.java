package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.assessment.joint.CoreUnderFittings;
import kitwright.assessment.joint.Galvanic;
import kitwright.assessment.joint.WeakLinks;
import kitwright.assessment.material.Bases;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Moist;
import kitwright.assessment.method.AtItsSize;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.method.Crushed;
import kitwright.assessment.method.LoadStated;
import kitwright.assessment.method.TimberDepth;
import kitwright.assessment.method.Unlike;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Comparison;
import kitwright.assessment.sheet.Judgement;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Slender;
import kitwright.assessment.sheet.Sources;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Working;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.value.Ref;

/**
 * Works one assessment out. Local to that one: it gathers what is lacking on the way. Nothing is
 * guessed: what has no value or no source keeps the verdict open.
 */
final class Examiner {
  private final Case of;
  private final Assessment assessment;
  private final Used used;
  private final WorkedParts parts;
  private LoadOnBeam load = new LoadOnBeam(Optional.empty());
  private Optional<Outcome> drawn = Optional.empty();
  private boolean sideways = true;

  /**
   * @param materials of this assessment, none taken as yet
   */
  Examiner(Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    this.assessment = assessment;
    of = Case.of(assessment, sections, materials);
    used = of.used();
    parts = new WorkedParts(of);
  }

  /** What both sides come to. */
  private record Compared(Outcome designed, Outcome built, List<Row> rows) {}

  /**
   * One that has worked out whatever does not hang on the built section: many an {@link #again} may
   * follow. None of them notes anything here.
   */
  static Examiner ahead(
      Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    Examiner ahead = new Examiner(assessment, sections, materials);
    ahead.start();
    ahead.sideways =
        Stream.concat(assessment.require().keySet().stream(), assessment.allow().keySet().stream())
            .anyMatch(name -> name.id().endsWith("-across"));
    if (!ahead.isBuilt(assessment.designed())) {
      ahead.drawn = Optional.of(ahead.side(assessment.designed(), Side.DESIGNED));
    }
    assessment
        .weakLink()
        .filter(link -> assessment.method().isOfBeam())
        .ifPresent(
            link ->
                link.parts()
                    .filter(ref -> !ahead.isBuilt(Optional.of(ref)))
                    .flatMap(ref -> sections.apply(ref).stream())
                    .filter(section -> !section.isBolt())
                    .flatMap(section -> ahead.parts.linked(section).stream())
                    .forEach(ahead.parts::bending));
    return ahead;
  }

  /** The same assessment with another built section. */
  Examiner again(Function<Ref, Optional<Section>> other) {
    Examiner again = new Examiner(assessment, other, of.materials().branch());
    again.of.lacking().addAll(of.lacking());
    again.parts.addAll(parts);
    again.load = new LoadOnBeam(load.bare());
    again.drawn = drawn;
    again.sideways = sideways;
    return again;
  }

  private boolean isBuilt(Optional<Ref> ref) {
    return ref.map(Ref::id).equals(assessment.built().map(Ref::id));
  }

  private void start() {
    List<String> lacking = of.lacking();
    Factors.of(assessment, lacking);
    lacking.addAll(of.factors().idle(used.laid()));
    lacking.addAll(Moist.lacking(used.all(), of.factors()));
    lacking.addAll(of.materials().twice(assessment, used.all()));
    lacking.addAll(Implausible.of(of));
    LoadStated.factor(assessment).ifPresent(lacking::add);
    if (Sources.of(assessment).areOfNothing()) {
      of.inputs()
          .note(
              "a source that names no material vouches for none: write “larch: where it comes"
                  + " from”");
    }
    if (assessment.method().isOfBeam()) {
      load = new LoadOnBeam(assessment.load().flatMap(some -> BeamLoad.of(some, lacking)));
    } else if (assessment.load().isPresent() && assessment.method() != Method.PANEL) {
      lacking.add(
          "the load is not worked out by this method, which compares without one: take section,"
              + " timber or panel, or leave the load out");
    }
  }

  private Compared compared() {
    Outcome designed = drawn.orElseGet(() -> side(assessment.designed(), Side.DESIGNED));
    Outcome built = side(assessment.built(), Side.BUILT);
    if (assessment.method() == Method.BOLT) {
      of.lacking()
          .addAll(
              CoreUnderFittings.thinner(
                  of.section(assessment.designed()), of.section(assessment.built())));
    }
    if (assessment.built().isEmpty()) {
      of.lacks("it does not name the section as built (“built”)");
    }
    counted();
    return new Compared(
        designed, built, new Comparison(assessment, designed, built, of.lacking()).rows());
  }

  /** How many fastenings there are is told of both sides or of none. */
  private void counted() {
    if (assessment.method() != Method.BOLT) {
      return;
    }
    Optional<Section> one = of.section(assessment.designed());
    Optional<Section> other = of.section(assessment.built());
    if (one.isEmpty() || other.isEmpty() || isCounted(one.get()) == isCounted(other.get())) {
      return;
    }
    Section without = isCounted(one.get()) ? other.get() : one.get();
    of.lacks(
        without.named()
            + " does not state its count, and what it is set beside does: write count: 1 among"
            + " its dimensions if it is one");
  }

  private static boolean isCounted(Section section) {
    return section.dimensions().keySet().stream().anyMatch(name -> name.id().equals("count"));
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
    tipped(rows);
    links(rows);
    return of.failing().isEmpty()
        && rows.stream().allMatch(Examiner::holds)
        && judgement(rows).isClosed();
  }

  private Judgement judgement(List<Row> rows) {
    return new Judgement(assessment, rows, of.inputs(), of.lacking(), of.unlike());
  }

  private static boolean holds(Row row) {
    return row.limit().isEmpty() || row.outcome().filter(Verdict.Outcome.PASS::equals).isPresent();
  }

  Result result() {
    return result(true);
  }

  /**
   * The same; without samples how likely a weak link breaks in the wrong order is left open.
   *
   * @param sampled whether chances are sampled
   */
  Result result(boolean sampled) {
    start();
    Compared compared = compared();
    List<Row> rows = new ArrayList<>(compared.rows());
    judgeAlike(rows);
    tipped(rows);
    WeakLinks links = links(rows);
    if (sampled) {
      assessment
          .weakLink()
          .filter(link -> of.failing().isEmpty() && rows.stream().noneMatch(Row::fails))
          .ifPresent(link -> rows.add(new WrongOrder(of).row(link)));
    }
    List<Working> working = new ArrayList<>(of.inputs().cured());
    working.addAll(compared.designed().working().get());
    working.addAll(compared.built().working().get());
    if (assessment.method().isOfBeam()) {
      parts
          .made()
          .flatMap(one -> atItsSize(one).working(one, load.with(one)))
          .ifPresent(working::add);
      parts.both((drawn, made) -> TimberDepth.of(drawn, made).ifPresent(working::add));
    }
    return new Result(
        assessment,
        judgement(rows).verdict(of.failing()),
        rows,
        of.inputs().all(),
        of.factors().lines(),
        load.lines(),
        working,
        links.stations(),
        of.inputs().notes(),
        cautions(rows, links),
        parts.sketches());
  }

  private List<String> cautions(List<Row> rows, WeakLinks links) {
    List<String> all = new ArrayList<>(links.cautions().get());
    rows.stream()
        .filter(
            row -> row.measure() == Measure.MOMENT_SAGGING || row.measure() == Measure.PLATE_MOMENT)
        .forEach(
            row ->
                parts.both((drawn, made) -> Unlike.caution(drawn, made, row).ifPresent(all::add)));
    Bases bases = Bases.of(of.inputs().all());
    if (bases.mixed()) {
      all.add(bases.words());
    }
    same(rows).ifPresent(all::add);
    all.addAll(Slender.cautions(assessment, rows));
    all.addAll(of.materials().overrides(used.all()));
    all.addAll(Galvanic.cautions(assessment, of.sections(), of.materials()::material));
    return all;
  }

  /** Of one and the same section every ratio is 1: a slip of the pen looks like a pass. */
  private Optional<String> same(List<Row> rows) {
    boolean compares =
        rows.stream().anyMatch(row -> row.limit().isPresent() && !row.measure().absolute());
    Optional<String> drawn = assessment.designed().map(Ref::id);
    return assessment
        .built()
        .map(Ref::id)
        .filter(one -> drawn.filter(one::equals).isPresent())
        .filter(any -> compares && assessment.knockDowns().isEmpty())
        .map(
            one -> "the section as built is the one as designed, " + one + ": nothing is compared");
  }

  private void judgeAlike(List<Row> rows) {
    if (assessment.method().isOfBeam() || assessment.method() == Method.PANEL) {
      parts.both((drawn, made) -> Unlike.judge(drawn, made, rows, of.lacking()));
    }
  }

  private void tipped(List<Row> rows) {
    if (assessment.method().isOfBeam()) {
      parts.both((drawn, made) -> tipping().judge(drawn, made, rows));
      parts
          .made()
          .ifPresent(other -> load.bare().ifPresent(some -> crushedSooner(other, some, rows)));
      parts.both((drawn, made) -> atItsSize(drawn, made, rows));
    }
  }

  private void crushedSooner(Part made, BeamLoad bare, List<Row> rows) {
    Crushed.sooner(
        parts.drawn().flatMap(one -> Crushed.of(one, of.materials(), of.factors(Side.DESIGNED))),
        Crushed.of(made, of.materials(), of.factors(Side.BUILT)),
        bare.with(List.of(Own.of(made))),
        rows);
  }

  private void atItsSize(Part drawn, Part made, List<Row> rows) {
    AtItsSize.judge(atItsSize(drawn), atItsSize(made), load.with(made), of.safety(), rows);
  }

  /** Means of woods are taken to be, as tables have them, of small clear pieces. */
  private AtItsSize atItsSize(Part part) {
    boolean small =
        Stream.concat(
                part.source().material().stream(),
                part.source().layers().stream().flatMap(layer -> layer.material().stream()))
            .flatMap(one -> of.materials().material(one).stream())
            .anyMatch(one -> one.basis().filter(some -> some != Material.Basis.MEAN).isEmpty());
    return AtItsSize.of(part, small, load.with(part));
  }

  private Tipping tipping() {
    return new Tipping(parts::bending, load.bare());
  }

  private WeakLinks links(List<Row> rows) {
    return assessment
        .weakLink()
        .map(link -> new LinkJudged(of, parts, load, tipping()).judge(link, rows))
        .orElseGet(() -> WeakLinks.lacking(List.of()));
  }

  private Outcome side(Optional<Ref> ref, Side side) {
    return new SideWorked(of, parts, load, sideways).of(ref, side);
  }
}
