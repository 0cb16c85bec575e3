package kitwright.mechanics.beam;

/**
 * Bending stress at the edges of one region, tension positive.
 *
 * @param where the region
 * @param material its name
 * @param lower height of its lower edge, m
 * @param upper height of its upper edge, m
 * @param atLower Pa
 * @param atUpper Pa
 */
public record EdgeStress(
    String where, String material, double lower, double upper, double atLower, double atUpper) {}
