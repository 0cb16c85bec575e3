package kitwright.mechanics.beam;

/**
 * Shear stress in one region at one level.
 *
 * @param where the region
 * @param level m
 * @param stress Pa
 */
public record ShearStress(String where, double level, double stress) {}
