package kitwright.ledger;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kitwright.value.Days;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * The build itself.
 *
 * @param what what is built, in a line
 * @param invented whether the whole build is made up, for a demonstration: only there may an
 *     assessment lean on invented values
 * @param currency what bare amounts are in, and what everything is summed in
 * @param launch the day the boat shall be in the water
 * @param contingency money kept back for what nobody foresaw
 * @param ownHour what the builder's own hour is worth when ways out are compared
 * @param week working days and hours a day
 * @param off days without work
 * @param climate how many days of each month are fit for outdoor work, where somebody knows
 * @param contract the number of the contract with the supplier
 * @param horizon how far ahead missing things are looked for
 * @param allow words in its name that look private and may be read by the public
 * @param units what the tape is marked in; bench plans tell inches beside millimetres for imperial
 */
public record Build(
    String name,
    Optional<String> what,
    boolean invented,
    Currency currency,
    LocalDate started,
    Optional<LocalDate> launch,
    Optional<Money> contingency,
    Optional<Money> ownHour,
    Week week,
    List<Off> off,
    List<Climate> climate,
    Optional<String> contract,
    Quantity horizon,
    Units units,
    List<String> allow,
    At at)
    implements Entry {

  /**
   * The working week.
   *
   * @param days in the order of the week
   * @param hours worked on each
   */
  public record Week(List<Day> days, BigDecimal hours) {
    /** Monday to Friday, eight hours: what holds where nothing is said. */
    public static final Week USUAL =
        new Week(List.of(Day.MON, Day.TUE, Day.WED, Day.THU, Day.FRI), BigDecimal.valueOf(8));

    private static final Sort<BigDecimal> HOURS =
        Sort.in(Unit.HOUR, "hours", "^" + Sort.NUMBER + "\\s*h?$", Week::hours);

    static Week read(Keys k) {
      List<Day> days =
          k.key("days", "the days on which you work", "[mon, tue, sat]").choices(Day.class);
      BigDecimal hours =
          k.key("hours", "the hours of a working day", "6")
              .maybe(HOURS)
              .orElse(BigDecimal.valueOf(8));
      if (k.isSound() && k.at().has("days") && days.isEmpty()) {
        k.fault(
            "value-unreadable",
            k.placeOf("days"),
            "The week has no working day.",
            "Name at least one, such as [sat].");
      }
      return new Week(
          days.isEmpty() ? USUAL.days : days.stream().distinct().sorted().toList(), hours);
    }

    /** Hours of a working day: a number, with or without its unit. */
    private static BigDecimal hours(String text, Keys keys) throws Misread {
      BigDecimal hours = Decimal.parse(text.replaceFirst("\\s*h$", ""));
      if (hours.signum() <= 0 || hours.compareTo(BigDecimal.valueOf(24)) > 0) {
        throw new Misread("a working day has more than 0 and at most 24 hours", "write hours: 8");
      }
      return hours;
    }
  }

  /**
   * Days without work. Written as the days alone, they bear no name.
   *
   * @param name what they are: a feast, a holiday
   */
  public record Off(Days days, Optional<String> name, At at) {
    static Off read(Keys k) {
      return new Off(
          k.key("days", "the days, the first and the last", "2026-04-03..2026-04-06")
              .need(Sorts.DAYS, new Days(LocalDate.MIN, LocalDate.MIN)),
          k.key("name", "what they are", "Easter").maybeText(),
          k.at());
    }
  }

  /**
   * How many days of a month are fit for outdoor work, for the time beyond the forecast.
   *
   * @param fit share of the days, 0 to 1
   * @param source who says so
   */
  public record Climate(Month month, BigDecimal fit, String source, At at) {
    static Climate read(Keys k) {
      Month month = k.key("month", "the month", "apr").choice(Month.class, Month.JAN);
      BigDecimal fit =
          k.key("fit", "the share of its days that are fit for outdoor work", "55 %")
              .need(Sorts.SHARE, BigDecimal.ONE);
      if (k.isSound() && fit.compareTo(BigDecimal.ONE) > 0) {
        k.fault(
            "value-unreadable",
            k.placeOf("fit"),
            "More than all days of a month cannot be fit.",
            "Write a share up to 100 %, such as 55 %.");
      }
      return new Climate(
          month,
          fit.min(BigDecimal.ONE),
          k.key("source", "who says so", "the harbour’s table of ten years").text(),
          k.at());
    }
  }

  /** A month, as a ledger writes it. */
  public enum Month {
    JAN(java.time.Month.JANUARY),
    FEB(java.time.Month.FEBRUARY),
    MAR(java.time.Month.MARCH),
    APR(java.time.Month.APRIL),
    MAY(java.time.Month.MAY),
    JUN(java.time.Month.JUNE),
    JUL(java.time.Month.JULY),
    AUG(java.time.Month.AUGUST),
    SEP(java.time.Month.SEPTEMBER),
    OCT(java.time.Month.OCTOBER),
    NOV(java.time.Month.NOVEMBER),
    DEC(java.time.Month.DECEMBER);

    private final java.time.Month ofYear;

    Month(java.time.Month ofYear) {
      this.ofYear = ofYear;
    }

    public java.time.Month ofYear() {
      return ofYear;
    }
  }

  /** What the builder's tape is marked in; every record may be written in either. */
  public enum Units {
    METRIC,
    IMPERIAL
  }

  /** A day of the week, as a ledger writes it. */
  public enum Day {
    MON(DayOfWeek.MONDAY),
    TUE(DayOfWeek.TUESDAY),
    WED(DayOfWeek.WEDNESDAY),
    THU(DayOfWeek.THURSDAY),
    FRI(DayOfWeek.FRIDAY),
    SAT(DayOfWeek.SATURDAY),
    SUN(DayOfWeek.SUNDAY);

    private final DayOfWeek dayOfWeek;

    Day(DayOfWeek dayOfWeek) {
      this.dayOfWeek = dayOfWeek;
    }

    public DayOfWeek dayOfWeek() {
      return dayOfWeek;
    }
  }

  static Build read(Keys k) {
    String name =
        k.key("name", "the name of the boat, or of the build", "My boat").begins("NAME").text();
    Optional<String> what =
        k.key("what", "what you build, in a line", "a trailer yawl of 7.2 m").maybeText();
    boolean invented =
        k.key("invented", "whether the whole build is made up, for a demonstration", "yes").flag();
    Currency currency =
        k.key("currency", "what bare amounts are in, and what everything is summed in", "EUR")
            .begins("EUR")
            .need(Sorts.CURRENCY, k.currency());
    k.nowIn(currency);
    return new Build(
        name,
        what,
        invented,
        currency,
        k.key("started", "the day the build began", "2026-02-02").begins("TODAY").happened(),
        k.key("launch", "the day she shall be in the water", "2026-09-26")
            .notBefore("started")
            .maybePlanned(),
        k.key("contingency", "money kept back for what nobody foresaw", "500").maybeMoney(),
        k.key("own-hour", "what an hour of yours is worth when ways out are compared", "15")
            .maybeMoney(),
        k.key("week", "when you work; Monday to Friday, eight hours, where nothing is said")
            .maybeGroup(Week::read)
            .orElse(Week.USUAL),
        k.key(
                "off",
                "days without work, each with a name where you give one",
                "[2026-04-03..2026-04-06]")
            .each("days", Off::read),
        k.key(
                "climate",
                "how many days of each month are fit for outdoor work, for end dates beyond the"
                    + " forecast")
            .each(Climate::read),
        k.key(
                "contract",
                "the number of the contract with the supplier, which stands in every claim",
                "C-0000")
            .maybeText(),
        k.key(
                "horizon",
                "how far ahead missing things are looked for; six weeks where nothing is said",
                "6 w")
            .between("1 d", "156 w")
            .maybeMeasure(Unit.DAY, Dimension.TIME)
            .orElse(Quantity.of("6", Unit.WEEK)),
        k.key(
                "units",
                "what your tape is marked in; with imperial, bench plans tell inches beside"
                    + " millimetres",
                "imperial")
            .maybeChoice(Units.class)
            .orElse(Units.METRIC),
        k.key("allow", "words in its name that look private and may be public", "[Pell]").texts(),
        k.at());
  }

  @Override
  public String id() {
    return name;
  }

  @Override
  public Kind kind() {
    return Kind.BUILD;
  }
}
