package kitwright.assessment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.assessment.joint.BoltMethod;
import kitwright.assessment.joint.CoreUnderFittings;
import kitwright.assessment.joint.DrivenMethod;
import kitwright.assessment.joint.ForceLink;
import kitwright.assessment.joint.Galvanic;
import kitwright.assessment.joint.LinkStated;
import kitwright.assessment.joint.PinLink;
import kitwright.assessment.joint.WeakLinks;
import kitwright.assessment.material.Bases;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.OnSide;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Moist;
import kitwright.assessment.material.Spreads;
import kitwright.assessment.method.AtItsSize;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.method.Crushed;
import kitwright.assessment.method.LaminateMethod;
import kitwright.assessment.method.LoadStated;
import kitwright.assessment.method.PanelMethod;
import kitwright.assessment.method.SectionMethod;
import kitwright.assessment.method.Taper;
import kitwright.assessment.method.TimberDepth;
import kitwright.assessment.method.Unlike;
import kitwright.assessment.part.Between;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Parts;
import kitwright.assessment.part.Sketch;
import kitwright.assessment.sheet.Comparison;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Judgement;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Slender;
import kitwright.assessment.sheet.Sources;
import kitwright.assessment.sheet.Verdict;
import kitwright.assessment.sheet.Working;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.ledger.Material;
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
  private final Materials materials;
  private final List<String> lacking = new ArrayList<>();
  private final List<String> failing = new ArrayList<>();
  private final Map<String, Optional<Part>> parts = new LinkedHashMap<>();
  private final IdentityHashMap<kitwright.mechanics.beam.Section, Bending> bendings =
      new IdentityHashMap<>();
  private final List<BeamLoad> loads = new ArrayList<>();
  private Optional<BeamLoad> bare = Optional.empty();
  private Optional<Outcome> drawn = Optional.empty();
  private final Factors factors;
  private final Factors linked;
  private final List<String> unlike;
  private final Used laid;
  private boolean sideways = true;

  /**
   * @param materials of this assessment, none taken as yet
   */
  Examiner(Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    this.assessment = assessment;
    this.sections = sections;
    this.materials = materials;
    this.laid = new Used(assessment, sections, materials);
    List<Material> used = laid.all();
    Bases bases = Bases.ofMaterials(used);
    Map<String, Double> low = bases.toLow(used);
    unlike = bases.lacking(low);
    used.stream()
        .filter(one -> low.containsKey(one.id()))
        .forEach(one -> inputs().value(one, MaterialProperty.SCATTER));
    Factors stated = Factors.of(assessment);
    factors = stated.on(low);
    linked = stated.on(Bases.toMean(used));
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
        .filter(link -> ahead.isBeam())
        .ifPresent(
            link ->
                link.parts()
                    .filter(ref -> !ahead.isBuilt(Optional.of(ref)))
                    .flatMap(ref -> sections.apply(ref).stream())
                    .filter(section -> !isBolt(section))
                    .forEach(section -> ahead.linked(section).ifPresent(ahead::bending)));
    return ahead;
  }

  /** The same assessment with another built section. */
  Examiner again(Function<Ref, Optional<Section>> other) {
    Examiner again = new Examiner(assessment, other, materials.branch());
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
    Factors.of(assessment, lacking);
    lacking.addAll(factors.idle(laid.laid()));
    lacking.addAll(Moist.lacking(laid.all(), factors));
    lacking.addAll(materials.twice(assessment, laid.all()));
    LoadStated.factor(assessment).ifPresent(lacking::add);
    if (Sources.of(assessment).areOfNothing()) {
      inputs()
          .note(
              "a source that names no material vouches for none: write “larch: where it comes"
                  + " from”");
    }
    if (isBeam()) {
      bare = assessment.load().flatMap(some -> BeamLoad.of(some, lacking));
      load(List.of());
    } else if (assessment.load().isPresent() && assessment.method() != Method.PANEL) {
      lacking.add(
          "the load is not worked out by this method, which compares without one: take section,"
              + " timber or panel, or leave the load out");
    }
  }

  private Inputs inputs() {
    return materials.inputs();
  }

  private Compared compared() {
    Outcome designed = drawn.orElseGet(() -> side(assessment.designed(), Side.DESIGNED));
    Outcome built = side(assessment.built(), Side.BUILT);
    if (assessment.method() == Method.BOLT) {
      lacking.addAll(
          CoreUnderFittings.thinner(
              assessment.designed().flatMap(sections), assessment.built().flatMap(sections)));
    }
    if (assessment.built().isEmpty()) {
      lacking.add("it does not name the section as built (“built”)");
    }
    counted();
    return new Compared(
        designed, built, new Comparison(assessment, designed, built, lacking).rows());
  }

  /** How many fastenings there are is told of both sides or of none. */
  private void counted() {
    if (assessment.method() != Method.BOLT) {
      return;
    }
    Optional<Section> one = assessment.designed().flatMap(sections);
    Optional<Section> other = assessment.built().flatMap(sections);
    if (one.isEmpty() || other.isEmpty() || isCounted(one.get()) == isCounted(other.get())) {
      return;
    }
    Section without = isCounted(one.get()) ? other.get() : one.get();
    lacking.add(
        without.named()
            + " does not state its count, and what it is set beside does: write count: 1 among its"
            + " dimensions if it is one");
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
    return failing.isEmpty()
        && rows.stream().allMatch(Examiner::holds)
        && judgement(rows).isClosed();
  }

  private Judgement judgement(List<Row> rows) {
    return new Judgement(assessment, rows, inputs(), lacking, unlike);
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
          .filter(link -> failing.isEmpty() && rows.stream().noneMatch(Row::fails))
          .ifPresent(link -> rows.add(new WrongOrder(assessment, sections, materials).row(link)));
    }
    Judgement judgement = judgement(rows);
    List<Working> working = new ArrayList<>(inputs().cured());
    working.addAll(compared.designed().working().get());
    working.addAll(compared.built().working().get());
    if (isBeam()) {
      made().flatMap(one -> atItsSize(one).working(one, with(one))).ifPresent(working::add);
    }
    depth().ifPresent(working::add);
    return new Result(
        assessment,
        judgement.verdict(failing),
        rows,
        inputs().all(),
        judgement.leaning(),
        factors.lines(),
        List.copyOf(loadLines()),
        working,
        links.stations(),
        inputs().notes(),
        cautions(rows, links),
        parts.values().stream().flatMap(Optional::stream).map(part -> Sketch.of(part)).toList());
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

  private Outcome side(Optional<Ref> ref, Side side) {
    if (ref.isEmpty()) {
      return Outcome.nothing();
    }
    Optional<Section> section = sections.apply(ref.get());
    if (section.isEmpty()) {
      lacking.add(
          "there is no section “"
              + ref.get()
              + "” ("
              + side.name().toLowerCase(java.util.Locale.ROOT)
              + ")");
      return Outcome.nothing();
    }
    return switch (assessment.method()) {
      case SECTION, TIMBER ->
          part(section.get(), side)
              .map(part -> beam(section.get(), part, side))
              .orElseGet(Outcome::nothing);
      case PANEL -> panel(section.get(), side);
      case LAMINATE ->
          stack(section.get(), side).map(LaminateMethod::of).orElseGet(Outcome::nothing);
      case BOLT -> bolt(section.get(), side);
      case EXTERNAL -> Outcome.nothing();
    };
  }

  private Outcome beam(Section section, Part part, Side side) {
    boolean simple =
        assessment
            .load()
            .flatMap(Assessment.Load::support)
            .filter(Assessment.Support.SIMPLE::equals)
            .isPresent();
    if (section.notch().isPresent() && !simple) {
      lacking.add(
          "a notch is worked out at the supports of a beam that lies on two: a load with support:"
              + " simple");
    }
    if (section.tapersTo().isEmpty()) {
      Optional<BeamLoad> load = load(List.of(Own.of(part)));
      Outcome outcome = SectionMethod.of(part, bending(part), sideways, load, factor());
      return load.flatMap(some -> crushed(part, some, side, outcome))
          .map(outcome::with)
          .orElse(outcome);
    }
    if (assessment.load().flatMap(Assessment.Load::bearing).isPresent()) {
      lacking.add("where a part that tapers is crushed is not worked out: leave bearing out");
    }
    Optional<BeamLoad> load = load(List.of(Own.of(part)));
    Optional<Section> tip = sections.apply(section.tapersTo().get());
    Optional<String> misfit =
        tip.isEmpty()
            ? Optional.of("there is no section “" + section.tapersTo().get() + "”")
            : Between.misfit(section, tip.get());
    misfit.ifPresent(lacking::add);
    materials.twice(section.tapersTo().get()).ifPresent(lacking::add);
    if (section.notch().isPresent()) {
      lacking.add("a notch in a part that tapers is not worked out");
    }
    List<Part> parts = new ArrayList<>();
    for (int i = 0; misfit.isEmpty() && i < Taper.PLACES; i++) {
      Section there = Between.at(section, tip.orElseThrow(), (double) i / (Taper.PLACES - 1));
      new Parts(materials, new OnSide(factors, side), new Findings())
          .of(there)
          .ifPresent(parts::add);
    }
    if (parts.size() < Taper.PLACES || load.flatMap(BeamLoad::cantilever).isEmpty()) {
      return Taper.without(part, new Figures());
    }
    if (load.get().stated().selfWeight()
        && parts.get(Taper.PLACES - 1).beam().massPerLength() > part.beam().massPerLength()) {
      lacking.add(section.named() + " grows heavier outwards, and weighs as at its support here");
    }
    Taper.sideways(part, bending(part), load.get()).ifPresent(lacking::add);
    return Taper.of(parts, load.get(), factor());
  }

  private Optional<Working> crushed(Part part, BeamLoad load, Side side, Outcome outcome) {
    OnSide on = new OnSide(factors, side);
    boolean beside =
        assessment.require().keySet().stream().anyMatch(one -> one.id().equals("strength"));
    if (side == Side.DESIGNED && !beside && Crushed.isDoubted(part, materials, on)) {
      if (load.stated().bearing().isPresent()) {
        inputs()
            .note(
                "where "
                    + part.id()
                    + " bears it is not worked out as drawn: nobody vouches for its strength"
                    + " across, and what is asked is of the part as built");
      }
      return Optional.empty();
    }
    return Crushed.put(part, load, factor(), materials, on, outcome.figures());
  }

  private Optional<Working> depth() {
    return isBeam()
        ? drawn().flatMap(drawn -> made().flatMap(made -> TimberDepth.of(drawn, made)))
        : Optional.empty();
  }

  private Optional<Part> drawn() {
    return assessment.designed().flatMap(sections).flatMap(one -> part(one, Side.DESIGNED));
  }

  private Optional<Part> made() {
    return assessment.built().flatMap(sections).flatMap(one -> part(one, Side.BUILT));
  }

  private List<String> cautions(List<Row> rows, WeakLinks links) {
    List<String> all = new ArrayList<>(links.cautions().get());
    rows.stream()
        .filter(
            row -> row.measure() == Measure.MOMENT_SAGGING || row.measure() == Measure.PLATE_MOMENT)
        .forEach(
            row ->
                drawn()
                    .flatMap(one -> made().flatMap(other -> Unlike.caution(one, other, row)))
                    .ifPresent(all::add));
    Bases bases = Bases.of(inputs().all());
    if (bases.mixed()) {
      all.add(bases.words());
    }
    all.addAll(Slender.cautions(assessment, rows));
    all.addAll(materials.overrides(laid.all()));
    all.addAll(Galvanic.cautions(assessment, sections, materials::material));
    return all;
  }

  private Outcome panel(Section section, Side side) {
    Optional<PanelMethod.Pressed> pressed =
        assessment.load().flatMap(some -> PanelMethod.Pressed.of(some, lacking));
    if (assessment.load().isEmpty()) {
      lacking.add("a panel needs a load: pressure, span, breadth and support");
    }
    Optional<Part> part = stack(section, side);
    return pressed
        .flatMap(asked -> part.map(one -> PanelMethod.of(one, asked)))
        .orElseGet(Outcome::nothing);
  }

  private Outcome bolt(Section section, Side side) {
    if (DrivenMethod.isDriven(section)) {
      return DrivenMethod.of(section, materials, new OnSide(factors, side), new Findings());
    }
    if (!isBolt(section)) {
      lacking.add(section.named() + " is no bolt, nail or screw (shape: bolt, with a diameter)");
      return Outcome.nothing();
    }
    return BoltMethod.of(section, materials, new OnSide(factors, side), new Findings());
  }

  private static boolean isBolt(Section section) {
    return section.shape().filter(Section.Shape.BOLT::equals).isPresent();
  }

  /** A part of layers that reach over its whole width, known across its grain too. */
  private Optional<Part> stack(Section section, Side side) {
    Optional<Part> part = part(section, side);
    part.filter(one -> one.stack().isEmpty())
        .ifPresent(
            one ->
                lacking.add(
                    section.named()
                        + " is no stack of layers over its whole width, which a panel or laminate"
                        + " needs: list its layers"));
    if (section.tapersTo().isPresent() || section.notch().isPresent()) {
      lacking.add(section.named() + " tapers or is notched, which is of beams");
    }
    boolean flat = true;
    for (Section.Layer layer : section.layers()) {
      flat &= layer.material().flatMap(materials::flat).isPresent();
    }
    boolean known = flat;
    return part.filter(one -> known && !one.stack().isEmpty());
  }

  private double factor() {
    return assessment.load().map(some -> some.safety().doubleValue()).orElse(1.0);
  }

  private Optional<Part> part(Section section, Side side) {
    return part(section, (factors.alike() ? "" : side + " ") + section.id(), factors, side);
  }

  /** A part of a weak link, as built and by the means of its strengths. */
  private Optional<Part> linked(Section section) {
    if (section.tapersTo().isPresent() || section.notch().isPresent()) {
      lacking.add("a weak link of a part that tapers or is notched is not worked out");
    }
    String key =
        linked.equals(factors) && factors.alike() ? section.id() : "linked " + section.id();
    return part(section, key, linked, Side.BUILT);
  }

  private Optional<Part> part(Section section, String key, Factors with, Side side) {
    if (section.shape().filter(Section.Shape::isFastening).isPresent()) {
      lacking.add(section.named() + " is a fastening, which method: bolt works out");
      return Optional.empty();
    }
    return parts.computeIfAbsent(
        key, any -> new Parts(materials, new OnSide(with, side), new Findings()).of(section));
  }

  private Bending bending(Part part) {
    return bendings.computeIfAbsent(part.beam(), Bending::of);
  }

  private void judgeAlike(List<Row> rows) {
    if (isBeam() || assessment.method() == Method.PANEL) {
      drawn().ifPresent(one -> made().ifPresent(other -> Unlike.judge(one, other, rows, lacking)));
    }
  }

  private void tipped(List<Row> rows) {
    if (isBeam()) {
      drawn().ifPresent(one -> made().ifPresent(other -> tipping().judge(one, other, rows)));
      made().ifPresent(other -> bare.ifPresent(load -> crushedSooner(other, load, rows)));
      drawn().ifPresent(one -> made().ifPresent(other -> atItsSize(one, other, rows)));
    }
  }

  private void crushedSooner(Part made, BeamLoad load, List<Row> rows) {
    Crushed.sooner(
        drawn().flatMap(one -> Crushed.of(one, materials, new OnSide(factors, Side.DESIGNED))),
        Crushed.of(made, materials, new OnSide(factors, Side.BUILT)),
        load.with(List.of(Own.of(made))),
        rows);
  }

  private void atItsSize(Part drawn, Part made, List<Row> rows) {
    AtItsSize.judge(atItsSize(drawn), atItsSize(made), with(made), factor(), rows);
  }

  private Optional<BeamLoad> with(Part part) {
    return bare.map(some -> some.with(List.of(Own.of(part))));
  }

  /** Means of woods are taken to be, as tables have them, of small clear pieces. */
  private AtItsSize atItsSize(Part part) {
    boolean small =
        Stream.concat(
                part.source().material().stream(),
                part.source().layers().stream().flatMap(layer -> layer.material().stream()))
            .flatMap(one -> materials.material(one).stream())
            .anyMatch(one -> one.basis().filter(some -> some != Material.Basis.MEAN).isEmpty());
    return AtItsSize.of(part, small, with(part));
  }

  private Tipping tipping() {
    return new Tipping(this::bending, bare);
  }

  private WeakLinks links(List<Row> rows) {
    if (assessment.weakLink().isEmpty()) {
      return WeakLinks.lacking(List.of());
    }
    Assessment.WeakLink link = assessment.weakLink().get();
    WeakLinks worked = worked(link);
    lacking.addAll(worked.lacking());
    lacking.addAll(LinkStated.lacking(link));
    if (link.by() == Assessment.WeakLink.By.BENDING) {
      link.protectedPart()
          .flatMap(sections)
          .flatMap(this::linked)
          .flatMap(
              kept ->
                  tipping()
                      .outlasts(kept, worked.margin().orElse(0.0), link.margin().doubleValue()))
          .ifPresent(lacking::add);
    }
    Row.Limit least = new Row.Limit(Row.Limit.Side.AT_LEAST, link.margin().doubleValue());
    Row plain = link(worked.margin(), least, worked.lacking());
    rows.add(worked.alike().map(plain::judgedAlike).orElse(plain));
    double meant = link.breaksAt().map(Quantity::base).orElse(0.0);
    worked
        .first()
        .filter(first -> !first.part().equals(link.sacrificial().id()) || far(first.at(), meant))
        .ifPresent(
            first ->
                failing.add(
                    first.part()
                        + " breaks first, "
                        + (first.at() == 0
                            ? "at the support"
                            : Print.mm(first.at()) + " from the support")
                        + " ("
                        + first.mode()
                        + "); "
                        + (first.part().equals(link.sacrificial().id())
                            ? "it was meant to break " + Print.mm(meant) + " from it"
                            : link.sacrificial() + " was meant to")));
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
    if (link.isToItself()) {
      return WeakLinks.lacking(List.of("its weak link protects a section from itself"));
    }
    if (link.by() != Assessment.WeakLink.By.BENDING) {
      Spreads spreads = new Spreads(materials, assessment.at().record(), new HashSet<>());
      return ForceLink.of(link, sections, materials, Factors.of(assessment), spreads)
          .told(inputs());
    }
    Optional<Section> weak = sections.apply(link.sacrificial());
    Optional<Section> safe = link.protectedPart().flatMap(sections);
    if (!isBeam() || load(List.of()).flatMap(BeamLoad::cantilever).isEmpty()) {
      return WeakLinks.lacking(List.of("a weak link needs a load on a cantilever"));
    }
    if (weak.isEmpty() || safe.isEmpty()) {
      return WeakLinks.lacking(List.of("a section of its weak link does not exist"));
    }
    if (assessment
        .load()
        .filter(some -> some.thrust().isPresent() || some.torque().isPresent())
        .isPresent()) {
      return WeakLinks.lacking(
          List.of("a weak link is worked out for what bends it, not with a thrust or torque"));
    }
    double at = link.breaksAt().map(Quantity::base).orElse(0.0);
    Optional<Part> kept = linked(safe.get());
    if (isBolt(weak.get())) {
      return kept.map(
              one ->
                  PinLink.of(
                      weak.get(),
                      one,
                      bending(one),
                      cantilever(List.of(Own.of(one))),
                      at,
                      materials,
                      linked))
          .orElseGet(() -> WeakLinks.lacking(List.of()));
    }
    return linked(weak.get())
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
}
