package kitwright.assessment.method;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Assessment;
import kitwright.ledger.Load;
import kitwright.ledger.Load.Shape;
import kitwright.ledger.Load.Support;
import kitwright.mechanics.column.Ends;
import kitwright.value.Quantity;
import kitwright.value.Word;

/**
 * Whether all that a beam's load states can act together. Nothing stated is left out: what cannot
 * be taken is told, and nothing is worked out.
 */
public final class LoadStated {
  /** Of a foil at work; common practice, no source: less or more is a slip of the pen. */
  private static final double LEAST_LIFT = 0.05;

  private static final double MOST_LIFT = 3;

  private LoadStated() {}

  /** Whether it is a load that can be worked out whole; what it lacks is told. */
  static boolean isWhole(Load load, List<String> lacking) {
    List<String> faults = new ArrayList<>();
    half("speed, area and lift", flow(load), faults);
    pressure(load, faults);
    nought(load, faults);
    boolean flow = flow(load).values().stream().allMatch(Optional::isPresent);
    if (flow && load.force().isPresent()) {
      faults.add(
          "the load states a force and the speed, area and lift that give one: keep the one that is"
              + " meant, or write the other as tip-force");
    }
    boolean hangs = load.support().orElse(Support.CANTILEVER) == Support.CANTILEVER;
    boolean beyond = load.support().filter(Support.OVERHANG::equals).isPresent();
    overhang(load, beyond, faults);
    if (load.tipForce().isPresent() && !hangs && !beyond) {
      faults.add(
          "the load states a tip-force on a beam that is held at both ends and has no tip: write"
              + " force with shape: point for one at the middle");
    }
    if (faults.isEmpty() && !flow && isNothing(load)) {
      faults.add(
          "the load states no force: force, tip-force, pressure and breadth, speed, area and"
              + " lift, thrust, torque, or self-weight: yes");
    }
    if (load.ends().isPresent() && load.thrust().isEmpty()) {
      faults.add("the load says how the ends are held, and no thrust that may buckle the part");
    }
    if (load.shape().isPresent() && load.force().isEmpty() && !flow) {
      faults.add(
          "the load says how a force lies along the span (shape), and no force nor speed, area and"
              + " lift");
    }
    if (load.shape().isEmpty() && load.force().isPresent() && !beyond) {
      faults.add(
          "the load does not say how its force lies along the span: add shape: point (at the"
              + " middle, or at the tip of a cantilever), uniform, triangular or elliptic");
    }
    if (load.thrust().isPresent() && load.ends().isEmpty()) {
      faults.add(
          "the load states a thrust and not how the ends are held: add ends: pinned, fixed,"
              + " fixed-pinned or fixed-free");
    }
    bearing(load, hangs).ifPresent(faults::add);
    contradicted(load).ifPresent(faults::add);
    lacking.addAll(faults);
    return faults.isEmpty();
  }

  /** Ends that hold a part better against buckling than its supports hold it against bending. */
  private static Optional<String> contradicted(Load load) {
    boolean bends =
        load.force().isPresent()
            || load.tipForce().isPresent()
            || load.pressure().isPresent()
            || load.speed().isPresent()
            || load.selfWeight();
    if (load.ends().isEmpty() || !(bends || load.support().isPresent())) {
      return Optional.empty();
    }
    Support support = load.support().orElse(Support.CANTILEVER);
    Ends least =
        switch (support) {
          case CANTILEVER -> Ends.FIXED_FREE;
          case SIMPLE -> Ends.PINNED;
          case CLAMPED, OVERHANG -> Ends.FIXED;
        };
    Ends stated = Ends.valueOf(load.ends().get().name());
    return stated.factor() >= least.factor()
        ? Optional.empty()
        : Optional.of(
            "the load says support: "
                + Word.key(support)
                + " and ends: "
                + Word.key(stated)
                + ", which hold one part in two ways: a part that is held like this buckles as"
                + " ends: "
                + Word.key(least)
                + ", or its support is another");
  }

  private static Optional<String> bearing(Load load, boolean hangs) {
    boolean point = load.shape().filter(Shape.POINT::equals).isPresent();
    if (load.bearing().isEmpty()) {
      return Optional.empty();
    }
    if (hangs && !point && load.tipForce().isEmpty()) {
      return Optional.of(
          "the load states a bearing, and nothing here lies on one: it is of beams on two supports,"
              + " or of a force at one place (tip-force, or shape: point)");
    }
    return load.span()
        .filter(span -> load.bearing().get().base() > span.base() / 2)
        .map(span -> "the load’s bearing is more than half its span");
  }

