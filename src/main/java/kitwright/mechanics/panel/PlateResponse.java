package kitwright.mechanics.panel;

/**
 * What a plate does under pressure. Moments pull at the side away from the pressure.
 *
 * @param deflection at the middle, all of it, m
 * @param shearDeflection the part of it that transverse shear brings, m
 * @param mx at the middle, N
 * @param my at the middle, N
 * @param edgeMx at the middle of the sides x = 0 and x = a, N; nought on simple supports
 * @param edgeMy at the middle of the sides y = 0 and y = b, N
 * @param cornerMxy twisting moment at the corners, N
 * @param qx shear per width at the middle of the sides x = 0 and x = a, N/m
 * @param qy shear per width at the middle of the sides y = 0 and y = b, N/m
 */
public record PlateResponse(
    double deflection,
    double shearDeflection,
    double mx,
    double my,
    double edgeMx,
    double edgeMy,
    double cornerMxy,
    double qx,
    double qy) {}
