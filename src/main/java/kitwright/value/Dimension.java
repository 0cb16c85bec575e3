package kitwright.value;

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

  /** How one of it is written, for whoever wrote it otherwise. */
  String example() {
    return switch (this) {
      case LENGTH -> "600 mm";
      case AREA -> "6 m2";
      case VOLUME -> "2.5 l";
      case MASS -> "1.2 kg";
      case TIME -> "12 h";
      case FORCE -> "900 N";
      case STRESS -> "11.8 GPa";
      case MOMENT -> "250 Nm";
      case DENSITY -> "560 kg/m3";
      case AREAL_MASS -> "200 g/m2";
      case LINEAR_MASS -> "2.3 kg/m";
      case LINEAR_LOAD -> "400 N/m";
      case SPEED -> "8 kn";
      case TEMPERATURE -> "10 C";
      case TEMPERATURE_DIFFERENCE -> "3 K";
      case ANGLE -> "45 deg";
      case RATIO -> "60 %";
      case COUNT -> "4 each";
      case PACKAGE -> "2 sheet";
    };
  }

  /** The word a person reads. */
  public String word() {
    return Word.spoken(this);
  }
}
