package kitwright.assessment.method;

import java.util.List;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;

/** Thin-face values of a sandwich beside the exact ones, where they differ enough to matter. */
public final class ThinFaceSteps {
  /** They are shown where they differ by more than this. */
  private static final double APART = 0.05;

  private ThinFaceSteps() {}

  /** Adds a line where the thin-face value is off by more than 5 %; the exact one is used. */
  public static void compare(
      String what, String formula, double thin, double exact, String unit, List<Step> steps) {
    double apart = thin / exact - 1;
    if (Math.abs(apart) > APART) {
      steps.add(
          new Step(
              what,
              formula,
              "differs by "
                  + Print.apart(apart)
                  + " from the exact "
                  + Print.with(exact, unit)
                  + ", which is used",
              Print.with(thin, unit)));
    }
  }
}
