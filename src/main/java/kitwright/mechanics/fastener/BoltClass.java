package kitwright.mechanics.fastener;

import java.util.Arrays;
import java.util.Optional;

/**
 * Property classes of bolts, with the least values of their standards in Pa.
 *
 * @see "ISO 898-1:2013, tables 3, 5 and 7; ISO 3506-1 for the stainless classes (A2, A4)"
 */
public enum BoltClass {
  STEEL_4_6("4.6", 400, 0.6),
  STEEL_5_8("5.8", 520, 0.5),
  STEEL_8_8("8.8", 800, 0.6),
  STEEL_10_9("10.9", 1040, 0.5),
  STEEL_12_9("12.9", 1220, 0.5),
  STAINLESS_50("50", 500, 0.5),
  STAINLESS_70("70", 700, 0.5),
  STAINLESS_80("80", 800, 0.5);

  private static final double MPA = 1e6;
  private static final double LARGE = 0.016;

  private final String mark;
  private final double tensile;
  private final double shearFactor;

  BoltClass(String mark, double tensile, double shearFactor) {
    this.mark = mark;
    this.tensile = tensile;
    this.shearFactor = shearFactor;
  }

  /** The class by what is struck on the head: 8.8, or 70 as in A4-70. */
  public static Optional<BoltClass> marked(String mark) {
    var bare = mark.replaceFirst("^A[1-5]-", "");
    return Arrays.stream(values()).filter(c -> c.mark.equals(bare)).findFirst();
  }

  public String mark() {
    return mark;
  }

  /** Stainless classes 70 and 80 above M24 are by agreement: ISO 3506-1:1997, table 2, note. */
  public boolean isBeyond(double diameter) {
    return (this == STAINLESS_70 || this == STAINLESS_80) && diameter > 0.024 + 1e-9;
  }

  /** Least tensile strength Rm, Pa; class 8.8 is stronger above M16. */
  public double tensileStrength(double diameter) {
    return this == STEEL_8_8 && diameter > LARGE + 1e-9 ? 830 * MPA : tensile * MPA;
  }

  /** Shear strength through the thread over Rm: EN 1993-1-8:2005 table 3.4, EN 1993-1-4. */
  public double shearFactor() {
    return shearFactor;
  }
}
