package kitwright.cutting;

import kitwright.cutting.saw.Rect;

/**
 * How lengths are told at the bench: in millimetres, and for who reads a tape in inches also to the
 * nearest sixteenth of one (an inch is 25.4 mm exactly, NIST SP 811). The saw follows the
 * millimetres.
 */
public record Tape(boolean inches) {
  private static final int PARTS = 16;

  /** An inch in tenths of a millimetre. */
  private static final long INCH = 254;

  /** A length, such as {@code 310 mm} or {@code 12 3/16 in (310 mm)}. */
  public String told(long tenths) {
    String mm = Tenths.mm(tenths) + " mm";
    return inches ? inch(tenths) + " in (" + mm + ")" : mm;
  }

  /** Length by width. */
  public String told(Rect rect) {
    String mm = Tenths.mm(rect.length()) + " x " + Tenths.mm(rect.width()) + " mm";
    return inches ? inch(rect.length()) + " x " + inch(rect.width()) + " in (" + mm + ")" : mm;
  }

  /** Length by width, short. */
  public String brief(Rect rect) {
    return inches
        ? inch(rect.length()) + " x " + inch(rect.width())
        : Tenths.mm(rect.length()) + " x " + Tenths.mm(rect.width());
  }

  /** A length, without its unit. */
  public String brief(long tenths) {
    return inches ? inch(tenths) : Tenths.mm(tenths);
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
