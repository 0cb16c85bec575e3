package kitwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import kitwright.assessment.joint.BoltMethod;
import kitwright.assessment.joint.ForceLink;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.OnSide;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Spreads;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Parts;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Measure;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.Method;
import kitwright.ledger.Ledger;
import kitwright.ledger.Section;
import kitwright.ledger.WeakLink;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Resampled;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Demand;
import kitwright.mechanics.scatter.Chance;
import kitwright.mechanics.scatter.Scatter;
import kitwright.mechanics.scatter.Scattered;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * How likely the built part is below the designed one, and the protected part fails first, where
 * materials state how they scatter. Moduli are lognormal about their means, strengths too, or about
 * the mean that leaves one in twenty below a characteristic or least value; each part is of a lot
 * of its own.
 */
public final class Chances {
  private static final int SAMPLES = 100_000;
  private static final long SEED = 20_260_329;

  private final Assessment assessment;
  private final Function<Ref, Optional<Section>> sections;
  private final Materials materials;
  private final Factors factors;
  private final Spreads spreads;
  private final List<Line> lines = new ArrayList<>();
  private final Set<String> notes = new LinkedHashSet<>();

  private Chances(
      Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    this.assessment = assessment;
    this.sections = sections;
    this.materials = materials;
    this.factors = Factors.of(assessment);
    this.spreads = new Spreads(materials, assessment.at().record(), notes);
  }

  /**
   * Lines to tell.
   *
   * @param what in words: “built less stiff than designed”
   */
  public record Line(String what, Chance chance) {}

  /**
   * What came of it.
   *
   * @param notes what was left out or taken for granted, and why
   */
  public record Told(List<Line> lines, List<String> notes) {
    public Told {
      lines = List.copyOf(lines);
      notes = List.copyOf(notes);
    }
  }

  /** Samples the assessment; the same ledger gives the same answer. */
  public static Told of(Assessment assessment, Ledger ledger) {
    return new Chances(assessment, ledger::section, Materials.of(assessment, ledger)).told();
  }

  /** How likely the protected part of a weak link breaks first; nothing where it cannot be told. */
  static Optional<Chance> wrongOrder(
      Assessment assessment, Function<Ref, Optional<Section>> sections, Materials materials) {
    Chances chances = new Chances(assessment, sections, materials);
    assessment.weakLink().ifPresent(chances::order);
    return chances.lines.stream().map(Line::chance).findFirst();
  }

  private Told told() {
    switch (assessment.method()) {
      case EXTERNAL -> notes.add("it was worked out elsewhere, and nothing here can be sampled");
      case BOLT -> bolts();
      case SECTION, TIMBER, PANEL, LAMINATE -> sections();
    }
    assessment.weakLink().filter(link -> !link.isToItself()).ifPresent(this::order);
    return new Told(lines, List.copyOf(notes));
  }

  private Optional<Section> section(Optional<Ref> ref) {
    return ref.flatMap(sections);
  }

  private Optional<Part> part(Optional<Ref> ref, Side side) {
    Parts parts = new Parts(materials, new OnSide(factors, side), new Findings());
    return section(ref).flatMap(parts::of);
  }

  /** One strength a part: all its bolts are of one lot. */
  private void bolts() {
    for (Measure measure : List.of(Measure.BOLT_TENSION, Measure.BOLT_PROOF, Measure.BOLT_SHEAR)) {
      Optional<Scattered> designed = bolt(section(assessment.designed()), Side.DESIGNED, measure);
      Optional<Scattered> built = bolt(section(assessment.built()), Side.BUILT, measure);
      if (designed.isPresent() && built.isPresent()) {
        Scatter scatter = new Scatter(List.of(designed.get(), built.get()), SAMPLES, SEED);
        add("built has a smaller " + measure.words() + " than designed", scatter, v -> v[1] - v[0]);
      } else {
        notes.add("the " + measure.words() + " of one of them is not known");
      }
    }
    notes.add("the bolts of one part are taken to be of one lot, strong or weak together");
  }

  private Optional<Scattered> bolt(Optional<Section> section, Side side, Measure measure) {
    Optional<Ref> material = section.flatMap(Section::material);
    return section
        .flatMap(
            one ->
                BoltMethod.of(one, materials, new OnSide(factors, side), new Findings())
                    .figures()
                    .of(measure))
        .flatMap(
            figure ->
                material
                    .map(ref -> spreads.strength(ref.id()))
                    .map(s -> scaled(s, figure.value())));
  }

  private static Scattered scaled(Scattered share, double value) {
    return new Scattered(share.mean() * value, share.variation(), share.shape());
  }

  private void sections() {
    boolean plain =
        Stream.of(assessment.designed(), assessment.built())
            .flatMap(ref -> section(ref).stream())
            .allMatch(one -> one.tapersTo().isEmpty() && one.notch().isEmpty());
    if (!plain) {
      notes.add("a part that tapers or is notched is not sampled");
      return;
    }
    Optional<Part> designed = part(assessment.designed(), Side.DESIGNED);
    Optional<Part> built = part(assessment.built(), Side.BUILT);
    if (designed.isEmpty() || built.isEmpty()) {
      notes.add("a section of it cannot be worked out, and so cannot be sampled");
      return;
    }
    Resampled one = Resampled.of(designed.get().beam());
    Resampled other = Resampled.of(built.get().beam());
    Scatter scatter = scatter(Stream.concat(shares(one), shares(other)).toList());
    int from = 2 * one.materials().size();
    Set<String> unknown = new LinkedHashSet<>();
    Stream.of(designed.get(), built.get()).forEach(part -> moments(part, unknown));
    if (assessment.method() == Method.LAMINATE) {
      notes.add("a laminate is sampled as a strip along its length, pulled and pushed");
      add("built less stiff than designed", scatter, v -> other.axial(v, from) - one.axial(v, 0));
      addKnown(
          "built fails at a smaller pull or push than designed",
          scatter,
          v -> other.force(v, from) - one.force(v, 0),
          unknown);
      return;
    }
    if (assessment.method() == Method.PANEL) {
      notes.add("a panel is sampled as a strip along its span");
    }
    add(
        "built less stiff than designed",
        scatter,
        v -> other.stiffness(v, from) - one.stiffness(v, 0));
    addKnown(
        "built fails at a smaller moment than designed",
        scatter,
        v -> other.moment(v, from) - one.moment(v, 0),
        unknown);
    Set<String> unsheared = new LinkedHashSet<>();
    Stream.of(designed.get(), built.get()).forEach(part -> shears(part, unsheared));
    addKnown(
        "built fails at a smaller shear force than designed",
        scatter,
        v -> other.shear(v, from) - one.shear(v, 0),
        unsheared);
  }

