package kitwright.value;

import java.util.Locale;

/** What a unit measures. Units convert within one dimension only, and nothing is guessed across. */
public enum Dimension {
  LENGTH,
  AREA,
  VOLUME,
  MASS,
  TIME,
  FORCE,
  STRESS,
  MOMENT,
  DENSITY,
  AREAL_MASS,
  LINEAR_MASS,
  LINEAR_LOAD,
  SPEED,
  TEMPERATURE,
  TEMPERATURE_DIFFERENCE,
  ANGLE,
  RATIO,
  /** Single things. */
  COUNT,
  /** Sheets, rolls, tins …: counted, and each kind converts into no other. */
  PACKAGE;

  /** The word a person reads. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
