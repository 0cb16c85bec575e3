package kitwright.assessment.material;

import kitwright.ledger.Material.Sort;

/**
 * What a scantling standard for small craft lets a material bear of its ultimate strength: a
 * knock-down for a design stress that names the standard and no value takes these. They were read
 * at second hand only, wood as of a stiffener from memory; nothing passes on them.
 *
 * @see "ISO 12215-5:2008, tables 7 (FRP 0.5), 8 (metal 0.6 of the ultimate), 9 (wood as plating
 *     0.5), 11 (core: the least, 0.5), 18 (wood as a stiffener 0.4 to 0.45), read in one public
 *     implementation that names the tables on 2026-11-29, not in the standard"
 */
final class DesignStress {
  static final String STANDARD = "ISO 12215-5";

  /** Why a verdict that leans on them stays open. */
  static final String SECOND_HAND =
      "the shares of "
          + STANDARD
          + " that a design stress takes without a value were read at second hand (FRP 0.5, metal"
          + " 0.6, core 0.5, wood 0.4): write the value, and its clause as the source, from your"
          + " copy of the standard";

  private DesignStress() {}

  /** Whether a source names the standard. */
  static boolean isNamedBy(String source) {
    return source.strip().startsWith(STANDARD);
  }

  /** Of the ultimate strength. */
  static double share(Sort sort) {
    return switch (sort) {
      case METAL, BOLT -> 0.6;
      case TIMBER, PLYWOOD -> 0.4;
      case CLOTH, LAMINATE, CORE, FIBRE, RESIN, GLUE, OTHER -> 0.5;
    };
  }
}
