package kitwright.cutting;

import kitwright.cutting.solve.Area;

/**
 * How lengths are told at the bench: in millimetres, and for who reads a tape in inches also to the
 * nearest thirty-second of one (an inch is 25.4 mm exactly, NIST SP 811). The saw follows the
 * millimetres.
 */
public record Tape(boolean inches) {
  private static final int PARTS = 32;

  /** An inch in tenths of a millimetre. */
  private static final long INCH = 254;

  /** A length, such as {@code 310 mm} or {@code 310 mm (12 7/32 in)}. */
  String told(long tenths) {
    return Tenths.mm(tenths) + " mm" + (inches ? " (" + inch(tenths) + " in)" : "");
  }

  /** Length by width. */
  String told(Area area) {
    return Tenths.mm(area.length())
        + " x "
        + Tenths.mm(area.width())
        + " mm"
        + (inches ? " (" + inch(area.length()) + " x " + inch(area.width()) + " in)" : "");
  }

  private static String inch(long tenths) {
    long parts = (tenths * PARTS + INCH / 2) / INCH;
    long whole = parts / PARTS;
    long rest = parts % PARTS;
    if (rest == 0) {
      return String.valueOf(whole);
    }
    long twos = Long.lowestOneBit(rest);
    return (whole == 0 ? "" : whole + " ") + rest / twos + "/" + PARTS / twos;
  }
}
