package kitwright.assessment.sheet;

import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Quantity;
import kitwright.value.Word;

/**
 * Between what values a property lies of any stuff of a sort: wide enough for all that boats are
 * built of, narrow enough for a slip of a unit. Common practice, no source.
 *
 * @param low in SI units
 * @param high in SI units
 */
public record Band(double low, double high, String unit, double scale) {
  private static final Map<Sort, double[]> MODULI =
      Map.of(
          Sort.TIMBER, new double[] {1.5, 30},
          Sort.PLYWOOD, new double[] {1, 30},
          Sort.METAL, new double[] {10, 450},
          Sort.FIBRE, new double[] {3, 1000},
          Sort.RESIN, new double[] {0.3, 10},
          Sort.CLOTH, new double[] {1, 500},
          Sort.LAMINATE, new double[] {1, 500},
          Sort.CORE, new double[] {0.001, 10});

  private static final Map<Sort, double[]> DENSITIES =
      Map.of(
          Sort.TIMBER, new double[] {60, 1400},
          Sort.PLYWOOD, new double[] {250, 1200},
          Sort.METAL, new double[] {1500, 22_000},
          Sort.FIBRE, new double[] {800, 3500},
          Sort.RESIN, new double[] {800, 2500},
          Sort.LAMINATE, new double[] {500, 3000},
          Sort.CORE, new double[] {15, 900});

  private static final Map<Sort, double[]> STRENGTHS =
      Map.of(
          Sort.TIMBER, new double[] {0.2, 400},
          Sort.PLYWOOD, new double[] {0.2, 400},
          Sort.METAL, new double[] {5, 4000},
          Sort.FIBRE, new double[] {100, 10_000},
          Sort.RESIN, new double[] {5, 250},
          Sort.CLOTH, new double[] {3, 5000},
          Sort.LAMINATE, new double[] {3, 5000},
          Sort.CORE, new double[] {0.02, 60},
          Sort.GLUE, new double[] {0.1, 150},
          Sort.BOLT, new double[] {50, 3000});

  /** %: Wood Handbook, table 5-6, has 8 to 34 for clear wood. */
  private static final Map<Sort, double[]> SCATTERS =
      Map.of(
          Sort.TIMBER, new double[] {2, 60},
          Sort.PLYWOOD, new double[] {2, 60},
          Sort.METAL, new double[] {0.5, 40},
          Sort.CLOTH, new double[] {1, 60},
          Sort.LAMINATE, new double[] {1, 60},
          Sort.CORE, new double[] {1, 60},
          Sort.GLUE, new double[] {2, 60},
          Sort.BOLT, new double[] {0.5, 40});

  /** The band; empty where nothing can be said. */
  public static Optional<Band> of(Sort sort, MaterialProperty property) {
    return switch (property) {
      case DENSITY -> of(DENSITIES, sort, "kg/m³", 1);
      case E -> of(MODULI, sort, "GPa", 1e9);
      case E_ACROSS -> wider(MODULI, sort, 0.01, 1, "GPa", 1e9);
      case E_THROUGH -> wider(MODULI, sort, 0.01, 2, "GPa", 1e9);
      case G -> wider(MODULI, sort, 0.02, 0.6, "GPa", 1e9);
      case G_ACROSS -> wider(MODULI, sort, 0.002, 0.6, "GPa", 1e9);
      case TENSILE_STRENGTH,
          COMPRESSIVE_STRENGTH,
          BENDING_STRENGTH,
          SHEAR_STRENGTH,
          SHEAR_STRENGTH_ACROSS,
          TENSILE_STRENGTH_ACROSS,
          COMPRESSIVE_STRENGTH_ACROSS,
          BOND_STRENGTH,
          YIELD_STRENGTH,
          PROOF_STRESS ->
          of(STRENGTHS, sort, "MPa", 1e6);
      case AREAL_WEIGHT -> Optional.of(new Band(0.01, 5, "kg/m²", 1));
      case SCATTER -> of(SCATTERS, sort, "%", 0.01);
      case FIBRE_FRACTION -> Optional.of(new Band(0.05, 0.9, "", 1));
      case CRIMP -> Optional.of(new Band(0.5, 1, "", 1));
      case POISSON -> Optional.of(new Band(0, 0.5, "", 1));
      case VENEER -> Optional.of(new Band(0.2e-3, 8e-3, "mm", 1e-3));
      default -> Optional.empty();
    };
  }

  private static Optional<Band> of(
      Map<Sort, double[]> table, Sort sort, String unit, double scale) {
    return wider(table, sort, 1, 1, unit, scale);
  }

  private static Optional<Band> wider(
      Map<Sort, double[]> table, Sort sort, double down, double up, String unit, double scale) {
    return Optional.ofNullable(table.get(sort))
        .map(ends -> new Band(down * ends[0] * scale, up * ends[1] * scale, unit, scale));
  }

  /** What is wrong with a value outside it, a clause. */
  public Optional<String> misses(Material material, MaterialProperty property, Quantity value) {
    if (value.base() >= low * (1 - 1e-9) && value.base() <= high * (1 + 1e-9)) {
      return Optional.empty();
    }
    String sort = Word.spoken(material.sort());
    return Optional.of(
        "the "
            + property.key()
            + " of material "
            + material.id()
            + " is "
            + value
            + ", and no "
            + sort
            + " lies outside "
            + Print.number(low / scale)
            + " to "
            + Print.with(high / scale, unit));
  }
}
