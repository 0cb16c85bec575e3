package kitwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.daybook.Ahead;
import kitwright.daybook.Happenings;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Inline;
import kitwright.document.Redacted;
import kitwright.document.Slots;
import kitwright.kit.Count;
import kitwright.kit.Positions;
import kitwright.ledger.Delivery;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay;
import kitwright.ledger.LogDay.Audience;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.value.Ref;

/**
 * The week for whoever follows the build. It never asks for money, for a party’s name or for a
 * claim; what people wrote in their own words passes through {@link Discretion}.
 */
final class PublicWeek {
  private static final int HEADINGS_BELOW = 3;

  private final Week week;
  private final Facts now;
  private final Discretion discretion;
  private final WeekParts parts;
  private final Happenings happened;

  PublicWeek(Week week, Facts now) {
    this.week = week;
    this.now = now;
    this.discretion = Discretion.of(now.ledger());
    List<LogDay> log =
        now.ledger().log().stream().filter(day -> day.audience() == Audience.PUBLIC).toList();
    this.parts =
        new WeekParts(
            week,
            WeekLog.of(week, now.ledger(), log),
            Ahead.after(week, now, log),
            text -> Optional.of(text).filter(discretion::allows));
    this.happened = Happenings.in(week, now.ledger());
  }

  Sheet sheet() {
    List<Redacted> prose =
        parts.log().days().stream()
            .map(day -> Redacted.of(day.body(), HEADINGS_BELOW, discretion::allows))
            .toList();
    int left = prose.stream().mapToInt(Redacted::left).sum();
    Slots slots =
        Slots.none()
            .sentence(
                "build",
                Optional.of(now.ledger().build().name())
                    .filter(discretion::allows)
                    .orElse("The build"))
            .sentence(
                "what",
                now.ledger().build().what().filter(discretion::allows).map(Say::capital).orElse(""))
            .sentence("span", WeekReport.span(week))
            .sentence("week", week.toString())
            .sentence("summary", summary())
            .sentence("hours", parts.hoursByPhase())
            .block("progress", parts.progress().toArray(Block[]::new))
            .sentence("used", parts.used())
            .block("days", days(prose).toArray(Block[]::new))
            .sentence("left-out", left == 0 ? "" : Integer.toString(left))
            .block("arrived", bullets(happened.arrived().stream().map(this::arrived).toList()))
            .block("missing", bullets(happened.found().stream().map(this::found).toList()))
            .block("decided", bullets(decided()))
            .block("photos", bullets(photos()))
            .block("next", bullets(next()));
    return new Sheet("week-" + week + "-public.md", "week-public", slots);
  }

  private static Block[] bullets(List<Inline> items) {
    return items.isEmpty() ? new Block[0] : new Block[] {Block.bullets(items)};
  }

  private String summary() {
    WeekLog log = parts.log();
    if (log.days().isEmpty()) {
      return "No day of this week is written up for the public.";
    }
    int people = log.hours().byPerson().size();
    return WeekReport.sentences(
        List.of(
            Say.hours(log.hours().total())
                + " hours of work on "
                + Say.days(log.days().size())
                + (people > 1 ? " by " + people + " people" : "")
                + ".",
            parts.finished().isEmpty() ? "" : "Finished: " + parts.finished() + ".",
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

  private List<Block> days(List<Redacted> prose) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < prose.size(); i++) {
      if (!prose.get(i).blocks().isEmpty()) {
        LogDay day = parts.log().days().get(i);
        blocks.add(Block.heading(3, Say.weekday(day.day()) + " " + Say.dayAndMonth(day.day())));
        blocks.addAll(prose.get(i).blocks());
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
            .filter(count -> !count.damaged().plus(count.wrong()).isNone())
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
            Say.so(shortage.qty(), phrase(what(shortage.item())))
                + ": "
                + Say.word(shortage.cause())
                + "."));
  }

  private String what(Ref item) {
    return now.ledger().kitItem(item).map(found -> found.what()).orElse("something");
  }

  private List<Inline> decided() {
    List<Inline> all = new ArrayList<>();
    happened.decided().stream()
        .map(
            each ->
                "For the missing "
                    + phrase(what(each.item()))
                    + ", the way out is chosen: "
                    + way(each)
                    + ".")
        .map(Inline::text)
        .forEach(all::add);
    happened.proposed().stream()
        .filter(each -> discretion.allows(each.why()))
        .map(each -> "Put forward: " + each.why() + ".")
        .map(Inline::text)
        .forEach(all::add);
    happened.signed().stream()
        .filter(each -> kitwright.substitution.Standings.on(now).counts(each.signOff()))
        .map(
            each ->
                "Signed by "
                    + role(each.signOff().by())
                    + ": "
                    + phrase(each.substitution().why())
                    + ".")
        .map(Inline::text)
        .forEach(all::add);
    return all;
  }

  private String phrase(String text) {
    return discretion.allows(text) ? text : "something";
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

  private List<Inline> photos() {
    return parts.log().photos().stream()
        .map(WeekLog.Photo::picture)
        .filter(PublicWeek::isPublic)
        .filter(picture -> discretion.allows(picture.file()))
        .map(this::photo)
        .toList();
  }

  /** Marked with any word but this one, a photo is not for the public. */
  private static boolean isPublic(Evidence picture) {
    return picture.audience().filter(word -> !word.equals("public")).isEmpty();
  }

  private Inline photo(Evidence picture) {
    Optional<String> says = picture.says().filter(discretion::allows);
    return Inline.together(
        Inline.code(picture.file()), Inline.text(says.map(text -> ", " + text).orElse("")));
  }

  private List<Inline> next() {
    List<Inline> all = new ArrayList<>(parts.nextWork());
    parts.ahead().deliveries().stream()
        .flatMap(each -> each.expected().stream())
        .filter(parts::isSoon)
        .map(day -> Inline.text("A delivery is expected on " + Say.day(day) + "."))
        .forEach(all::add);
    parts.ahead().tools().stream()
        .filter(each -> each.due().filter(parts::isSoon).isPresent())
        .filter(each -> discretion.allows(each.tool()))
        .map(each -> Inline.text("To go back: " + each.tool() + "."))
        .forEach(all::add);
    return all;
  }
}
