package kitwright.assessment.method;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Step;
import kitwright.assessment.sheet.Working;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.timber.Bearing;
import kitwright.value.Quantity;

/**
 * Wood or core crushed where a beam lies on its supports or a force stands at one place. With the
 * length of the bearing stated it is a limit like the others. Without, a part that is crushed
 * sooner on each millimetre than the one as drawn is not told: the supports were drawn for that.
 *
 * @param perLength what the weakest layer bears, N/m; empty where that is not known
 * @param weakest which layer that is, or what is lacking of it
 * @see Bearing
 */
public record Crushed(OptionalDouble perLength, String weakest) {

  /** What is of no wood, or not known, is taken to be crushed last of all. */
  private static final double UNKNOWN = Double.POSITIVE_INFINITY;

  /** What crushes a part; empty where it is of no wood and no core, or not of layers laid flat. */
  public static Optional<Crushed> of(Part part, Materials materials, Factors.OnSide factors) {
    return of(part, materials, factors, true);
  }

  /** The same, by values that nobody vouches for too where those are told elsewhere. */
  private static Optional<Crushed> of(
      Part part, Materials materials, Factors.OnSide factors, boolean vouched) {
    List<Material> layers = layers(part, materials);
    Optional<Crushed> least = Optional.empty();
    for (int i = 0; i < layers.size(); i++) {
      Material stuff = layers.get(i);
      double share =
          factors.strength(stuff.id(), stuff.sort(), i + 1) * part.beam().bounds().width();
      Optional<Crushed> one =
          property(stuff).map(by -> layer(stuff, by, materials, vouched).times(share));
      if (one.filter(layer -> !layer.isKnown()).isPresent()) {
        return one;
      }
      least = Stream.of(least, one).flatMap(Optional::stream).min(comparingDouble(Crushed::bears));
    }
    return least;
  }

  /** Whether it is of wood or core whose strength there nobody vouches for. */
  public static boolean isDoubted(Part part, Materials materials, Factors.OnSide factors) {
    return of(part, materials, factors).filter(one -> !one.isKnown()).isPresent();
  }

  /** What a layer bears on a metre of its width; nothing is noted of it here. */
  private static Crushed layer(
      Material stuff, MaterialProperty by, Materials materials, boolean vouched) {
    Inputs aside = materials.inputs().afresh();
    OptionalDouble value = aside.value(stuff, by);
    String named = "the " + by.key() + " of " + stuff.id() + " ";
    if (value.isEmpty()) {
      return unknown(stuff.id() + " does not state its " + by.key());
    }
    if (!(value.getAsDouble() > 0) || (vouched && !aside.lacking().isEmpty())) {
      return unknown(named + "cannot be");
    }
    return aside.all().stream()
        .filter(input -> vouched && !input.trust().holds())
        .findFirst()
        .map(input -> unknown(named + input.trust().words()))
        .orElse(new Crushed(value, stuff.id()));
  }

  private static Crushed unknown(String why) {
    return new Crushed(OptionalDouble.empty(), why);
  }

  private Crushed times(double share) {
    return new Crushed(isKnown() ? OptionalDouble.of(bears() * share) : perLength, weakest);
  }

  private double bears() {
    return perLength.orElse(0);
  }

  /**
   * The materials from the bottom to the top of a part of layers over its whole width; none of
   * another part, or one with a board in it, of whose strength through its thickness no table read
   * here says anything.
   */
  private static List<Material> layers(Part part, Materials materials) {
    Section source = part.source();
    boolean block = source.shape().filter(Section.Shape.RECTANGLE::equals).isPresent();
    boolean stack = !part.stack().isEmpty() && part.stack().size() == source.layers().size();
    List<Material> layers =
        Stream.concat(
                block ? source.material().stream() : Stream.empty(),
                stack
                    ? source.layers().stream().flatMap(one -> one.material().stream())
                    : Stream.empty())
            .flatMap(one -> materials.material(one).stream())
            .toList();
    return layers.stream().map(Material::sort).anyMatch(Crushed::isBoard) ? List.of() : layers;
  }

  private static boolean isBoard(Material.Sort sort) {
    return sort == Material.Sort.PLYWOOD || sort == Material.Sort.OTHER;
  }

