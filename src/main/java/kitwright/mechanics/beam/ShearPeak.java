package kitwright.mechanics.beam;

/**
 * Where a region is sheared most.
 *
 * @param level m
 * @param first ΣE·S of what lies above that level about the neutral axis, N·m
 * @param width that the flow is shared over there, weighted with G over the region's own, m
 * @param perUnit the stress for one newton, Pa
 */
public record ShearPeak(String where, double level, double first, double width, double perUnit) {}
