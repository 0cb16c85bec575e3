package kitwright.ledger;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/** A property that a material may have, with its key and what it measures. */
public enum MaterialProperty {
  DENSITY("density", Dimension.DENSITY),
  E("E", Dimension.STRESS),
  E_ACROSS("E-across", Dimension.STRESS),
  E_THROUGH("E-through", Dimension.STRESS),
  G("G", Dimension.STRESS),
  POISSON("poisson", Dimension.RATIO),
  TENSILE_STRENGTH("tensile-strength", Dimension.STRESS),
  TENSILE_STRENGTH_ACROSS("tensile-strength-across", Dimension.STRESS),
  COMPRESSIVE_STRENGTH("compressive-strength", Dimension.STRESS),
  COMPRESSIVE_STRENGTH_ACROSS("compressive-strength-across", Dimension.STRESS),
  BENDING_STRENGTH("bending-strength", Dimension.STRESS),
  SHEAR_STRENGTH("shear-strength", Dimension.STRESS),
  BOND_STRENGTH("bond-strength", Dimension.STRESS),
  YIELD_STRENGTH("yield-strength", Dimension.STRESS),
  PROOF_STRESS("proof-stress", Dimension.STRESS),
  STRAIN_TO_FAILURE("strain-to-failure", Dimension.RATIO),
  AREAL_WEIGHT("areal-weight", Dimension.AREAL_MASS),
  FIBRE_FRACTION("fibre-fraction", Dimension.RATIO),
  MIX_RATIO("mix-ratio", Dimension.RATIO),
  ROLL_WIDTH("roll-width", Dimension.LENGTH),
  OVERLAP("overlap", Dimension.LENGTH),
  VENEER("veneer", Dimension.LENGTH),
  CELL("cell", Dimension.LENGTH),
  MOISTURE("moisture", Dimension.RATIO),
  SCATTER("scatter", Dimension.RATIO),
  POT_LIFE("pot-life", Dimension.TIME),
  CURE("cure", Dimension.TIME),
  AT_TEMPERATURE("at-temperature", Dimension.TEMPERATURE);

  private final String key;
  private final Dimension dimension;

  MaterialProperty(String key, Dimension dimension) {
    this.key = key;
    this.dimension = dimension;
  }

  /** As a ledger writes it. */
  public String key() {
    return key;
  }

  public Dimension dimension() {
    return dimension;
  }

  static Map<MaterialProperty, Quantity> readAll(Fields f) {
    Map<MaterialProperty, Quantity> all = new EnumMap<>(MaterialProperty.class);
    for (MaterialProperty property : values()) {
      // A bare number is a share; other units are never guessed.
      f.maybeMeasure(property.key, Unit.ONE, property.dimension)
          .ifPresent(value -> all.put(property, value));
    }
    return Collections.unmodifiableMap(all);
  }
}
