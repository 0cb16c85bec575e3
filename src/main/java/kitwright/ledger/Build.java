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
import kitwright.yaml.Fields;

/**
 * The build itself.
 *
 * @param what what is built, in a line
 * @param currency what bare amounts are in, and what everything is summed in
 * @param launch the day the boat shall be in the water
 * @param contingency money kept back for what nobody foresaw
 * @param ownHour what the builder's own hour is worth when ways out are compared
 * @param week working days and hours a day
 * @param off days without work
 * @param contract the number of the contract with the supplier
 * @param horizon how far ahead missing things are looked for
 * @param units what the tape is marked in; bench plans tell inches beside millimetres for imperial
 */
public record Build(
    String name,
    Optional<String> what,
    Currency currency,
    LocalDate started,
    Optional<LocalDate> launch,
    Optional<Money> contingency,
    Optional<Money> ownHour,
    Week week,
    List<Days> off,
    Optional<String> contract,
    Quantity horizon,
    Units units,
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

    static Week read(Fields f) {
      List<Day> days = f.choices("days", Day.class);
      BigDecimal hours = f.maybe("hours", Week::hours).orElse(BigDecimal.valueOf(8));
      if (f.isSound() && f.has("days") && days.isEmpty()) {
        f.fault(
            "value-unreadable",
            f.placeOf("days"),
            "The week has no working day.",
            "Name at least one, such as [sat].");
      }
      return new Week(
          days.isEmpty() ? USUAL.days : days.stream().distinct().sorted().toList(), hours);
    }

    private static BigDecimal hours(String text) throws Misread {
      BigDecimal hours = Decimal.parse(text.replaceFirst("\\s*h$", ""));
      if (hours.signum() <= 0 || hours.compareTo(BigDecimal.valueOf(24)) > 0) {
        throw new Misread("a working day has more than 0 and at most 24 hours", "write hours: 8");
      }
      return hours;
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

  static Build read(Fields f) {
    Currency currency = f.need("currency", Money::currency, f.currency());
    f.nowIn(currency);
    return new Build(
        f.text("name"),
        f.maybeText("what"),
        currency,
        f.day("started"),
        f.maybeDay("launch"),
        f.maybeMoney("contingency"),
        f.maybeMoney("own-hour"),
        f.maybeGroup("week", Week::read).orElse(Week.USUAL),
        f.list("off", Days::parse),
        f.maybeText("contract"),
        f.maybeMeasure("horizon", Unit.DAY, Dimension.TIME).orElse(Quantity.of("6", Unit.WEEK)),
        f.maybeChoice("units", Units.class).orElse(Units.METRIC),
        At.of(f));
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
