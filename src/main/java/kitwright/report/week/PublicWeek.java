package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitwright.daybook.Ahead;
import kitwright.daybook.Happenings;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Slots;
import kitwright.finding.Finding;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.shortage.ShortageStandings;
import kitwright.value.Place;
import kitwright.value.Word;

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
  private final Happenings happened;
  private final Spoken spoken = new Spoken();
  private final WeekPhotos photos;
  private final Sheet sheet;

  private PublicWeek(Week week, Facts now) {
    this.week = week;
    this.now = now;
    this.log = WeekLog.of(week, now.ledger());
    this.happened = Happenings.in(week, now.ledger());
    this.photos = WeekPhotos.of(week, log, Audience.PUBLIC);
    this.sheet = make(new PublicNames(now.ledger(), spoken));
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
  public List<WeekPhoto> photos() {
    return photos.all();
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

  private Sheet make(PublicNames names) {
    PublicWork work = new PublicWork(log, names);
    PublicEvents events = new PublicEvents(now, happened, names);
    Ahead ahead = Ahead.after(week, now, now.ledger().log());
    Slots slots =
        called()
            .value("span", WeekParts.span(week))
            .sentence("week", week.toString())
            .value("summary", WeekParts.worked(summary(), log))
            .value("hours", work.hours())
            .table("progress", work.progress())
            .sentence("progress-untold", work.untold())
            .value("used", work.used())
            .block("days", days().toArray(Block[]::new))
            .list("arrived", events.arrived())
            .list("missing", events.missing())
            .list("decided", events.decided())
            .block("photos", pictures().toArray(Block[]::new))
            .list("next", new PublicNext(week, ahead, names).told());
    return new Sheet("week-" + week + "-public.md", "week-public", slots);
  }

  /** What is built. */
  private Slots called() {
    Build build = now.ledger().build();
    Place at = build.at().record();
    return Slots.none()
        .sentence("build", spoken.say(build.name(), at, build.allow()))
        .sentence(
            "what",
            build.what().map(what -> Word.capital(spoken.say(what, at, build.allow()))).orElse(""));
  }

  private String summary() {
    int people = log.hours().byPerson().size();
    int open = ShortageStandings.on(now).open().size();
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
            open == 0
                ? ""
                : Say.count(open, "thing is", "things are") + " still missing from the kit."));
  }

  private List<Block> days() {
    List<Block> blocks = new ArrayList<>();
    for (LogDay day : log.days()) {
      String body = day.bodyFor(Audience.PUBLIC);
      if (!body.isBlank()) {
        spoken.say(body, day.at().record(), day.allow());
        blocks.add(Block.heading(3, Say.weekday(day.day()) + " " + Say.dayAndMonth(day.day())));
        blocks.add(Block.prose(body, HEADINGS_BELOW, photos.in(day, names())));
      }
    }
    return blocks;
  }

  private Set<String> names() {
    return photos.all().stream().map(WeekPhoto::name).collect(Collectors.toSet());
  }

  private List<Block> pictures() {
    List<Block> blocks = new ArrayList<>();
    for (WeekPhoto photo : photos.all()) {
      photo
          .picture()
          .ifPresent(
              picture ->
                  picture
                      .says()
                      .ifPresent(
                          words -> spoken.say(words, picture.at().of("says"), photo.allow())));
      blocks.add(WeekPhotos.told(photo, blocks.size() + 1));
    }
    return blocks;
  }
}
