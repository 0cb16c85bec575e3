package kitwright.report.week;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.daybook.Ahead;
import kitwright.daybook.Happenings;
import kitwright.daybook.Hours;
import kitwright.daybook.Progress;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Destination;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.finding.Finding;
import kitwright.kit.Count;
import kitwright.kit.Positions;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.LogDay;
import kitwright.ledger.LogDay.Audience;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.ledger.Task;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The week for whoever follows the build. It is made of what its authors let the public read, and
 * of figures: hours by phase, progress, things missing by the kit's names. Nothing is cut out of a
 * sentence; {@link #suspicions} shows the author what looks private before it goes out.
 */
public final class PublicWeek {
  private static final int HEADINGS_BELOW = 3;

  private final Week week;
  private final Facts now;
  private final WeekLog log;
  private final Ahead ahead;
  private final Happenings happened;
  private final Spoken spoken = new Spoken();
  private final List<PublicPhoto> photos = new ArrayList<>();
  private final Sheet sheet;

  private PublicWeek(Week week, Facts now) {
    this.week = week;
    this.now = now;
    this.log = WeekLog.of(week, now.ledger());
    this.ahead = Ahead.after(week, now, now.ledger().log());
    this.happened = Happenings.in(week, now.ledger());
    log.photos().stream()
        .filter(photo -> photo.picture().isPublic())
        .forEach(
            photo ->
                photos.add(
                    new PublicPhoto(
                        photo.picture(), "week-" + week + "-" + (photos.size() + 1) + ".jpg")));
    this.sheet = make();
  }

  /** The week as it may go out, once what looks private in it was looked at. */
  public static PublicWeek of(Week week, Facts now) {
    return new PublicWeek(week, now);
  }

  /** The document; its photos are written beside it under names of their own. */
  public Sheet sheet() {
    return sheet;
  }

  /** The photos that go out. */
  public List<PublicPhoto> photos() {
    return List.copyOf(photos);
  }

  /** What in the words that go out looks private and nobody has allowed there. */
  public List<Finding> suspicions(Function<String, List<String>> lines) {
    return spoken.read(now.ledger(), lines);
  }

  /**
   * Days of the week with a text that nobody let the public read, told so that old ledgers know.
   */
  public long unsaid() {
    return log.days().stream()
        .filter(day -> !day.body().isBlank() && !day.at().has("audience"))
        .filter(day -> day.bodyFor(Audience.PUBLIC).isBlank())
        .count();
  }

  private Sheet make() {
    Place build = now.ledger().build().at().record();
    List<String> allow = now.ledger().build().allow();
    Slots slots =
        Slots.none()
            .sentence("build", spoken.say(now.ledger().build().name(), build, allow))
            .sentence(
                "what",
                now.ledger()
                    .build()
                    .what()
                    .map(what -> Say.capital(spoken.say(what, build, allow)))
                    .orElse(""))
            .sentence("span", WeekReport.span(week))
            .sentence("week", week.toString())
            .sentence("summary", summary())
            .sentence("hours", hours())
            .table("progress", progress())
            .sentence("progress-untold", untold())
            .sentence("used", used())
            .block("days", days().toArray(Block[]::new))
            .list("arrived", happened.arrived().stream().map(this::arrived).toList())
            .list("missing", happened.found().stream().map(this::found).toList())
            .list("decided", decided())
            .block("photos", pictures().toArray(Block[]::new))
            .list("next", next());
    return new Sheet("week-" + week + "-public.md", "week-public", slots);
  }

  private String summary() {
    int people = log.hours().byPerson().size();
    return Say.sentences(
        List.of(
            log.days().isEmpty()
                ? "No day of this week is written up."
                : Say.hoursWord(log.hours().total())
                    + " of work on "
                    + Say.days(log.days().size())
                    + (people > 1 ? " by " + people + " people" : "")
                    + ".",
            log.finished().isEmpty()
                ? ""
                : Say.count(log.finished().size(), "piece of work was", "pieces of work were")
                    + " finished.",
            happened.arrived().isEmpty()
                ? ""
                : Say.count(happened.arrived().size(), "delivery", "deliveries") + " came.",
            missing()));
  }

  private String missing() {
    int open = kitwright.shortage.Standings.on(now).open().size();
    return open == 0
        ? ""
        : Say.count(open, "thing is", "things are") + " still missing from the kit.";
  }

  private String hours() {
    List<String> parts = new ArrayList<>();
    log.hours()
        .byPhase()
        .forEach((phase, hours) -> parts.add(phase(phase) + " " + Say.hours(hours)));
    return Say.list(parts);
  }

  private String phase(String phase) {
    return phase.equals(Hours.ELSEWHERE)
        ? phase
        : now.ledger().tasks().stream()
            .filter(task -> task.phase().filter(phase::equals).isPresent())
            .findFirst()
            .map(task -> spoken.say(phase, task.at().of("phase"), task.allow()))
            .orElse(Hours.ELSEWHERE);
  }

  private Optional<String> title(Task task) {
    return task.publicly().map(title -> spoken.say(title, task.at().of("public"), task.allow()));
  }

  private Table progress() {
    List<Row> rows = new ArrayList<>();
    for (Progress each : log.progress()) {
      title(each.task())
          .ifPresent(
              title ->
                  rows.add(
                      Row.row(
                          Cell.text(title),
                          WeekParts.share(each.before()),
                          WeekParts.share(each.after()),
                          Cell.text(
                              each.finished() ? "finished" : each.begun() ? "started" : ""))));
    }
    return new Table(
        "What was done",
        Column.columns(
            Column.head("Work"),
            Column.right("Before"),
            Column.right("Now"),
            Column.left("").named("status")),
        rows);
  }

  /** How much of the work that moved has no title for the public. */
  private String untold() {
    long untold = log.progress().stream().filter(each -> each.task().publicly().isEmpty()).count();
    return untold == 0
        ? ""
        : Say.count(
            untold,
            untold == log.progress().size() ? "piece of work" : "more piece of work",
            untold == log.progress().size() ? "pieces of work" : "more pieces of work");
  }

  /** What of the kit was used: by the kit's names, not by the builder's own for what lay about. */
  private String used() {
    Map<String, Quantity> sums = new LinkedHashMap<>();
    for (LogDay day : log.days()) {
      for (LogDay.Used used : day.used()) {
        used.item()
            .ifPresent(
                item ->
                    sums.merge(
                        kit(item),
                        used.qty(),
                        (one, more) -> one.convertsTo(more) ? one.plus(more) : one));
      }
    }
    List<String> parts = new ArrayList<>();
    sums.forEach((what, qty) -> parts.add(Say.so(qty, what)));
    return Say.list(parts);
  }

  private String kit(Ref item) {
    Optional<KitItem> found = now.ledger().kitItem(item);
    return found
        .map(each -> spoken.say(each.what(), each.at().of("what"), each.allow()))
        .orElse("something");
  }

  private List<Block> days() {
    List<Block> blocks = new ArrayList<>();
    for (LogDay day : log.days()) {
      String body = day.bodyFor(Audience.PUBLIC);
      if (!body.isBlank()) {
        spoken.say(body, day.at().record(), day.allow());
        blocks.add(Block.heading(3, Say.weekday(day.day()) + " " + Say.dayAndMonth(day.day())));
        blocks.add(Block.prose(body, HEADINGS_BELOW));
      }
    }
    return blocks;
  }

  private Inline arrived(Delivery delivery) {
    long counted = delivery.counted().stream().map(line -> line.item().id()).distinct().count();
    long bad =
        Positions.on(now).all().stream()
            .flatMap(position -> position.counts().stream())
            .filter(count -> count.delivery().equals(delivery))
            .filter(count -> !count.noGood().isNone())
            .map(Count::at)
            .distinct()
            .count();
    return Inline.text(
        counted == 0
            ? "A delivery, not counted yet."
            : "A delivery of "
                + Say.count(counted, "kind of part", "kinds of part")
                + (bad == 0 ? ", all good." : ", " + bad + " of them not all good."));
  }

  private Inline found(Shortage shortage) {
    return Inline.text(
        Say.capital(
            Say.so(shortage.qty(), kit(shortage.item()))
                + ": "
                + Say.word(shortage.cause())
                + "."));
  }

  private List<Inline> decided() {
    List<Inline> all = new ArrayList<>();
    happened.decided().stream()
        .map(
            each ->
                "For the missing “"
                    + kit(each.item())
                    + "”, a way out is chosen: "
                    + way(each)
                    + ".")
        .map(Inline::text)
        .forEach(all::add);
    happened.signed().stream()
        .filter(each -> kitwright.substitution.Standings.on(now).counts(each.signOff()))
        .map(each -> "A change was signed by " + role(each.signOff().by()) + ".")
        .map(Inline::text)
        .forEach(all::add);
    return all;
  }

  private static String way(Shortage shortage) {
    return shortage
        .decided()
        .flatMap(
            decided ->
                shortage.options().stream()
                    .filter(option -> option.name().equals(decided.option()))
                    .findFirst())
        .map(option -> Say.word(option.way()))
        .orElse("one of those at hand");
  }

  private String role(Ref by) {
    return now.ledger()
        .party(by)
        .map(Party::role)
        .map(role -> "the " + Say.word(role))
        .orElse("somebody");
  }

  private List<Block> pictures() {
    List<Block> blocks = new ArrayList<>();
    for (PublicPhoto photo : photos) {
      List<Inline> parts = new ArrayList<>();
      parts.add(Inline.picture(Destination.file(photo.name()), "Photo " + (blocks.size() + 1)));
      photo
          .picture()
          .says()
          .map(words -> spoken.say(words, photo.picture().at().of("says"), photo.allow()))
          .ifPresent(words -> Collections.addAll(parts, Inline.newLine(), Inline.emphasis(words)));
      blocks.add(Block.paragraph(parts.toArray(Inline[]::new)));
    }
    return blocks;
  }

  private List<Inline> next() {
    List<Inline> all = new ArrayList<>();
    works("In progress", ahead.underWay(), all);
    works("May start", ahead.ready(), all);
    ahead.deliveries().stream()
        .flatMap(each -> each.expected().stream())
        .filter(day -> !day.isAfter(week.next().last()))
        .map(day -> Inline.text("A delivery is expected on " + Say.day(day) + "."))
        .forEach(all::add);
    return all;
  }

  private void works(String heading, List<Task> tasks, List<Inline> all) {
    List<String> titles =
        tasks.stream().flatMap(task -> title(task).stream()).map(t -> "“" + t + "”").toList();
    if (!titles.isEmpty()) {
      all.add(Inline.text(heading + ": " + Say.list(titles) + "."));
    }
  }
}
