package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * A day of the log.
 *
 * @param hours worked, by party
 * @param tasks progress reached by the end of the day, by task, 0 to 1
 * @param used what was used up
 * @param audience who may read it
 * @param body the Markdown below the front matter
 */
public record LogDay(
    LocalDate day,
    Map<Ref, BigDecimal> hours,
    Map<Ref, BigDecimal> tasks,
    List<Used> used,
    List<Evidence> photos,
    Audience audience,
    String body,
    At at)
    implements Entry {
  /** Who may read a day or a photo. */
  public enum Audience {
    PUBLIC,
    CREW
  }

  /** Something used up, and for which task. */
  public record Used(
      Optional<Ref> item,
      Optional<Ref> stock,
      Optional<Ref> material,
      Quantity qty,
      Optional<Ref> task,
      At at) {
    static Used read(Fields f) {
      return new Used(
          f.maybeRef("item"),
          f.maybeRef("stock"),
          f.maybeRef("material"),
          f.quantity("qty", Unit.EACH),
          f.maybeRef("task"),
          At.of(f));
    }
  }

  static LogDay read(Fields f, String body) {
    return new LogDay(
        f.day("day"),
        f.map("hours", LogDay::hours),
        f.map("tasks", LogDay::progress),
        f.each("used", Used::read),
        Evidence.list(f, "photos"),
        f.maybeChoice("audience", Audience.class).orElse(Audience.PUBLIC),
        body,
        At.of(f));
  }

  private static BigDecimal hours(String text) throws Misread {
    Quantity hours = Quantity.parse(text, Unit.HOUR, Dimension.TIME).in(Unit.HOUR);
    if (hours.amount().compareTo(BigDecimal.valueOf(24)) > 0) {
      throw new Misread(text + " hours in one day", "a day has 24 hours; write what was worked");
    }
    return hours.amount();
  }

  private static BigDecimal progress(String text) throws Misread {
    Quantity share = Quantity.parse(text, Unit.ONE, Dimension.RATIO);
    return share.amount().multiply(share.unit().factor());
  }

  @Override
  public String id() {
    return day.toString();
  }

  @Override
  public Kind kind() {
    return Kind.LOG;
  }
}
