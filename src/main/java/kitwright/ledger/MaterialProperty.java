package kitwright.ledger;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** A property that a material may have, with its key and what it measures. */
public enum MaterialProperty {
  DENSITY("density", Dimension.DENSITY, "its density", "560 kg/m3"),
  E("E", Dimension.STRESS, "modulus of elasticity along grain or fibre", "11.8 GPa"),
  E_ACROSS("E-across", Dimension.STRESS, "modulus of elasticity across", "0.6 GPa"),
  E_THROUGH(
      "E-through", Dimension.STRESS, "modulus of elasticity through the thickness", "0.1 GPa"),
  G("G", Dimension.STRESS, "shear modulus along grain or fibre", "0.7 GPa"),
  G_ACROSS(
      "G-across",
      Dimension.STRESS,
      "shear modulus through the thickness across the grain: rolling shear of wood, the second way"
          + " of a honeycomb",
      "70 MPa"),
  POISSON("poisson", Dimension.RATIO, "Poisson’s ratio", "0.3"),
  TENSILE_STRENGTH("tensile-strength", Dimension.STRESS, "tensile strength along", "80 MPa"),
  TENSILE_STRENGTH_ACROSS(
      "tensile-strength-across", Dimension.STRESS, "tensile strength across", "2 MPa"),
  COMPRESSIVE_STRENGTH(
      "compressive-strength", Dimension.STRESS, "compressive strength along", "52 MPa"),
  COMPRESSIVE_STRENGTH_ACROSS(
      "compressive-strength-across", Dimension.STRESS, "compressive strength across", "6 MPa"),
  BENDING_STRENGTH("bending-strength", Dimension.STRESS, "modulus of rupture", "90 MPa"),
  SHEAR_STRENGTH("shear-strength", Dimension.STRESS, "shear strength", "9 MPa"),
  SHEAR_STRENGTH_ACROSS(
      "shear-strength-across",
      Dimension.STRESS,
      "shear strength through the thickness across the grain: rolling shear of wood",
      "1.5 MPa"),
  BOND_STRENGTH(
      "bond-strength", Dimension.STRESS, "strength of the bond of a glue or a skin", "6 MPa"),
  YIELD_STRENGTH("yield-strength", Dimension.STRESS, "yield strength of a metal", "215 MPa"),
  PROOF_STRESS("proof-stress", Dimension.STRESS, "stress at 0.2 % of lasting strain", "205 MPa"),
  STRAIN_TO_FAILURE("strain-to-failure", Dimension.RATIO, "strain at which it breaks", "2.1 %"),
  AREAL_WEIGHT("areal-weight", Dimension.AREAL_MASS, "weight of a cloth", "200 g/m2"),
  FIBRE_FRACTION(
      "fibre-fraction", Dimension.RATIO, "share of a laminate that is fibre, by mass", "45 %"),
  CRIMP(
      "crimp",
      Dimension.RATIO,
      "share of the fibre’s modulus that the waviness of a woven cloth leaves",
      "0.93"),
  MIX_RATIO("mix-ratio", Dimension.RATIO, "hardener to resin, by weight", "50 %"),
  ROLL_WIDTH("roll-width", Dimension.LENGTH, "width of the roll of a cloth", "1000 mm"),
  OVERLAP("overlap", Dimension.LENGTH, "how much one cloth laps the next", "50 mm"),
  VENEER("veneer", Dimension.LENGTH, "thickness of one veneer of a board", "1.5 mm"),
  CELL("cell", Dimension.LENGTH, "width of a cell of a honeycomb", "6 mm"),
  MOISTURE("moisture", Dimension.RATIO, "moisture at which the values hold", "12 %"),
  SCATTER("scatter", Dimension.RATIO, "coefficient of variation of the strengths", "15 %"),
  POT_LIFE("pot-life", Dimension.TIME, "how long a mixed resin can be worked", "25 min"),
  CURE("cure", Dimension.TIME, "how long it takes to cure", "24 h"),
  AT_TEMPERATURE(
      "at-temperature",
      Dimension.TEMPERATURE,
      "the temperature at which pot life and cure hold",
      "20 C");

  private final String key;
  private final Dimension dimension;
  private final String says;
  private final String example;

  MaterialProperty(String key, Dimension dimension, String says, String example) {
    this.key = key;
    this.dimension = dimension;
    this.says = says;
    this.example = example;
  }

  /** As a ledger writes it. */
  public String key() {
    return key;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** All of them, as a ledger writes them. */
  static List<String> keys() {
    return Arrays.stream(values()).map(MaterialProperty::key).toList();
  }

  static Map<MaterialProperty, Quantity> readAll(Keys k) {
    Map<MaterialProperty, Quantity> all = new EnumMap<>(MaterialProperty.class);
    for (MaterialProperty property : values()) {
      // A bare number is a share; other units are never guessed.
      k.key(property.key, property.says, property.example)
          .maybeMeasure(Unit.ONE, property.dimension)
          .ifPresent(value -> all.put(property, value));
    }
    return Collections.unmodifiableMap(all);
  }
}
