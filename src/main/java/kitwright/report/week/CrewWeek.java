package kitwright.report.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.daybook.Ahead;
import kitwright.daybook.Happenings;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Inline;
import kitwright.document.Slots;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.LogDay;
import kitwright.ledger.Shortage;
import kitwright.report.words.Names;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Word;

/** The week for those who build. */
public final class CrewWeek {
  private static final int HEADINGS_BELOW = 3;

  private final Week week;
  private final Facts now;
  private final WeekParts parts;
  private final Happenings happened;
  private final Names names;
  private final WeekDecisions decided;

  private final WeekPhotos photos;

  private CrewWeek(Week week, Facts now) {
    this.week = week;
    this.now = now;
    WeekLog log = WeekLog.of(week, now.ledger());
    this.parts = new WeekParts(week, log, Ahead.after(week, now, now.ledger().log()));
    this.photos = WeekPhotos.of(week, log, LogDay.Audience.CREW);
    this.happened = Happenings.in(week, now.ledger());
    this.names = new Names(now.ledger());
    this.decided = new WeekDecisions(happened, now, names);
  }

  /** The week of everybody who builds. */
  public static CrewWeek of(Week week, Facts now) {
    return new CrewWeek(week, now);
  }

  /** The photos that its days name or show. */
  public List<WeekPhoto> photos() {
    return photos.all();
  }

  /**
   * The document.
   *
   * @param shown the names of the photos that lie beside it; others are told by where they lie
   */
  public Sheet sheet(Set<String> shown) {
    WeekMoney money = new WeekMoney(happened.money(), now);
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("span", WeekParts.span(week))
            .sentence("week", week.toString())
            .value("summary", WeekParts.worked(summary(money), parts.log()))
            .value("phases", parts.hoursByPhase())
            .value("people", people())
            .table("progress", parts.progress())
            .value("used", parts.used())
            .block("days", days(shown).toArray(Block[]::new))
            .block("arrived", bullets(happened.arrived().stream().map(this::arrived).toList()))
            .block("missing", bullets(happened.found().stream().map(this::found).toList()))
            .block("decided", bullets(decided.all()))
            .block("claims", bullets(decided.claims()))
            .value("money-now", money.told())
            .value("money-in-all", money.toldInAll())
            .block("spends", money.table().toArray(Block[]::new))
            .block("waits", Waits.table(now).toArray(Block[]::new))
            .block("tools", bullets(tools()))
            .block("photos", photos(shown).toArray(Block[]::new))
            .block("next", bullets(next()));
    return new Sheet("week-" + week + ".md", "week", slots);
  }

  private static Block[] bullets(List<Inline> items) {
    return items.isEmpty() ? new Block[0] : new Block[] {Block.bullets(items)};
  }

  private String summary(WeekMoney money) {
    WeekLog log = parts.log();
    String work =
        log.days().isEmpty()
            ? "No day of this week is written up."
            : Say.hoursWord(log.hours().total())
                + " of work on "
                + Say.days(log.days().size())
                + ".";
    return Say.sentences(
        List.of(
            work,
            log.finished().isEmpty() ? "" : "Finished: " + parts.finished() + ".",
            events(),
            money.thisWeek()));
  }

  private String events() {
    List<String> parts = new ArrayList<>();
    if (!happened.arrived().isEmpty()) {
      parts.add(Say.count(happened.arrived().size(), "delivery came", "deliveries came"));
    }
    if (!happened.found().isEmpty()) {
      parts.add(Say.count(happened.found().size(), "thing was", "things were") + " found missing");
    }
    if (!happened.signed().isEmpty()) {
      parts.add(Say.count(happened.signed().size(), "signature", "signatures") + " came in");
    }
    return parts.isEmpty() ? "" : Word.capital(Say.list(parts)) + ".";
  }

  private Cell people() {
    return WeekParts.hours(parts.log().hours().byPerson(), names::of);
  }

