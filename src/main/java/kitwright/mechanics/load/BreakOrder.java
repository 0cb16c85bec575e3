package kitwright.mechanics.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.mechanics.Refuse;

/**
 * Which part of a loaded cantilever breaks first, and where: capacity over demand at every station.
 *
 * @param breaks the first to break first; stations without demand are left out
 */
public record BreakOrder(List<Break> breaks) {
  public BreakOrder {
    breaks = breaks.stream().sorted(Comparator.comparingDouble(Break::factor)).toList();
  }

  /** Sets capacity against demand at the stations and joins links reckoned elsewhere. */
  public static BreakOrder of(Cantilever load, List<Station> stations, List<Break> links) {
    var all = new ArrayList<>(links);
    for (var station : stations) {
      Refuse.unless(station.at() <= load.length() * (1 + 1e-9), "a station lies beyond the tip");
      var demand = load.at(station.at());
      var strong = station.strong();
      add(all, station, strong.momentMode(), strong.moment(), demand.moment(), load.length());
      add(all, station, strong.shearMode(), strong.shear(), demand.shear(), 1);
    }
    return new BreakOrder(all);
  }

  private static void add(
      List<Break> all, Station station, String mode, double capacity, double demand, double arm) {
    double factor = capacity / Math.abs(demand);
    if (Math.abs(demand) > 1e-12 * arm && Double.isFinite(factor)) {
      all.add(new Break(station.at(), station.part(), mode, factor));
    }
  }

  /** What breaks first. */
  public Optional<Break> first() {
    return breaks.stream().findFirst();
  }

  /** Where a part breaks first, if it is loaded at all. */
  public Optional<Break> firstOf(String part) {
    return breaks.stream().filter(b -> b.part().equals(part)).findFirst();
  }

  /**
   * How much more load the protected part bears than the sacrificial one when it breaks; above 1
   * the order is kept. Empty where either is not loaded.
   */
  public Optional<Double> margin(String protectedPart, String sacrificialPart) {
    return firstOf(protectedPart)
        .flatMap(p -> firstOf(sacrificialPart).map(s -> p.factor() / s.factor()));
  }
}
