package kitwright.assessment.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Sources;
import kitwright.ledger.Assessment;
import kitwright.ledger.Assessment.KnockDown;
import kitwright.ledger.Material.Sort;
import kitwright.mechanics.timber.LoadDuration;
import kitwright.mechanics.timber.TimberFactors;
import kitwright.value.Nearest;
import kitwright.value.Ref;

/**
 * The knock-downs that an assessment puts on strengths and moduli: each by a name of a closed list,
 * on the part as designed, as built or both, on one layer or all, with where it comes from.
 *
 * @param all in the order written
 * @param converted what makes strengths of one basis of those of a material, by its id
 */
public record Factors(List<Factor> all, Map<String, Double> converted) {

  /** Which part of a comparison. */
  public enum Side {
    DESIGNED,
    BUILT
  }

  /**
   * One factor.
   *
   * @param layer counted from 1 at the bottom, the only one that it is for
   * @param standard whether its value is by the sort of a material, as a standard has it
   */
  record Factor(
      KnockDown.For on,
      double value,
      Optional<Side> side,
      Optional<Integer> layer,
      String source,
      boolean standard) {
    Factor(
        KnockDown.For on,
        double value,
        Optional<Side> side,
        Optional<Integer> layer,
        String source) {
      this(on, value, side, layer, source, false);
    }

    double of(Sort sort) {
      return standard ? DesignStress.share(sort) : value;
    }

    private boolean at(Side part, int index) {
      return side.filter(part::equals).isPresent() == side.isPresent()
          && layer.filter(one -> one == index).isPresent() == layer.isPresent();
    }

    private boolean takesFrom(Laid laid) {
      return at(laid.side(), laid.layer())
          && (on == KnockDown.For.STIFFNESS ? isWood(laid.sort()) : isStrength(on, laid.sort()));
    }

    private boolean meets(Factor other) {
      return on == other.on
          && (side.isEmpty() || other.side.isEmpty() || side.equals(other.side))
          && (layer.isEmpty() || other.layer.isEmpty() || layer.equals(other.layer));
    }

    private String where() {
      return side.map(one -> " as " + one.name().toLowerCase(Locale.ROOT)).orElse("")
          + layer.map(one -> ", layer " + one).orElse("");
    }

    public String words() {
      return name(on) + where();
    }
  }

  /** Those of one part of a comparison. */
  public record OnSide(Factors factors, Side side) {
    public static OnSide none() {
      return new OnSide(Factors.none(), Side.BUILT);
    }

    /** A material with what the factors leave of it in a layer, counted from 1. */
    public Stuff on(Stuff stuff, int layer) {
      return stuff.times(
          strength(stuff.id(), stuff.sort(), layer), factors.stiffness(side, stuff.sort(), layer));
    }

    public double strength(String id, Sort sort, int layer) {
      return factors.strength(side, sort, layer) * factors.converted().getOrDefault(id, 1.0);
    }

    /** What the factors leave of the strength of the wood of a layer. */
    public double wood(int layer) {
      return factors.strength(side, Sort.TIMBER, layer);
    }

    /** Layers that a factor is for and that the section does not have, each a clause. */
    public List<String> beyond(kitwright.ledger.Section section) {
      int count = Math.max(1, section.layers().size());
      return factors.all().stream()
          .filter(one -> one.side().filter(other -> other != side).isEmpty())
          .filter(one -> one.layer().filter(n -> n < 1 || n > count).isPresent())
          .map(one -> section.named() + " has no layer for the knock-down for " + one.words())
          .toList();
    }
  }

  public Factors {
    all = List.copyOf(all);
    converted = Map.copyOf(converted);
  }

  public static Factors none() {
    return new Factors(List.of(), Map.of());
  }

  public static Factors of(Assessment assessment) {
    List<String> unheard = new ArrayList<>();
    return of(assessment, unheard);
  }

  /** Those that can be; what is lacking or wrong of the rest is told. */
  public static Factors of(Assessment assessment, List<String> lacking) {
    List<Factor> all = new ArrayList<>();
    assessment
        .factors()
        .forEach((name, value) -> ofBoth(name, value, assessment, lacking).ifPresent(all::add));
    assessment.knockDowns().forEach(one -> ofOne(one, lacking).ifPresent(all::add));
    twice(all, lacking);
    if (assessment.designed().isPresent() && assessment.built().isPresent()) {
      onBoth(all, lacking);
    }
    return new Factors(all, Map.of());
  }

  /** One cause takes once: a second factor for it is a slip, or takes back what the first took. */
  private static void twice(List<Factor> all, List<String> lacking) {
    for (int i = 0; i < all.size(); i++) {
      for (Factor later : all.subList(i + 1, all.size())) {
        if (all.get(i).meets(later)) {
          lacking.add(
              "there are two factors for " + later.words() + ": keep the one that is meant");
        }
      }
    }
  }