  /**
   * What a layer laid flat is crushed by; none of what bears more than wood or core: metals and
   * laminates (common practice, no source).
   */
  private static Optional<MaterialProperty> property(Material stuff) {
    return switch (stuff.sort()) {
      case TIMBER -> Optional.of(MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
      case CORE -> Optional.of(MaterialProperty.COMPRESSIVE_STRENGTH);
      case METAL, BOLT, FIBRE, RESIN, CLOTH, LAMINATE, GLUE, PLYWOOD, OTHER -> Optional.empty();
    };
  }

  /** Where the load states how long it bears: what that leaves of the reserve. */
  public static Optional<Working> put(
      Part part, BeamLoad load, double factor, Materials materials, Factors.OnSide on, Figures to) {
    Optional<Double> length = load.stated().bearing().map(Quantity::base);
    if (length.isEmpty()) {
      return Optional.empty();
    }
    List<Material> layers = layers(part, materials);
    if (layers.isEmpty()) {
      lacks(
          to,
          "what crushes "
              + part.id()
              + " where it bears is not worked out, as it is no stack of layers of wood, core,"
              + " laminate or metal over its whole width: look at it by hand, and leave bearing out"
              + " of the load");
      return Optional.empty();
    }
    layers.forEach(one -> property(one).ifPresent(key -> materials.value(one, key)));
    Optional<Crushed> crushed = of(part, materials, on, false);
    crushed
        .filter(one -> one.perLength.isEmpty())
        .ifPresent(one -> lacks(to, one.weakest + ", which crushes it where it bears"));
    return crushed
        .filter(one -> one.perLength.isPresent())
        .map(one -> one.put(part, load, factor, length.get(), to));
  }

  private static void lacks(Figures figures, String what) {
    figures.lacks(Measure.RESERVE, what).lacks(Measure.FIRST_FAILURE, what);
  }

  private Working put(Part part, BeamLoad load, double factor, double length, Figures figures) {
    List<Step> steps = new ArrayList<>();
    Bearing bearing = new Bearing(length);
    press(bearing, "at a support", load.reaction(), 0, factor, figures).ifPresent(steps::add);
    double inward = load.cantilever().isPresent() ? 0 : (load.span() - length) / 2;
    double end = load.tip() > 0 ? 0 : inward;
    press(bearing, "under the force at one place", load.atOnePlace(), end, factor, figures)
        .ifPresent(steps::add);
    return new Working("where " + part.id() + " bears", List.of(), List.of(), steps);
  }

  private Optional<Step> press(
      Bearing bearing, String where, double force, double fromEnd, double factor, Figures to) {
    if (!(force > 0)) {
      return Optional.empty();
    }
    double bears = bearing.force(perLength.orElseThrow(), fromEnd);
    double reserve = bears / (factor * force);
    for (Measure measure : List.of(Measure.RESERVE, Measure.FIRST_FAILURE)) {
      to.of(measure)
          .filter(least -> reserve < least.value())
          .ifPresent(
              any -> to.put(measure, Figure.of(reserve, "crushing of " + weakest + " " + where)));
    }
    return Optional.of(
        new Step(
            "crushed " + where + ": reserve",
            "C_b·(σ·b)·l / (γ·F), NDS 3.10.2 and 3.10.4, σ of the weakest layer across",
            Print.number(bearing.factor(fromEnd))
                + " · "
                + Print.with(perLength.orElseThrow() / 1000, "N/mm")
                + " · "
                + Print.mm(bearing.length())
                + " / ("
                + Print.number(factor)
                + " · "
                + Print.with(force, "N")
                + ")",
            Print.number(reserve)));
  }

  /**
   * What is asked of a reserve, where nothing says how long the supports hold it and the part as
   * built is crushed sooner there.
   *
   * @param load of the part as built
   */
  public static void sooner(
      Optional<Crushed> drawn, Optional<Crushed> built, BeamLoad load, List<Row> rows) {
    if (load.stated().bearing().isPresent()
        || built.isEmpty()
        || Stream.of(drawn, built).flatMap(Optional::stream).noneMatch(Crushed::isKnown)
        || !(load.reaction() > 0)) {
      return;
    }
    double was = drawn.map(one -> one.perLength.orElse(UNKNOWN)).orElse(UNKNOWN);
    if (was <= built.get().perLength.orElse(0) * (1 + 1e-9)) {
      return;
    }
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      boolean asked = row.measure() == Measure.RESERVE || row.measure() == Measure.FIRST_FAILURE;
      if (asked && row.limit().isPresent()) {
        rows.set(i, row.lacking(built.get().asks(drawn, load)));
      }
    }
  }

  private boolean isKnown() {
    return perLength.isPresent();
  }

  private String asks(Optional<Crushed> drawn, BeamLoad load) {
    String shelf = "the load does not state how long its supports hold it (bearing), and ";
    if (!isKnown()) {
      return shelf + weakest + ": it may be crushed there sooner than as drawn. State both";
    }
    double need = load.stated().safety().doubleValue() * load.reaction() / perLength.orElseThrow();
    return shelf
        + "as built it is crushed there at "
        + Print.with(perLength.orElseThrow() / 1000, "N/mm")
        + " ("
        + weakest
        + "), "
        + drawn
            .map(
                one ->
                    one.isKnown()
                        ? "as drawn at " + Print.with(one.perLength.orElseThrow() / 1000, "N/mm")
                        : "and as drawn " + one.weakest)
            .orElse("and as drawn it is of no wood or core")
        + ": add bearing to the load; under it, with its factor, "
        + Print.mm(Math.ceil(need * 1000) / 1000)
        + " are needed for a reserve of 1";
  }
}
