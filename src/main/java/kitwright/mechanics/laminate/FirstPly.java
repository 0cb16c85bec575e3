package kitwright.mechanics.laminate;

/**
 * The ply that fails first.
 *
 * @param ply from 1, counted from the bottom
 * @param angle its angle, degrees
 * @param criterion by which it fails
 * @param factor on the load at which it fails
 */
public record FirstPly(int ply, double angle, Criterion criterion, double factor) {}
