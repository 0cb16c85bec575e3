package kitwright.assessment.joint;

import java.util.Optional;
import kitwright.assessment.sheet.Faults;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.MetricThread;
import kitwright.value.Dimension;
import kitwright.value.Quantity;

/**
 * The thread of a bolt: the coarse one of ISO 261, or one of which the stress area is stated, such
 * as one in inches or a fine one.
 *
 * @param diameter m
 * @param area stress area, m²
 * @param step how it came about
 */
record BoltThread(double diameter, double area, Step step) {
  private static final String STATED = "stress-area";

  /** The root of a thread leaves at least this of its shank: M1.6 63 %, 1/4-20 UNC 65 %. */
  private static final double LEAST = 0.5;

  /** Empty where it has no coarse thread and states nothing. */
  static Optional<BoltThread> of(Section section, double diameter, Faults faults) {
    Optional<Quantity> stated = section.dimension(STATED);
    return stated.isPresent()
        ? stated(section, diameter, stated.get(), faults)
        : MetricThread.coarse(millimetres(diameter)).map(BoltThread::coarse);
  }

  /** What to write for one that is not known. */
  static String unknown(Section section, double diameter) {
    return section.named()
        + " has bolts of "
        + Print.mm(diameter)
        + ", of which ISO 261 has no coarse thread: write the stress area of their thread among"
        + " its dimensions, as a table of that thread has it, such as stress-area: 91.5 mm2 for"
        + " 1/2-13 UNC";
  }

  private static double millimetres(double diameter) {
    return Math.round(diameter * 1e6) / 1e3;
  }

  private static BoltThread coarse(MetricThread thread) {
    return new BoltThread(
        thread.diameter(),
        thread.stressArea(),
        step(
            "A_s = π/4·((d₂ + d₃)/2)², ISO 898-1:2013, 9.1.6.1",
            "M" + Print.number(thread.diameter() * 1000) + ", pitch " + Print.mm(thread.pitch()),
            thread.stressArea()));
  }

  private static Optional<BoltThread> stated(
      Section section, double diameter, Quantity area, Faults faults) {
    double shank = Math.PI / 4 * diameter * diameter;
    if (area.unit().dimension() != Dimension.AREA
        || !(area.base() < shank)
        || !(area.base() > LEAST * shank)) {
      faults.add(
          "dimensions",
          "The stress area of a bolt of " + Print.mm(diameter) + " is " + area,
          "Write an area below that of its shank, "
              + Print.with(shank * 1e6, "mm²")
              + ", as a table of its thread has it.");
      return Optional.empty();
    }
    return Optional.of(
        new BoltThread(
            diameter,
            area.base(),
            step("as stated in " + section.named(), area.toString(), area.base())));
  }

  private static Step step(String formula, String numbers, double area) {
    return new Step("stress area", formula, numbers, Print.with(area * 1e6, "mm²"));
  }
}