  /**
   * A load lasts as long on one part as on the other, and a share of the design stress is taken of
   * both or of none.
   */
  private static void onBoth(List<Factor> all, List<String> lacking) {
    for (KnockDown.For on : List.of(KnockDown.For.DURATION, KnockDown.For.DESIGN_STRESS)) {
      List<Factor> some = all.stream().filter(one -> one.on() == on).toList();
      for (Side side : Side.values()) {
        if (!some.isEmpty()
            && some.stream().noneMatch(one -> one.side().filter(s -> s != side).isEmpty())) {
          lacking.add(
              "the factor for "
                  + name(on)
                  + " is on one part alone, and what it is for acts on both: state it on the part"
                  + " as "
                  + side.name().toLowerCase(Locale.ROOT)
                  + " too");
        }
      }
      if (on == KnockDown.For.DURATION
          && some.stream().mapToDouble(Factor::value).distinct().count() > 1) {
        lacking.add("the load lasts as long on both parts, and their factors for duration differ");
      }
    }
  }

  /** A material in a part, as a factor finds it; layers count from 1. */
  public record Laid(Side side, int layer, Sort sort) {}

  /** Factors that take from nothing that there is, each a clause: somebody meant something. */
  public List<String> idle(List<Laid> stuffs) {
    return all.stream()
        .filter(one -> stuffs.stream().noneMatch(one::takesFrom))
        .map(
            one ->
                "the factor for "
                    + one.words()
                    + " is on "
                    + subject(one.on())
                    + ", and there are none")
        .toList();
  }

  /** The same with strengths brought to one basis. */
  public Factors on(Map<String, Double> basis) {
    return new Factors(all, basis);
  }

  /** Whether one part of a comparison has a factor for something that the other has not. */
  boolean onOnePart(KnockDown.For what) {
    return all.stream().anyMatch(one -> one.on() == what && one.side().isPresent());
  }

  /** Whether both parts of a comparison have the same. */
  public boolean alike() {
    return all.stream().allMatch(factor -> factor.side().isEmpty());
  }

  /** {@code factors: {moisture: 0.9}}: on both parts, its source among those of the assessment. */
  private static Optional<Factor> ofBoth(
      Ref name, BigDecimal value, Assessment assessment, List<String> lacking) {
    Optional<KnockDown.For> on = KnockDown.For.of(name.id());
    if (on.isEmpty()) {
      lacking.add(
          "“"
              + name
              + "” is no factor"
              + Nearest.to(name.id(), KnockDown.For.words())
                  .map(near -> ": did you mean “" + near + "”?")
                  .orElse("; there are " + String.join(", ", KnockDown.For.words())));
      return Optional.empty();
    }
    Optional<String> source = Sources.of(assessment).about(name.id());
    if (source.isEmpty()) {
      lacking.add(
          "the factor “"
              + name
              + "” has no source: write it as “"
              + name
              + ": where it comes from” in “sources”, or under “knock-downs” with its source");
    }
    return possible(on.get(), value.doubleValue(), lacking)
        .map(
            factor ->
                new Factor(
                    on.get(), factor, Optional.empty(), Optional.empty(), source.orElse("none")));
  }

  private static Optional<Factor> ofOne(KnockDown stated, List<String> lacking) {
    String name = name(stated.on());
    if (stated.on() == KnockDown.For.DESIGN_STRESS
        && stated.value().isEmpty()
        && stated.source().filter(DesignStress::isNamedBy).isPresent()) {
      lacking.add(DesignStress.SECOND_HAND);
      return Optional.of(
          new Factor(
              stated.on(), 1, side(stated), stated.layer(), stated.source().orElseThrow(), true));
    }
    Optional<Double> value =
        stated
            .value()
            .map(BigDecimal::doubleValue)
            .or(() -> scarf(stated))
            .or(() -> lasting(stated));
    if (value.isEmpty()) {
      lacking.add("the knock-down “" + name + "” states no value, and none follows for it");
      return Optional.empty();
    }
    stated
        .slope()
        .filter(slope -> stated.on() == KnockDown.For.SCARF)
        .filter(slope -> slope.doubleValue() < TimberFactors.STEEPEST)
        .ifPresent(
            slope ->
                lacking.add(
                    "a scarf of "
                        + slope.toPlainString()
                        + " to 1 is steeper than any is trusted, whatever its factor: 4 to 1 at the"
                        + " steepest"));
    if (isMixed(stated)) {
      lacking.add(
          "the knock-down “"
              + name
              + "” states more than its value asks for: a slope is of a scarf, lasts and"
              + " service-class of a duration without a value");
    }
    boolean ruled = stated.value().isEmpty() && stated.on() == KnockDown.For.DURATION;
    boolean sourced = ruled || stated.source().filter(Sources::isOne).isPresent();
    if (!sourced) {
      lacking.add(
          stated.value().isEmpty()
              ? "the knock-down for a scarf by its slope is not confirmed in its source ("
                  + SCARF
                  + "): state its value with a source"
              : "the knock-down “" + name + "” has no source");
    }
    return possible(stated.on(), value.get(), lacking)
        .map(
            factor ->
                new Factor(
                    stated.on(),
                    factor,
                    side(stated),
                    stated.layer(),
                    ruled
                        ? LASTING
                        : stated.source().orElse(stated.value().isEmpty() ? SCARF : "none")));
  }

