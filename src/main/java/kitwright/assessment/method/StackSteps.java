package kitwright.assessment.method;

import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Step;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Stiffness;

/** A, B and D of a stack as lines of a sheet, and in words what its B does. */
public final class StackSteps {
  /** Of the greatest entry that the thickness allows, less than this is rounding. */
  private static final double NIL = 1e-9;

  private final Stiffness stiffness;
  private final double greatest;
  private final double thickness;

  private StackSteps(Laminate laminate) {
    stiffness = laminate.stiffness();
    greatest = Math.max(stiffness.a(1, 1), stiffness.a(2, 2));
    thickness = laminate.thickness();
  }

  public static List<Step> of(Laminate laminate) {
    return new StackSteps(laminate).steps();
  }

  private List<Step> steps() {
    return List.of(
        new Step(
            "stiffness in its plane",
            "A = Σ Q̄·t",
            names("A", stiffness::a, greatest),
            entries(stiffness::a, greatest, 1e6, "MN/m")),
        coupling(),
        new Step(
            "bending stiffness about the middle",
            "D = Σ Q̄·(z₂³ − z₁³)/3",
            names("D", stiffness::d, greatest * thickness * thickness),
            entries(stiffness::d, greatest * thickness * thickness, 1, "N·m")));
  }

  private Step coupling() {
    double most = greatest * thickness;
    boolean bends =
        isThere(stiffness.b(1, 1), most)
            || isThere(stiffness.b(1, 2), most)
            || isThere(stiffness.b(2, 2), most);
    boolean twists =
        isThere(stiffness.b(1, 3), most)
            || isThere(stiffness.b(2, 3), most)
            || isThere(stiffness.b(3, 3), most);
    boolean nil = !bends && !twists;
    return new Step(
        nil
            ? "coupling of stretch and bend: nil, the stack is alike above and below its middle, so"
                + " that it stays flat when it is pulled"
            : "coupling of stretch and bend: the stack is not alike above and below its middle, so"
                + " that it "
                + (bends ? "bends" : "twists")
                + (bends && twists ? " and twists" : "")
                + " when it is pulled or sheared in its plane, and may warp as it cures",
        "B = Σ Q̄·(z₂² − z₁²)/2",
        nil ? "B = 0" : names("B", stiffness::b, most),
        nil ? "0 N" : entries(stiffness::b, most, 1, "N"));
  }

  /** An entry of a matrix by its row and column. */
  @FunctionalInterface
  private interface Entry {
    double at(int row, int column);
  }

  private static boolean isThere(double value, double most) {
    return Math.abs(value) > NIL * most;
  }

  /** Those that couple shear with the rest are left out where both are nil. */
  private static boolean isTurned(Entry entry, double most) {
    return isThere(entry.at(1, 3), most) || isThere(entry.at(2, 3), most);
  }

  private static String names(String letter, Entry entry, double most) {
    String plain = letter + "₁₁, " + letter + "₁₂, " + letter + "₂₂, " + letter + "₆₆";
    return isTurned(entry, most) ? plain + ", " + letter + "₁₆, " + letter + "₂₆" : plain;
  }

  private static String entries(Entry entry, double most, double unit, String name) {
    List<String> all = new ArrayList<>();
    for (int[] at : new int[][] {{1, 1}, {1, 2}, {2, 2}, {3, 3}, {1, 3}, {2, 3}}) {
      double value = entry.at(at[0], at[1]);
      if (at[0] == at[1] || at[1] == 2 || isTurned(entry, most)) {
        all.add(Print.number(isThere(value, most) ? value / unit : 0));
      }
    }
    return String.join(", ", all) + " " + name;
  }
}
