package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.load.Break;
import kitwright.mechanics.load.BreakOrder;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Station;
import kitwright.mechanics.load.Strong;
import kitwright.mechanics.scatter.Scattered;

/**
 * A pin or bolt that shall shear before the part it is in breaks. Standards give only the least
 * strength of a bolt, and a weak link must be rated on the most: two standard deviations above the
 * mean, of which one in twenty falls below the least.
 */
final class PinLink {
  private static final double ABOVE = 2;
  private static final int STATIONS = 11;

  private PinLink() {}

  static WeakLinks of(
      Section pin, Part protectedPart, Bending bending, Cantilever load, double at, Stuffs stuffs) {
    Optional<Figure> stated =
        BoltMethod.of(pin, stuffs, new Findings()).figures().of(Measure.BOLT_SHEAR);
    Optional<Material> material = pin.material().flatMap(stuffs::material);
    double scatter = material.map(stuffs::scatter).orElse(0.0);
    if (stated.isEmpty() || !(scatter > 0)) {
      return WeakLinks.lacking(
          List.of(
              "the pin "
                  + pin.id()
                  + " does not state how its strength scatters, and only its least is known"));
    }
    List<String> lacking = new ArrayList<>();
    Optional<Strong> strong = WeakLinks.strong(bending, lacking);
    if (strong.isEmpty()) {
      return WeakLinks.lacking(lacking);
    }
    double asked = Math.abs(load.at(at).shear());
    if (!(asked > 0)) {
      return WeakLinks.lacking(List.of("the load does not shear the pin"));
    }
    double most = stated.get().value() * 1000 * mostOver(material.orElseThrow(), scatter);
    stuffs.note(
        pin.id()
            + " as a weak link is rated on the most that it may bear, "
            + Print.with(most / 1000, "kN")
            + ": two standard deviations above its mean");
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      stations.add(
          new Station(load.length() * i / (STATIONS - 1), protectedPart.id(), strong.get()));
    }
    BreakOrder order =
        BreakOrder.of(
            load, stations, List.of(Break.link(at, pin.id(), "shear of the pin", most, asked)));
    return new WeakLinks(
        order.margin(protectedPart.id(), pin.id()),
        order.first(),
        order.breaks(),
        List.of(),
        Optional.empty(),
        List::of);
  }

  /** The most over the value stated, which is a mean or the least. */
  private static double mostOver(Material material, double scatter) {
    Scattered stated = new Scattered(1, scatter, Scattered.Shape.LOGNORMAL);
    boolean mean = material.basis().filter(Basis.MEAN::equals).isPresent();
    return (mean ? stated : Spreads.above(stated)).mean() * (1 + ABOVE * scatter);
  }
}
