package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Section;
import kitwright.value.Quantity;

/**
 * Whether a washer presses on all that lies under it: it is stiff, lies wholly on the piece, and
 * shares nothing with the next.
 *
 * @see "EN 1995-1-1:2004, 8.5.2 (3) and 10.4.3: a plate counts as a washer of 12 times its
 *     thickness or 4 diameters, read in one public implementation"
 */
final class Washers {
  private static final double WIDEST = 4;
  private static final double OF_THICKNESS = 12;

  private Washers() {}

  /**
   * What is lacking for it, each a clause.
   *
   * @param washer its diameter, m
   * @param bolt m
   */
  static List<String> lacking(Section section, double washer, double bolt, double count) {
    List<String> lacking = new ArrayList<>();
    Optional<Double> thick = dimension(section, "washer-thickness");
    double stiff = thick.map(t -> OF_THICKNESS * t).orElse(WIDEST * bolt);
    if (washer > stiff * (1 + 1e-9)) {
      lacking.add(
          "a washer of "
              + Print.mm(washer)
              + (thick.isPresent()
                  ? " and " + Print.mm(thick.get()) + " thick bends: at most "
                  : " may bend: without its washer-thickness at most ")
              + Print.mm(stiff)
              + (thick.isPresent() ? ", 12 times its thickness" : ", 4 diameters of the bolt")
              + ", counts");
    }
    Distance.washer(section, "edge-distance", dimension(section, "edge-distance"), washer / 2)
        .ifPresent(lacking::add);
    if (count > 1) {
      Distance.washer(section, "spacing", dimension(section, "spacing"), washer)
          .ifPresent(lacking::add);
    }
    return lacking;
  }

  /**
   * Why a piece may let a washer or head through before it is pressed in, if it may.
   *
   * @param layer from 1
   */
  static Optional<String> thin(Section section, int layer, double washer) {
    Optional<Double> thick = section.layers().get(layer - 1).thickness().map(Quantity::base);
    return thick.isPresent() && thick.get() >= washer - 1e-9
        ? Optional.empty()
        : Optional.of(
            "the piece under the washer or head of "
                + section.named()
                + " is not known to be as thick as that is wide ("
                + Print.mm(washer)
                + "), and may let it through before it is pressed in");
  }

  static Optional<Double> dimension(Section section, String name) {
    return section.dimension(name).map(Quantity::base);
  }
}
