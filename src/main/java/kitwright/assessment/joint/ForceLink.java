package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Spreads;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Parts;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.finding.Findings;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.WeakLink;
import kitwright.ledger.WeakLink.By;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Region;
import kitwright.mechanics.scatter.Chance;
import kitwright.mechanics.scatter.Scatter;
import kitwright.mechanics.scatter.Scattered;
import kitwright.value.Ref;

/**
 * A link that is pulled or sheared together with what it protects: one force goes through both, and
 * what bears less breaks first. Rated on means; a rating that is a minimum counts as it stands,
 * which puts what is protected lower than it is. Of a section in tension all pieces strain alike,
 * and the first to reach its limit breaks it.
 */
public final class ForceLink {
  private static final Factors.Side BUILT = Factors.Side.BUILT;

  private final WeakLink link;
  private final Function<Ref, Optional<Section>> sections;
  private final Materials materials;
  private final Factors factors;
  private final Spreads spreads;
  private final List<String> lacking = new ArrayList<>();
  private final Side weak;
  private final Side safe;

  /** A way to break: at so many newtons by the strength that a material states, and its spread. */
  private record Way(String material, String mode, double stated, Scattered share) {
    double force() {
      return stated * share.mean();
    }
  }

  /** One of both; the ways in no order. */
  private record Side(String name, List<Way> ways) {
    Optional<Way> first() {
      return ways.stream().min(java.util.Comparator.comparingDouble(Way::force));
    }
  }

  private ForceLink(
      WeakLink link,
      Function<Ref, Optional<Section>> sections,
      Materials materials,
      Factors factors,
      Spreads spreads) {
    this.link = link;
    this.spreads = spreads;
    this.sections = sections;
    this.materials = materials;
    this.factors = factors;
    weak = side(link.sacrificial(), true);
    safe =
        link.protectedPart()
            .map(ref -> side(ref, false))
            .orElseGet(
                () -> new Side("what is rated", link.rating().map(this::rated).stream().toList()));
  }

  /**
   * Works both out; what is lacking is told with {@link #told}.
   *
   * @param factors as stated, not brought to one basis
   */
  public static ForceLink of(
      WeakLink link,
      Function<Ref, Optional<Section>> sections,
      Materials materials,
      Factors factors,
      Spreads spreads) {
    return new ForceLink(link, sections, materials, factors, spreads);
  }

  private Way rated(WeakLink.Rating rating) {
    boolean low = rating.basis().filter(basis -> basis != Material.Basis.MEAN).isPresent();
    Scattered share =
        low && rating.scatter().isPresent() ? Spreads.above(spread(rating)) : spread(rating);
    return new Way("", "its rating", rating.load().base(), share);
  }

  private static Scattered spread(WeakLink.Rating rating) {
    double scatter = rating.scatter().map(java.math.BigDecimal::doubleValue).orElse(0.0);
    return new Scattered(1, Math.min(scatter, 0.99), Scattered.Shape.LOGNORMAL);
  }

  private Side side(Ref ref, boolean breaks) {
    Optional<Section> section = sections.apply(ref);
    if (section.isEmpty()) {
      lacking.add("a section of its weak link does not exist");
      return new Side(ref.id(), List.of());
    }
    return new Side(
        ref.id(),
        section.get().shape().filter(Section.Shape::isFastening).isPresent()
            ? bolts(section.get())
            : pieces(section.get(), breaks));
  }

  private List<Way> bolts(Section section) {
    Measure measure = link.by() == By.TENSION ? Measure.BOLT_TENSION : Measure.BOLT_SHEAR;
    boolean driven = DrivenMethod.isDriven(section);
    Factors.OnSide on = new Factors.OnSide(factors, BUILT);
    Figures figures =
        driven ? new Figures() : BoltMethod.of(section, materials, on, new Findings()).figures();
    if (driven || figures.of(measure).isEmpty()) {
      lacking.add(
          "the " + measure.words() + " of " + section.id() + " is not known for a weak link");
      return List.of();
    }
    double force = 1000 * figures.of(measure).orElseThrow().value();
    String of = section.material().map(Ref::id).orElse("");
    return List.of(way(of, link.by() == By.TENSION ? "tension" : "shear", force));
  }

  private Way way(String material, String mode, double stated) {
    return new Way(material, mode, stated, spreads.strength(material));
  }

