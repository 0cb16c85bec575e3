package kitwright.value;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A unit that a ledger may use. Factors to the base unit of the dimension are exact where the
 * definition is exact (inch, foot, pound, ounce, gallon: NIST SP 811, 2008, Appendix B.8 and NIST
 * Handbook 44, Appendix C).
 */
public enum Unit {
  MM(Dimension.LENGTH, "0.001", "mm"),
  CM(Dimension.LENGTH, "0.01", "cm"),
  M(Dimension.LENGTH, "1", "m", "metre", "metres"),
  INCH(Dimension.LENGTH, "0.0254", "in", "inch", "inches", "\""),
  FOOT(Dimension.LENGTH, "0.3048", "ft", "foot", "feet", "'"),
  YARD(Dimension.LENGTH, "0.9144", "yd"),
  MM2(Dimension.AREA, "0.000001", "mm2", "mm²"),
  CM2(Dimension.AREA, "0.0001", "cm2", "cm²"),
  M2(Dimension.AREA, "1", "m2", "m²", "sqm"),
  IN2(Dimension.AREA, "0.00064516", "in2", "in²"),
  FT2(Dimension.AREA, "0.09290304", "ft2", "ft²", "sqft"),
  YD2(Dimension.AREA, "0.83612736", "yd2", "yd²"),
  ML(Dimension.VOLUME, "0.001", "ml", "mL"),
  L(Dimension.VOLUME, "1", "l", "L", "litre", "litres"),
  M3(Dimension.VOLUME, "1000", "m3", "m³"),
  US_GALLON(Dimension.VOLUME, "3.785411784", "gal-us"),
  UK_GALLON(Dimension.VOLUME, "4.54609", "gal-uk"),
  G(Dimension.MASS, "0.001", "g"),
  KG(Dimension.MASS, "1", "kg"),
  T(Dimension.MASS, "1000", "t"),
  OUNCE(Dimension.MASS, "0.028349523125", "oz"),
  POUND(Dimension.MASS, "0.45359237", "lb", "lbs"),
  MINUTE(Dimension.TIME, "60", "min"),
  HOUR(Dimension.TIME, "3600", "h", "hour", "hours"),
  DAY(Dimension.TIME, "86400", "d", "day", "days"),
  WEEK(Dimension.TIME, "604800", "w", "week", "weeks"),
  NEWTON(Dimension.FORCE, "1", "N"),
  DECANEWTON(Dimension.FORCE, "10", "daN"),
  KILONEWTON(Dimension.FORCE, "1000", "kN"),
  POUND_FORCE(Dimension.FORCE, "4.4482216152605", "lbf"),
  KILOGRAM_FORCE(Dimension.FORCE, "9.80665", "kgf", "kp"),
  PASCAL(Dimension.STRESS, "1", "Pa", "N/m2", "N/m²"),
  KILOPASCAL(Dimension.STRESS, "1000", "kPa", "kN/m2", "kN/m²"),
  MEGAPASCAL(Dimension.STRESS, "1000000", "MPa", "N/mm2", "N/mm²", "MN/m2", "MN/m²"),
  GIGAPASCAL(Dimension.STRESS, "1000000000", "GPa", "kN/mm2", "kN/mm²", "GN/m2", "GN/m²"),
  PSI(Dimension.STRESS, "6894.757293168361", "psi", "lb/in2", "lb/in²", "lbf/in2", "lbf/in²"),
  BAR(Dimension.STRESS, "100000", "bar"),
  KGF_PER_CM2(Dimension.STRESS, "98066.5", "kgf/cm2", "kgf/cm²", "kp/cm2", "kp/cm²"),
  KGF_PER_MM2(Dimension.STRESS, "9806650", "kgf/mm2", "kgf/mm²", "kp/mm2", "kp/mm²"),
  DAN_PER_CM2(Dimension.STRESS, "100000", "daN/cm2", "daN/cm²"),
  DAN_PER_MM2(Dimension.STRESS, "10000000", "daN/mm2", "daN/mm²"),
  PSF(Dimension.STRESS, "47.88025898033584", "psf", "lbf/ft2", "lbf/ft²"),
  KSI(Dimension.STRESS, "6894757.293168361", "ksi"),
  NEWTON_METRE(Dimension.MOMENT, "1", "Nm", "N·m"),
  DECANEWTON_METRE(Dimension.MOMENT, "10", "daNm", "daN·m"),
  KILONEWTON_METRE(Dimension.MOMENT, "1000", "kNm", "kN·m"),
  KILOGRAM_FORCE_METRE(Dimension.MOMENT, "9.80665", "kgf·m", "kgfm", "kpm", "kp·m"),
  POUND_FORCE_FOOT(
      Dimension.MOMENT, "1.3558179483314004", "lbf·ft", "lbf*ft", "lb-ft", "ft-lb", "ft-lbf"),
  POUND_FORCE_INCH(
      Dimension.MOMENT, "0.1129848290276167", "lbf·in", "lbf*in", "lb-in", "in-lb", "in-lbf"),
  KG_PER_M3(Dimension.DENSITY, "1", "kg/m3", "kg/m³"),
  G_PER_CM3(Dimension.DENSITY, "1000", "g/cm3", "g/cm³"),
  LB_PER_FT3(Dimension.DENSITY, "16.01846337396014", "lb/ft3", "lb/ft³"),
  G_PER_M2(Dimension.AREAL_MASS, "0.001", "g/m2", "g/m²", "gsm"),
  KG_PER_M2(Dimension.AREAL_MASS, "1", "kg/m2", "kg/m²"),
  OZ_PER_YD2(Dimension.AREAL_MASS, "0.033905747", "oz/yd2", "oz/yd²"),
  KG_PER_M(Dimension.LINEAR_MASS, "1", "kg/m"),
  N_PER_M(Dimension.LINEAR_LOAD, "1", "N/m"),
  KN_PER_M(Dimension.LINEAR_LOAD, "1000", "kN/m"),
  METRE_PER_SECOND(Dimension.SPEED, "1", "m/s"),
  KNOT(Dimension.SPEED, "0.5144444444444445", "kn", "knots"),
  CELSIUS(Dimension.TEMPERATURE, "1", "C", "°C"),
  KELVIN_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, "1", "K"),
  DEGREE(Dimension.ANGLE, "1", "deg", "°"),
  ONE(Dimension.RATIO, "1", ""),
  PERCENT(Dimension.RATIO, "0.01", "%"),
  EACH(Dimension.COUNT, "1", "each", "pc", "pcs", "piece", "pieces"),
  PAIR(Dimension.PACKAGE, "1", "pair", "pairs"),
  SHEET(Dimension.PACKAGE, "1", "sheet", "sheets"),
  ROLL(Dimension.PACKAGE, "1", "roll", "rolls"),
  SET(Dimension.PACKAGE, "1", "set", "sets"),
  BOX(Dimension.PACKAGE, "1", "box", "boxes"),
  PACK(Dimension.PACKAGE, "1", "pack", "packs"),
  BAG(Dimension.PACKAGE, "1", "bag", "bags"),
  TIN(Dimension.PACKAGE, "1", "tin", "tins", "can", "cans"),
  TUBE(Dimension.PACKAGE, "1", "tube", "tubes"),
  BOTTLE(Dimension.PACKAGE, "1", "bottle", "bottles"),
  DRUM(Dimension.PACKAGE, "1", "drum", "drums"),
  BUNDLE(Dimension.PACKAGE, "1", "bundle", "bundles");

  /** A shorter symbol is no word, in which a slip could be told from another unit. */
  private static final int SHORTEST_WORD = 4;

  private static final Map<String, Unit> BY_SYMBOL = bySymbol();

  private final Dimension dimension;
  private final BigDecimal factor;
  private final List<String> symbols;

  Unit(Dimension dimension, String factor, String... symbols) {
    this.dimension = dimension;
    this.factor = new BigDecimal(factor);
    this.symbols = List.of(symbols);
  }

  private static Map<String, Unit> bySymbol() {
    Map<String, Unit> all = new LinkedHashMap<>();
    for (Unit unit : values()) {
      unit.symbols.forEach(symbol -> all.put(symbol, unit));
    }
    return Map.copyOf(all);
  }

  /** The unit written so; case matters, since {@code mm} and {@code MM} are not the same. */
  public static Optional<Unit> of(String symbol) {
    return Optional.ofNullable(BY_SYMBOL.get(symbol));
  }

  /**
   * Whether {@code word} is the unit of the number that {@code before} ends with, so that no line
   * ends between them (SI Brochure, 9th edition, 5.4.3). What follows a unit, as a comma, may stand
   * at its end.
   */
  public static boolean belongsTo(String before, String word) {
    if (before.isEmpty() || !Character.isDigit(before.charAt(before.length() - 1))) {
      return false;
    }
    int end = word.length();
    while (end > 0 && ".,;:!?)]”’".indexOf(word.charAt(end - 1)) >= 0) {
      end--;
    }
    return end > 0 && BY_SYMBOL.containsKey(word.substring(0, end));
  }

  /** All the units of a dimension, as a builder writes them: {@code mm, cm, m …}. */
  public static String symbolsOf(Dimension dimension) {
    return java.util.Arrays.stream(values())
        .filter(unit -> unit.dimension == dimension && !unit.symbol().isEmpty())
        .map(Unit::symbol)
        .reduce((a, b) -> a + ", " + b)
        .orElse("a bare number");
  }

  /**
   * The known symbol that a misspelt one was meant for: another case, another way of writing a
   * power, or a word with a slip in it. Short symbols and those with a stroke are not guessed
   * otherwise, since one letter makes a thousand of one: what is offered must not be another size.
   *
   * @param wanted the dimension that is asked for, in which a power left out is one that is meant
   */
  public static Optional<String> nearest(String symbol, Optional<Dimension> wanted) {
    List<String> known = BY_SYMBOL.keySet().stream().sorted().toList();
    List<String> sameLetters = known.stream().filter(symbol::equalsIgnoreCase).toList();
    if (!sameLetters.isEmpty()) {
      return sameLetters.size() == 1 ? Optional.of(sameLetters.get(0)) : Optional.empty();
    }
    String plain = plain(symbol);
    Optional<String> spelt =
        known.stream()
            .filter(each -> plain(each).equals(plain) || isPower(plain, each, wanted))
            .findFirst();
    return spelt.isPresent() || !isWord(symbol)
        ? spelt
        : Nearest.to(symbol, known.stream().filter(Unit::isWord).toList());
  }

  /** Without signs of power and product, as in {@code N/mm^2}, {@code kN.m} and {@code sq mm}. */
  private static String plain(String symbol) {
    return symbol
        .replaceAll("^sq\\.? ?(\\w+)$", "$12")
        .replaceAll("[\\^ ·*.]", "")
        .replace('²', '2')
        .replace('³', '3');
  }

  /** Whether it lacks nothing but a power: N/mm where a stress is asked is N/mm2. */
  private static boolean isPower(String plain, String known, Optional<Dimension> wanted) {
    return wanted.isPresent()
        && of(known).map(Unit::dimension).equals(wanted)
        && plain.indexOf('/') > 0
        && (known.equals(plain + "2") || known.equals(plain + "3"));
  }

  private static boolean isWord(String symbol) {
    return symbol.length() >= SHORTEST_WORD && symbol.chars().allMatch(Character::isLetter);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Whether it counts things, whatever they measure. */
  public boolean isOfPieces() {
    return dimension == Dimension.COUNT || dimension == Dimension.PACKAGE;
  }

  /** How many base units one of this is (m, m², l, kg, s, N, Pa, N·m, kg/m³, kg/m² …). */
  public BigDecimal factor() {
    return factor;
  }

  /** All the ways in which it may be written, the usual one first. */
  public List<String> symbols() {
    return symbols;
  }

  /** How it is written. */
  public String symbol() {
    return symbols.get(0);
  }

  /** How it is told: {@code m²} where a ledger may say {@code m2}. */
  public String told() {
    return symbol().replaceFirst("(?<=[a-z])2$", "²").replaceFirst("(?<=[a-z])3$", "³");
  }

  /** Whether amounts of the two can be added. */
  public boolean convertsTo(Unit other) {
    return this == other || (dimension == other.dimension && dimension != Dimension.PACKAGE);
  }
}
