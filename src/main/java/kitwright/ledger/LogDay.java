package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * A day of the log.
 *
 * @param hours worked, by party
 * @param tasks progress reached by the end of the day, by task, 0 to 1
 * @param used what was used up
 * @param audience who may read the text and whatever stands without a word of its own; the crew
 *     alone where nothing is said
 * @param allow words in what is public that look private and may stand
 * @param body the Markdown below the front matter
 */
public record LogDay(
    LocalDate day,
    Map<Ref, BigDecimal> hours,
    Map<Ref, BigDecimal> tasks,
    List<Used> used,
    List<Evidence> photos,
    Audience audience,
    List<String> allow,
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
    static Used read(Keys k) {
      return new Used(
          k.key("item", "an item of the kit", "plank").unknown(Stock.TAKEN).maybeRef(Kind.KIT),
          k.key("stock", "stock", "oak-plank").unknown(Stock.TAKEN).maybeRef(Kind.STOCK),
          k.key("material", "a material, wherever it came from", "epoxy-slow")
              .unknown(Stock.TAKEN)
              .maybeRef(Kind.MATERIALS),
          k.key("qty", "how much was used up", "4 each").quantity(),
          k.key("task", "what for", "lay-sole").maybeRef(Kind.TASKS),
          k.at());
    }
  }

  static LogDay read(Keys k, String body) {
    return new LogDay(
        k.key("day", "the day it tells of", "2026-02-18").begins("TODAY").happened(),
        k.key("hours", "hours worked, by party", "{me: 5.5}").begins("{}").by(HOURS, Kind.PARTIES),
        k.key("tasks", "how far each task had come by the evening", "{lay-sole: 40 %}")
            .begins("{}")
            .by(Sorts.RATIO, Kind.TASKS),
        k.key("used", "what was used up", "[{item: plank, qty: 4 each, task: lay-sole}]")
            .each(Used::read),
        k.key(
                "photos",
                "pictures of the day",
                "[{file: evidence/sole.jpg, says: the first boards, audience: public}]")
            .each("file", Evidence::read),
        k.key(
                "audience",
                "public lets whoever follows the build read the text of the day; a line “audience:"
                    + " crew” or “audience: public” in it turns from there on",
                "public")
            .maybeChoice(Audience.class)
            .orElse(Audience.CREW),
        k.key("allow", "words in what is public that look private and may stand", "[Pell]").texts(),
        body,
        k.at());
  }

  /** A line that turns who may read; however it is written, it never lets the crew’s words out. */
  private static final Pattern TURNS = Pattern.compile("(?i)[\\s>*_#`-]*audience\\s*[:=].*");

  private static final Pattern OPENS = Pattern.compile("\\s*audience: public\\s*");
  private static final Sort<BigDecimal> HOURS =
      Sort.in(Unit.HOUR, "hours of a day", "^\\s*[0-9].*$", LogDay::hours);

  private static BigDecimal hours(String text, Keys keys) throws Misread {
    Quantity hours = Quantity.parse(text, Unit.HOUR, Dimension.TIME).in(Unit.HOUR);
    if (hours.amount().compareTo(BigDecimal.valueOf(24)) > 0) {
      throw new Misread(text + " hours in one day", "a day has 24 hours; write what was worked");
    }
    return hours.amount();
  }

  @Override
  public String id() {
    return day.toString();
  }

  @Override
  public Kind kind() {
    return Kind.LOG;
  }

  /** The lines of the body that an audience may read; all of them for the crew. */
  public String bodyFor(Audience reader) {
    StringBuilder out = new StringBuilder();
    Audience part = audience;
    for (String line : body.lines().toList()) {
      if (TURNS.matcher(line).matches()) {
        part = OPENS.matcher(line).matches() ? Audience.PUBLIC : Audience.CREW;
        out.append('\n');
      } else {
        out.append(reader == Audience.CREW || part == Audience.PUBLIC ? line : "").append('\n');
      }
    }
    return out.toString();
  }
}
