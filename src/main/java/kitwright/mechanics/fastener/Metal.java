package kitwright.mechanics.fastener;

/**
 * Metals (and carbon) by their corrosion potential in flowing sea water, volts against a saturated
 * calomel electrode, from and to.
 *
 * @see "Australasian Corrosion Association, Corrosion potentials in flowing seawater
 *     (corrosion.com.au, read); after F. L. LaQue, Marine Corrosion, 1975"
 */
public enum Metal {
  MAGNESIUM(-1.63, -1.60),
  ZINC(-1.03, -0.98),
  ALUMINIUM(-1.00, -0.76),
  STEEL(-0.72, -0.60),
  /** Where water stands still, or under a shield: crevices, sealed holes. */
  STAINLESS_304_ACTIVE(-0.58, -0.44),
  STAINLESS_316_ACTIVE(-0.46, -0.33),
  BRASS(-0.40, -0.31),
  COPPER(-0.37, -0.30),
  MANGANESE_BRONZE(-0.34, -0.26),
  SILICON_BRONZE(-0.29, -0.25),
  LEAD(-0.25, -0.19),
  NICKEL_ALUMINIUM_BRONZE(-0.22, -0.14),
  STAINLESS_304_PASSIVE(-0.10, -0.04),
  STAINLESS_316_PASSIVE(-0.10, 0.00),
  TITANIUM(0.04, 0.06),
  /** Graphite; carbon fibre behaves like it. */
  CARBON(0.20, 0.30);

  /**
   * Apart by more than this, the baser one corrodes when both are wet and touch: 0.15 V where there
   * is salt water (Carr Lane, practical guideline for the anodic index, carrlane.com, read).
   */
  public static final double CAUTION = 0.15;

  private final double from;
  private final double to;

  Metal(double from, double to) {
    this.from = from;
    this.to = to;
  }

  /** V, middle of its range. */
  public double potential() {
    return (from + to) / 2;
  }

  /**
   * Whether the pair wants insulation or a barrier where wet: more than the limit between the
   * middles of their ranges.
   */
  public boolean mixesBadlyWith(Metal other) {
    return Math.abs(potential() - other.potential()) > CAUTION;
  }

  /** The one of the pair that is eaten. */
  public Metal baser(Metal other) {
    return potential() <= other.potential() ? this : other;
  }
}
