package kitwright.assessment.joint;

import java.util.Optional;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Section;

/**
 * How far a fastening is from an end, an edge or the next, so that the wood does not split first.
 */
final class Distance {
  private Distance() {}

  /** Why a washer does not lie wholly on the piece, or lies over the next, if so; m. */
  static Optional<String> washer(
      Section section, String name, Optional<Double> stated, double least) {
    return lack(
        section,
        name,
        stated,
        least,
        ": a washer asks for at least " + Print.mm(least),
        "and its washer asks for " + Print.mm(least) + " to press on all that it covers");
  }

  /**
   * What is lacking of a distance, if anything.
   *
   * @param stated in m
   * @param least in m
   */
  static Optional<String> fault(
      Section section, String name, Optional<Double> stated, double least) {
    return lack(
        section,
        name,
        stated,
        least,
        " (at least " + Print.mm(least) + ")",
        "below the " + Print.mm(least) + " from which the wood does not split first");
  }

  private static Optional<String> lack(
      Section section,
      String name,
      Optional<Double> stated,
      double least,
      String unstated,
      String tooNear) {
    if (stated.isEmpty()) {
      return Optional.of(section.named() + " does not state its " + name + unstated);
    }
    return stated.get() >= least - 1e-9
        ? Optional.empty()
        : Optional.of(
            "the "
                + name
                + " of "
                + section.named()
                + " is "
                + Print.mm(stated.get())
                + ", "
                + tooNear);
  }
}