  private List<Way> pieces(Section section, boolean breaks) {
    Optional<Part> part =
        new Parts(materials, new Factors.OnSide(factors, BUILT), new Findings()).of(section);
    if (section.tapersTo().isPresent() || section.notch().isPresent()) {
      lacking.add("a weak link of a part that tapers or is notched is not worked out");
    }
    if (part.isEmpty()) {
      lacking.add(section.named() + " cannot be worked out");
      return List.of();
    }
    return link.by() == By.TENSION ? pulled(part.get(), breaks) : sheared(part.get());
  }

  /** Of the part that shall break no lower stand-in for its tensile strength is taken. */
  private List<Way> pulled(Part part, boolean breaks) {
    double stretch = Bending.of(part.beam()).axialStiffness();
    List<Way> ways = new ArrayList<>();
    for (Region region : part.beam().regions()) {
      BeamMaterial one = region.material();
      if (one.lay() == BeamMaterial.Lay.CROSS_VENEER) {
        continue;
      }
      OptionalDouble pull = breaks ? one.strength().tension() : one.tensionLimit();
      if (pull.isEmpty()) {
        lacking.add(one.name() + " (" + region.where() + ") does not state its tensile-strength");
      } else {
        ways.add(
            way(
                one.name(),
                "tension of " + region.where(),
                pull.getAsDouble() / one.axial() * stretch));
      }
    }
    return ways;
  }

  private List<Way> sheared(Part part) {
    Capacity shear = Bending.of(part.beam()).shear();
    shear.missing().forEach(missing -> lacking.add(Figures.words(missing)));
    WeakLinks.atLeast(shear).ifPresent(lacking::add);
    Map<String, String> byWhere = new LinkedHashMap<>();
    part.beam()
        .regions()
        .forEach(region -> byWhere.putIfAbsent(region.where(), region.material().name()));
    List<Way> ways = new ArrayList<>();
    for (Limit limit : shear.limits()) {
      String of =
          byWhere.getOrDefault(limit.where(), part.beam().regions().get(0).material().name());
      ways.add(way(of, Figures.words(limit), limit.capacity()));
    }
    return ways;
  }

  /** The margin with what stands behind it. */
  public WeakLinks told(Inputs inputs) {
    Optional<Way> gives = weak.first();
    Optional<Way> keeps = safe.first();
    if (gives.isEmpty() || keeps.isEmpty()) {
      return WeakLinks.lacking(
          lacking.isEmpty() ? List.of("its weak link names nothing that it protects") : lacking);
    }
    inputs.note(words(weak.name(), gives.get()) + ", " + words(safe.name(), keeps.get()));
    if (link.by() == By.TENSION) {
      inputs.note(
          "in a weak link that is pulled whole sections count: what a hole, an eye or a thread"
              + " takes off is to be taken off their measures");
    }
    return new WeakLinks(
        Optional.of(keeps.get().force() / gives.get().force()),
        Optional.empty(),
        List.of(),
        lacking,
        Optional.empty(),
        List::of);
  }

  private static String words(String name, Way way) {
    return name + " breaks at " + Print.with(way.force() / 1000, "kN") + " by " + way.mode();
  }

  /** How likely what is protected breaks first; nothing where something is lacking. */
  public Optional<Chance> chance(int samples, long seed) {
    if (!lacking.isEmpty() || weak.ways().isEmpty() || safe.ways().isEmpty()) {
      return Optional.empty();
    }
    List<Scattered> shares = new ArrayList<>();
    int[] ofWeak = index(weak, shares);
    int[] ofSafe = index(safe, shares);
    Scatter scatter = new Scatter(shares, samples, seed);
    return Optional.of(
        scatter.chance(drawn -> least(safe, ofSafe, drawn) < least(weak, ofWeak, drawn)));
  }

  /** Which share is each way's; each material of a part is of one lot. */
  private static int[] index(Side side, List<Scattered> shares) {
    Map<String, Integer> known = new LinkedHashMap<>();
    int[] index = new int[side.ways().size()];
    for (int i = 0; i < index.length; i++) {
      Way way = side.ways().get(i);
      index[i] =
          known.computeIfAbsent(
              way.material(),
              any -> {
                shares.add(way.share());
                return shares.size() - 1;
              });
    }
    return index;
  }

  private static double least(Side side, int[] index, double[] drawn) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < index.length; i++) {
      least = Math.min(least, side.ways().get(i).stated() * drawn[index[i]]);
    }
    return least;
  }
}
