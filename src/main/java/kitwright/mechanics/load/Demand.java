package kitwright.mechanics.load;

/**
 * What a load asks of a section.
 *
 * @param at distance from the root, m
 * @param shear N
 * @param moment N·m
 */
public record Demand(double at, double shear, double moment) {}
