package kitwright.assessment.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Assessment;
import kitwright.ledger.KnockDown;
import kitwright.ledger.Material.Sort;
import kitwright.value.Word;

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

    boolean meets(Factor other) {
      return on == other.on
          && (side.isEmpty() || other.side.isEmpty() || side.equals(other.side))
          && (layer.isEmpty() || other.layer.isEmpty() || layer.equals(other.layer));
    }

    private String where() {
      return side.map(one -> " as " + Word.key(one)).orElse("")
          + layer.map(one -> ", layer " + one).orElse("");
    }

    public String words() {
      return on.word() + where();
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
    return of(assessment, new ArrayList<>());
  }

  /** Those that can be; what is lacking or wrong of the rest is told. */
  public static Factors of(Assessment assessment, List<String> lacking) {
    return new Factors(new StatedFactors(assessment, lacking).all(), Map.of());
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

  /** Whether the part as drawn has a factor for something, and the one as built has none. */
  boolean onDrawnAlone(KnockDown.For what) {
    List<Factor> some = all.stream().filter(one -> one.on() == what).toList();
    return !some.isEmpty()
        && some.stream().allMatch(one -> one.side().filter(Side.DESIGNED::equals).isPresent());
  }

  /** Whether both parts of a comparison have the same. */
  public boolean alike() {
    return all.stream().allMatch(factor -> factor.side().isEmpty());
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
