package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.finding.Findings;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.load.Break;
import kitwright.mechanics.load.BreakOrder;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.load.Station;
import kitwright.mechanics.load.Strong;

/**
 * A pin or bolt that shall shear before the part it is in breaks. Rated on its mean, as every part
 * of a weak link: a standard gives the least, which one in twenty is taken to fall below.
 */
public final class PinLink {
  private static final int STATIONS = 11;

  private PinLink() {}

  public static WeakLinks of(
      Section pin,
      Part protectedPart,
      Bending bending,
      Cantilever load,
      double at,
      Materials materials,
      Factors factors) {
    Optional<Figure> stated =
        BoltMethod.of(
                pin, materials, new Factors.OnSide(factors, Factors.Side.BUILT), new Findings())
            .figures()
            .of(Measure.BOLT_SHEAR);
    if (stated.isEmpty()) {
      return WeakLinks.lacking(
          List.of("the shear strength of the pin " + pin.id() + " is not known"));
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
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      stations.add(
          new Station(load.length() * i / (STATIONS - 1), protectedPart.id(), strong.get()));
    }
    BreakOrder order =
        BreakOrder.of(
            load,
            stations,
            List.of(
                Break.link(at, pin.id(), "shear of the pin", stated.get().value() * 1000, asked)));
    return new WeakLinks(
        order.margin(protectedPart.id(), pin.id()),
        order.first(),
        order.breaks(),
        List.of(),
        Optional.empty(),
        List::of);
  }
}