  private List<Block> days(Set<String> shown) {
    List<Block> blocks = new ArrayList<>();
    for (LogDay day : parts.log().days()) {
      if (!day.bodyFor(LogDay.Audience.CREW).isBlank()) {
        blocks.add(Block.heading(3, Say.weekday(day.day()) + " " + Say.dayAndMonth(day.day())));
        blocks.add(
            Block.prose(day.bodyFor(LogDay.Audience.CREW), HEADINGS_BELOW, photos.in(day, shown)));
      }
    }
    return blocks;
  }

  private Inline arrived(Delivery delivery) {
    String note = delivery.note().map(number -> ", note " + number).orElse("");
    String counted =
        delivery.counted().isEmpty()
            ? "not counted yet"
            : Say.count(delivery.counted().size(), "line", "lines") + " counted";
    return Inline.text(
        Say.weekday(delivery.received().orElse(week.last()))
            + ", from "
            + names.of(delivery.from())
            + note
            + ": "
            + counted
            + ".");
  }

  private Inline found(Shortage shortage) {
    return Inline.together(
        Inline.text(
            Say.so(shortage.qty(), decided.what(shortage))
                + ", "
                + Word.spoken(shortage.cause())
                + " "),
        Inline.code(shortage.id()));
  }

  private List<Inline> tools() {
    Stream<String> came =
        happened.borrowed().stream()
            .map(loan -> "Came: " + loan.tool() + ", from " + names.of(loan.from()) + ".");
    Stream<String> went =
        happened.returned().stream()
            .map(loan -> "Went back: " + loan.tool() + ", to " + names.of(loan.from()) + ".");
    Stream<String> due =
        parts.ahead().tools().stream()
            .filter(loan -> loan.due().filter(parts::isSoon).isPresent())
            .map(this::due);
    return Stream.of(came, went, due).flatMap(all -> all).map(Inline::text).toList();
  }

  private String due(Loan loan) {
    LocalDate evening = Ahead.evening(week, now).day();
    boolean late = loan.due().filter(day -> day.isBefore(evening)).isPresent();
    return (late ? "Overdue since " : "Due on ")
        + loan.due().map(Say::day).orElse("")
        + ": "
        + loan.tool()
        + ", to "
        + names.of(loan.from())
        + ".";
  }

  /** Those that the text shows in their place are not shown twice. */
  private List<Block> photos(Set<String> shown) {
    Set<String> inText = new HashSet<>();
    parts.log().days().forEach(day -> inText.addAll(photos.in(day, shown).values()));
    List<Block> blocks = new ArrayList<>();
    List<Inline> paths = new ArrayList<>();
    for (WeekPhoto photo : photos.all()) {
      if (shown.contains(photo.name()) && !inText.contains(photo.name())) {
        blocks.add(WeekPhotos.told(photo, blocks.size() + 1));
      } else if (!shown.contains(photo.name()) && photo.picture().isPresent()) {
        paths.add(
            Inline.together(
                Inline.code(photo.picture().get().file()),
                Inline.text(photo.says().map(text -> ", " + text).orElse(""))));
      }
    }
    if (!paths.isEmpty()) {
      blocks.add(Block.bullets(paths));
    }
    return blocks;
  }

  private List<Inline> next() {
    List<Inline> all = new ArrayList<>(parts.nextWork());
    parts.clashes(now).map(Inline::text).forEach(all::add);
    parts
        .works("Under way, but not released, so to be stopped", parts.ahead().breached())
        .ifPresent(all::add);
    parts
        .works("Held until what it closes up may be built", parts.ahead().held())
        .ifPresent(all::add);
    Stream<Optional<String>> deliveries =
        parts.ahead().deliveries().stream()
            .map(
                each ->
                    each.expected()
                        .filter(parts::isSoon)
                        .map(day -> "Expected on " + Say.day(day) + ": " + delivery(each) + "."));
    Stream<Optional<String>> orders =
        parts.ahead().orders().stream()
            .map(
                each ->
                    each.expected()
                        .filter(parts::isSoon)
                        .map(day -> "Expected on " + Say.day(day) + ": " + each.what() + "."));
    Stream.concat(deliveries, orders).flatMap(Optional::stream).map(Inline::text).forEach(all::add);
    return all;
  }

  private String delivery(Delivery delivery) {
    return "delivery from "
        + names.of(delivery.from())
        + delivery.note().map(number -> ", note " + number).orElse("");
  }
}