  private static void moments(Part part, Set<String> unknown) {
    Bending bending = Bending.of(part.beam());
    missing(bending.moment(Sense.SAGGING), unknown);
    missing(bending.moment(Sense.HOGGING), unknown);
  }

  private static void shears(Part part, Set<String> unknown) {
    missing(Bending.of(part.beam()).shear(), unknown);
  }

  private static void missing(Capacity capacity, Set<String> unknown) {
    capacity.missing().forEach(missing -> unknown.add(Figures.words(missing)));
  }

  private void addKnown(
      String what, Scatter scatter, ToDoubleFunction<double[]> spare, Set<String> unknown) {
    if (unknown.isEmpty()) {
      add(what, scatter, spare);
    } else {
      notes.add("“" + what + "” is not told: " + String.join("; ", unknown));
    }
  }

  /**
   * @param spare built less designed: below nought counts
   */
  private void add(String what, Scatter scatter, ToDoubleFunction<double[]> spare) {
    if (scatter.properties().stream().anyMatch(one -> one.variation() > 0)) {
      lines.add(new Line(what, scatter.chance(v -> spare.applyAsDouble(v) < 0)));
    } else {
      notes.add("no chance is told: no material of it states its scatter");
    }
  }

  /** The protected part stands at the support, the sacrificial one at the place of the break. */
  private void order(WeakLink link) {
    if (link.by() != WeakLink.By.BENDING) {
      ForceLink.of(link, sections, materials, factors, spreads)
          .chance(SAMPLES, SEED)
          .ifPresent(chance -> lines.add(new Line("what is protected fails first", chance)));
      return;
    }
    Optional<Part> safe = part(link.protectedPart(), Side.BUILT);
    Optional<Section> pin = section(Optional.of(link.sacrificial())).filter(Section::isBolt);
    Optional<Part> weak =
        pin.isPresent() ? safe : part(Optional.of(link.sacrificial()), Side.BUILT);
    double at = link.breaksAt().map(Quantity::base).orElse(0.0);
    if (safe.isEmpty() || weak.isEmpty()) {
      notes.add("a section of the weak link cannot be worked out, and so cannot be sampled");
      return;
    }
    List<Own> own =
        pin.isPresent() ? List.of(Own.of(safe.get())) : Own.joined(safe.get(), weak.get(), at);
    Optional<Cantilever> load =
        assessment
            .load()
            .flatMap(some -> BeamLoad.of(some, own, new ArrayList<>()))
            .flatMap(BeamLoad::cantilever);
    if (load.isEmpty()) {
      notes.add("a weak link needs a load on a cantilever");
      return;
    }
    Set<String> unknown = new LinkedHashSet<>();
    Stream.of(safe.get(), weak.get())
        .forEach(
            part -> {
              moments(part, unknown);
              shears(part, unknown);
            });
    Resampled kept = Resampled.of(safe.get().beam());
    Demand root = load.get().at(0);
    Demand here = load.get().at(at);
    String what =
        "the protected part " + link.protectedPart().map(Ref::toString).orElse("") + " fails first";
    if (pin.isPresent()) {
      pinned(what, pin.get(), kept, root, Math.abs(here.shear()), unknown);
      return;
    }
    Resampled given = Resampled.of(weak.get().beam());
    int from = 2 * given.materials().size();
    addKnown(
        what,
        scatter(Stream.concat(shares(given), shares(kept)).toList()),
        v -> reserve(kept, v, from, root) - reserve(given, v, 0, here),
        unknown);
  }

  private void pinned(
      String what, Section pin, Resampled kept, Demand root, double shear, Set<String> unknown) {
    Optional<Scattered> strength = bolt(Optional.of(pin), Side.BUILT, Measure.BOLT_SHEAR);
    if (strength.isEmpty()) {
      unknown.add("the shear strength of the pin " + pin.id() + " is not known");
      addKnown(what, scatter(List.of()), v -> 0, unknown);
      return;
    }
    addKnown(
        what,
        scatter(Stream.concat(strength.stream(), shares(kept)).toList()),
        v -> reserve(kept, v, 1, root) - v[0] * 1000 / shear,
        unknown);
  }

  private static double reserve(Resampled part, double[] shares, int from, Demand asked) {
    return Math.min(
        part.moment(shares, from) / Math.abs(asked.moment()),
        part.shear(shares, from) / Math.abs(asked.shear()));
  }

  /** A share of modulus for each material, then a share of strength for each. */
  private Stream<Scattered> shares(Resampled part) {
    return Stream.concat(
        part.materials().stream().map(spreads::modulus),
        part.materials().stream().map(spreads::strength));
  }

  private static Scatter scatter(List<Scattered> shares) {
    return new Scatter(shares, SAMPLES, SEED);
  }
}