  private static boolean isMixed(KnockDown stated) {
    boolean lasting = stated.lasts().isPresent() || stated.serviceClass().isPresent();
    return (stated.slope().isPresent() && stated.on() != KnockDown.For.SCARF)
        || (lasting && (stated.on() != KnockDown.For.DURATION || stated.value().isPresent()));
  }

  private static final String LASTING = "k_mod, EN 1995-1-1, table 3.1";

  private static Optional<Double> lasting(KnockDown stated) {
    return stated.on() == KnockDown.For.DURATION
        ? stated
            .lasts()
            .flatMap(
                lasts ->
                    stated
                        .serviceClass()
                        .filter(wet -> wet >= 1 && wet <= 3)
                        .map(LoadDuration.valueOf(lasts.name())::factor))
        : Optional.empty();
  }

  private static final String SCARF =
      "65 % at 4 to 1, 95 % at 20 to 1: Birmingham, Boat Building Techniques Illustrated, quoted";

  private static Optional<Double> scarf(KnockDown stated) {
    return stated.on() == KnockDown.For.SCARF
        ? stated
            .slope()
            .filter(slope -> slope.doubleValue() >= TimberFactors.STEEPEST)
            .map(slope -> TimberFactors.scarf(slope.doubleValue()))
        : Optional.empty();
  }

  private static Optional<Side> side(KnockDown stated) {
    return switch (stated.side()) {
      case BOTH -> Optional.empty();
      case DESIGNED -> Optional.of(Side.DESIGNED);
      case BUILT -> Optional.of(Side.BUILT);
    };
  }

  private static Optional<Double> possible(KnockDown.For on, double value, List<String> lacking) {
    double most = most(on);
    if (value > 0 && value <= most) {
      return Optional.of(value);
    }
    lacking.add("the factor “" + name(on) + "” lies outside 0 to " + Print.number(most));
    return Optional.empty();
  }

  /**
   * Only time, drought and cold make wood stronger: NDS table 2.3.2 has 2 for an impact; Wood
   * Handbook, equation 5-3 and table 5-16, less than 1.4 for dry and for cold wood.
   */
  private static double most(KnockDown.For on) {
    return switch (on) {
      case DURATION -> 2;
      case MOISTURE, TEMPERATURE, STIFFNESS -> 1.4;
      case GRADE, SCARF, SLOPE_OF_GRAIN, LAMINATE, CORE, METAL, DESIGN_STRESS -> 1;
    };
  }

  private static String name(KnockDown.For on) {
    return on.word();
  }

  /** On strengths of a sort of material in a layer of a part. */
  public double strength(Side part, Sort sort, int layer) {
    return all.stream()
        .filter(factor -> factor.at(part, layer) && isStrength(factor.on(), sort))
        .mapToDouble(factor -> factor.of(sort))
        .reduce(1, (a, b) -> a * b);
  }

  /** On moduli of timber and plywood. */
  public double stiffness(Side part, Sort sort, int layer) {
    return all.stream()
        .filter(one -> isWood(sort) && one.at(part, layer) && one.on() == KnockDown.For.STIFFNESS)
        .mapToDouble(Factor::value)
        .reduce(1, (a, b) -> a * b);
  }

  private static boolean isStrength(KnockDown.For on, Sort sort) {
    return switch (on) {
      case STIFFNESS -> false;
      case DESIGN_STRESS -> true;
      case LAMINATE -> sort == Sort.CLOTH || sort == Sort.LAMINATE || sort == Sort.OTHER;
      case CORE -> sort == Sort.CORE;
      case METAL -> sort == Sort.METAL || sort == Sort.BOLT;
      case MOISTURE, DURATION, GRADE, TEMPERATURE, SCARF, SLOPE_OF_GRAIN -> isWood(sort);
    };
  }

  private static boolean isWood(Sort sort) {
    return sort == Sort.TIMBER || sort == Sort.PLYWOOD;
  }

  /** What each is for and where it comes from, a line each. */
  public List<String> lines() {
    return all.stream()
        .map(
            factor ->
                subject(factor.on())
                    + " times "
                    + (factor.standard()
                        ? "0.5 (metal 0.6, wood 0.4)"
                        : Print.number(factor.value()))
                    + " for "
                    + factor.words()
                    + (factor.side().isEmpty() ? " as designed and as built" : "")
                    + "; source: "
                    + factor.source())
        .toList();
  }

  private static String subject(KnockDown.For on) {
    return switch (on) {
      case LAMINATE -> "strengths of cloths and laminates";
      case CORE -> "strengths of cores";
      case METAL -> "strengths of metals and bolts";
      case DESIGN_STRESS -> "strengths of all materials";
      case STIFFNESS -> "moduli of timber and plywood";
      case MOISTURE, DURATION, GRADE, TEMPERATURE, SCARF, SLOPE_OF_GRAIN ->
          "strengths of timber and plywood";
    };
  }
}
