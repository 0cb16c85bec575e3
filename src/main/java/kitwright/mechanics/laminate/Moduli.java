package kitwright.mechanics.laminate;

/**
 * Engineering constants of a laminate as if it were one sheet.
 *
 * @param ex Pa
 * @param ey Pa
 * @param gxy Pa
 * @param nuxy strain in y over strain in x for a pull in x, with its sign turned
 */
public record Moduli(double ex, double ey, double gxy, double nuxy) {
  static Moduli of(double[][] compliance, double scale) {
    return new Moduli(
        scale / compliance[0][0],
        scale / compliance[1][1],
        scale / compliance[2][2],
        -compliance[0][1] / compliance[0][0]);
  }
}
