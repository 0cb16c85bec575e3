package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.load.Break;
import kitwright.mechanics.load.BreakOrder;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Station;
import kitwright.mechanics.load.Strong;

/**
 * A pin or bolt that shall shear before the part it is in breaks. Standards give only the least
 * strength of a bolt, and a weak link must be rated on the most: two standard deviations above.
 */
final class PinLink {
  private static final double ABOVE = 2;

  private PinLink() {}

  static WeakLinks of(Section pin, Part protectedPart, Cantilever load, double at, Stuffs stuffs) {
    Optional<Figure> least =
        BoltMethod.of(pin, stuffs, new Findings()).figures().of(Measure.BOLT_SHEAR);
    double scatter = pin.material().flatMap(stuffs::material).map(stuffs::scatter).orElse(0.0);
    if (least.isEmpty() || !(scatter > 0)) {
      return WeakLinks.lacking(
          List.of(
              "the pin "
                  + pin.id()
                  + " does not state how its strength scatters, and only its least is known"));
    }
    Bending bending = Bending.of(protectedPart.beam());
    Capacity moment = bending.moment(Sense.SAGGING);
    Capacity shear = bending.shear();
    if (moment.value().isEmpty() || shear.value().isEmpty()) {
      return WeakLinks.lacking(List.of("the strength of " + protectedPart.id() + " is not known"));
    }
    Strong strong =
        new Strong(
            moment.value().getAsDouble(),
            Figures.words(moment.governing().orElseThrow()),
            shear.value().getAsDouble(),
            Figures.words(shear.governing().orElseThrow()));
    double most = least.get().value() * 1000 * (1 + ABOVE * scatter);
    List<Break> links = new ArrayList<>();
    double asked = Math.abs(load.at(at).shear());
    if (!(asked > 0)) {
      return WeakLinks.lacking(List.of("the load does not shear the pin"));
    }
    links.add(Break.link(at, pin.id(), "shear of the pin", most, asked));
    BreakOrder order =
        BreakOrder.of(load, List.of(new Station(0, protectedPart.id(), strong)), links);
    return new WeakLinks(
        order.margin(protectedPart.id(), pin.id()), order.first(), order.breaks(), List.of());
  }
}