  private static void overhang(Load load, boolean beyond, List<String> faults) {
    if (beyond != load.overhang().filter(one -> !one.isNone()).isPresent()) {
      faults.add(
          beyond
              ? "the load states no overhang: how far it reaches beyond the second support"
              : "the load states an overhang: write support: overhang for two supports and a free"
                  + " end");
    }
    if (beyond && load.shape().filter(shape -> shape != Shape.UNIFORM).isPresent()) {
      faults.add(
          "on an overhang a force is spread evenly over all of it, or stands at its end"
              + " (tip-force)");
    }
    if (beyond && load.thrust().isPresent()) {
      faults.add("a thrust along a part with an overhang is not worked out");
    }
  }

  /**
   * A safety factor is at least 1: one below it takes from the load. Without one a reserve says
   * nothing: whether the load has its margin already is not known.
   */
  public static Optional<String> factor(Assessment assessment) {
    Optional<Load> load = assessment.load();
    if (load.isEmpty()) {
      return Optional.empty();
    }
    Optional<BigDecimal> stated = load.get().factor();
    if (stated.isEmpty()) {
      return assessment.require().keySet().stream().anyMatch(one -> one.id().equals("reserve"))
          ? Optional.of(
              "it asks for a reserve and its load states no safety factor: add factor to the load,"
                  + " such as factor: 2, or factor: 1 where the load holds its margin already")
          : Optional.empty();
    }
    return stated
        .filter(factor -> factor.compareTo(BigDecimal.ONE) < 0)
        .map(
            factor ->
                "the load’s safety factor is "
                    + factor.stripTrailingZeros().toPlainString()
                    + ", and it is at least 1: a factor below 1 makes the load smaller than it is");
  }

  private static boolean isNothing(Load load) {
    return load.force().isEmpty()
        && load.tipForce().isEmpty()
        && load.pressure().isEmpty()
        && load.thrust().isEmpty()
        && load.torque().isEmpty()
        && !load.selfWeight();
  }

  private static Map<String, Optional<?>> flow(Load load) {
    Map<String, Optional<?>> flow = new LinkedHashMap<>();
    flow.put("speed", load.speed());
    flow.put("area", load.area());
    flow.put("lift", load.lift());
    return flow;
  }

  private static void half(String whole, Map<String, Optional<?>> parts, List<String> faults) {
    List<String> there = names(parts, true);
    List<String> absent = names(parts, false);
    if (!there.isEmpty() && !absent.isEmpty()) {
      faults.add(
          "the load states "
              + String.join(" and ", there)
              + " without "
              + String.join(" and ", absent)
              + ": "
              + whole
              + " belong together");
    }
  }

  private static List<String> names(Map<String, Optional<?>> parts, boolean present) {
    return parts.entrySet().stream()
        .filter(part -> part.getValue().isPresent() == present)
        .map(Map.Entry::getKey)
        .toList();
  }

  private static void pressure(Load load, List<String> faults) {
    if (load.pressure().isPresent() && load.breadth().isEmpty()) {
      faults.add(
          "the load states a pressure without the breadth on which it stands: add breadth, the"
              + " width of plating that the beam carries");
    }
    if (load.breadth().isPresent() && load.pressure().isEmpty()) {
      faults.add("the load states a breadth without a pressure on it");
    }
    if (load.density().isPresent() && flow(load).values().stream().noneMatch(Optional::isPresent)) {
      faults.add("the load states a density without speed, area and lift");
    }
  }

  /** What is stated as nought is no load, and nobody means it. */
  private static void nought(Load load, List<String> faults) {
    Map<String, Optional<Quantity>> all = new LinkedHashMap<>();
    all.put("force", load.force());
    all.put("tip-force", load.tipForce());
    all.put("pressure", load.pressure());
    all.put("breadth", load.breadth());
    all.put("speed", load.speed());
    all.put("area", load.area());
    all.put("density", load.density());
    all.put("thrust", load.thrust());
    all.put("torque", load.torque());
    all.put("held-sideways", load.heldSideways());
    all.put("bearing", load.bearing());
    all.forEach(
        (name, value) ->
            value
                .filter(Quantity::isNone)
                .ifPresent(none -> faults.add("the load’s " + name + " is zero")));
    load.lift()
        .filter(lift -> lift.doubleValue() < LEAST_LIFT || lift.doubleValue() > MOST_LIFT)
        .ifPresent(
            lift ->
                faults.add(
                    "the load’s lift coefficient is "
                        + lift.toPlainString()
                        + ", and of a foil that is loaded it lies between 0.05 and 3"));
  }
}
