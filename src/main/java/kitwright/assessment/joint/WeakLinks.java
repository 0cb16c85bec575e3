package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import kitwright.assessment.method.Unlike;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Print;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.load.Break;
import kitwright.mechanics.load.BreakOrder;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Station;
import kitwright.mechanics.load.Strong;

/**
 * Which of two parts on one cantilever breaks first. The protected part reaches from the support to
 * the place of the intended break, the sacrificial one from there to the tip.
 *
 * @param margin load that breaks the protected part over load that breaks the sacrificial one
 * @param first what breaks first of all
 * @param stations capacity over demand along the length
 * @param lacking what could not be told
 * @param alike the margin with both judged by tension and compression, where they are judged unlike
 * @param cautions where the two parts are not judged alike, written down only when asked for
 */
public record WeakLinks(
    Optional<Double> margin,
    Optional<Break> first,
    List<Break> stations,
    List<String> lacking,
    Optional<Double> alike,
    Supplier<List<String>> cautions) {
  private static final int STATIONS = 11;

  public WeakLinks {
    stations = List.copyOf(stations);
    lacking = List.copyOf(lacking);
  }

  /** Nothing known, and why. */
  public static WeakLinks lacking(List<String> why) {
    return new WeakLinks(
        Optional.empty(), Optional.empty(), List.of(), why, Optional.empty(), List::of);
  }

  /**
   * The order of two parts.
   *
   * @param bending of a part
   */
  public static WeakLinks of(
      Part sacrificial,
      Part protectedPart,
      Function<Part, Bending> bending,
      Cantilever load,
      double breaksAt) {
    List<String> lacking = new ArrayList<>();
    Optional<Strong> weak = strong(bending.apply(sacrificial), lacking);
    Optional<Strong> safe = strong(bending.apply(protectedPart), lacking);
    if (weak.isEmpty() || safe.isEmpty() || !(breaksAt < load.length())) {
      if (!(breaksAt < load.length())) {
        lacking.add("the break is meant beyond the tip");
      }
      return lacking(lacking);
    }
    BreakOrder order = order(sacrificial, weak.get(), protectedPart, safe.get(), load, breaksAt);
    Optional<Double> alike =
        Unlike.are(sacrificial, protectedPart)
            ? order(
                    sacrificial,
                    alike(sacrificial, weak.get()),
                    protectedPart,
                    alike(protectedPart, safe.get()),
                    load,
                    breaksAt)
                .margin(protectedPart.id(), sacrificial.id())
            : Optional.empty();
    Unlike.untold(sacrificial, protectedPart).ifPresent(lacking::add);
    return new WeakLinks(
        order.margin(protectedPart.id(), sacrificial.id()),
        order.first(),
        order.breaks(),
        lacking,
        alike,
        () -> alike.map(margin -> caution(sacrificial, protectedPart, margin)).stream().toList());
  }

  private static BreakOrder order(
      Part sacrificial,
      Strong weak,
      Part protectedPart,
      Strong safe,
      Cantilever load,
      double breaksAt) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double share = (double) i / (STATIONS - 1);
      if (breaksAt > 0 || i == 0) {
        stations.add(new Station(breaksAt * share, protectedPart.id(), safe));
      }
      double at = breaksAt + (load.length() - breaksAt) * share;
      stations.add(new Station(at, sacrificial.id(), weak));
    }
    return BreakOrder.of(load, stations, List.of());
  }

  /** Solid timber by tension and compression, as a mixed part is judged. */
  private static Strong alike(Part part, Strong strong) {
    double share = Unlike.share(part).orElse(1);
    return new Strong(
        strong.moment() * share, strong.momentMode(), strong.shear(), strong.shearMode());
  }

  private static String caution(Part sacrificial, Part protectedPart, double margin) {
    boolean safe = protectedPart.beam().solidTimber();
    Part solid = safe ? protectedPart : sacrificial;
    return Unlike.words(solid, safe ? sacrificial : protectedPart)
        + (Unlike.share(solid).isEmpty()
            ? ": their order of breaking is not of one kind"
            : "; judged alike, the strength of protected part ÷ part meant to break is "
                + Print.ratio(margin));
  }

  /** What breaks at a load or later is no measure of what goes first. */
  static Optional<String> atLeast(Capacity capacity) {
    return capacity
        .governing()
        .filter(any -> capacity.atLeast())
        .map(
            limit ->
                Figures.words(limit)
                    + ": when it goes is not known well enough to tell which part goes first");
  }

  /** The weaker way of bending, since nobody knows from which side she takes the ground. */
  static Optional<Strong> strong(Bending bending, List<String> lacking) {
    Capacity sagging = bending.moment(Sense.SAGGING);
    Capacity hogging = bending.moment(Sense.HOGGING);
    Capacity shear = bending.shear();
    var section = bending.section();
    if (bending.isSkew() || (section.open() && section.lopsided())) {
      lacking.add(
          "a part of its weak link is open at one side or lies askew, and twists or bends sideways"
              + " under its load, which is not worked out");
    }
    for (Capacity capacity : List.of(sagging, hogging, shear)) {
      capacity.missing().forEach(missing -> lacking.add(Figures.words(missing)));
      atLeast(capacity).ifPresent(lacking::add);
    }
    if (sagging.value().isEmpty() || hogging.value().isEmpty() || shear.value().isEmpty()) {
      return Optional.empty();
    }
    Capacity moment =
        sagging.value().getAsDouble() <= hogging.value().getAsDouble() ? sagging : hogging;
    return Optional.of(
        new Strong(
            moment.value().getAsDouble(),
            Figures.words(moment.governing().orElseThrow()),
            shear.value().getAsDouble(),
            Figures.words(shear.governing().orElseThrow())));
  }
}
