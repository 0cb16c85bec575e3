package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import kitwright.daybook.Week;
import kitwright.finding.Finding;
import kitwright.finding.Matter;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.report.week.CrewWeek;
import kitwright.report.week.PublicWeek;

/** Tells a week. */
final class WeekCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private final OutOptions out = new OutOptions();
  private String ending = "";
  private LogDay.Audience audience = LogDay.Audience.CREW;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints what happened in a week and what comes next. Weeks run from Monday to Sunday (ISO"
            + " 8601).",
        "The public reads what is marked “audience: public”, titles under “public:”, and figures.",
        "For example: kitwright week --audience public --format html --out site");
    options.declare(to);
    telling.declare(to);
    out.declare(to);
    to.option(
        "--ending",
        "DATE",
        given -> ending = given,
        "The week as far as this day; else as far as today.");
    to.option(
        "--audience",
        "WHO",
        LogDay.Audience.class,
        given -> audience = given,
        "crew (everything) or public; crew where not said.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Week week = Week.ending(ending.isEmpty() ? opened.today() : LedgerOptions.day(ending));
    Facts today = Facts.of(ledger, opened.today());
    Facts evening = week.last().isBefore(today.day()) ? today.on(week.last()) : today;
    if (audience == LogDay.Audience.PUBLIC) {
      return publicWeek(PublicWeek.of(week, evening), opened, session);
    }
    CrewWeek crew = CrewWeek.of(week, evening);
    Photos photos = Photos.of(hasPhotos() ? crew.photos() : List.of(), opened.folder());
    return out.tell(
        crew.sheet(photos.files().keySet()).with(photos.files()), telling, opened, session);
  }

  /** Whether photos come along: in a page, or beside a file. */
  private boolean hasPhotos() {
    return out.isNamed() || telling.hasPicturesInIt();
  }

  /** Nothing goes out while something in it looks private and nobody has allowed it there. */
  private int publicWeek(PublicWeek week, Opened opened, Session session) {
    List<Finding> suspect = new ArrayList<>(week.suspicions(opened.lines()));
    Photos photos = Photos.of(week.photos(), opened.folder());
    suspect.addAll(photos.findings());
    if (!suspect.isEmpty()) {
      session.err().print(Opened.text(session).render(Matter.each(suspect), opened.lines()));
      session.note(
          "kitwright: the public week was not written; each line above is yours to decide.");
      return FOUND;
    }
    if (week.unsaid() > 0) {
      session.note(
          "kitwright: "
              + (week.unsaid() == 1
                  ? "one day of this week is for the crew alone, since it does"
                  : week.unsaid() + " days of this week are for the crew alone, since they do")
              + " not say otherwise. “audience: public” in a day’s front matter, on a line of its"
              + " text or on a photo, and “public: …” in a task let others read it.");
    }
    if (!photos.files().isEmpty() && !hasPhotos()) {
      session.note(
          "kitwright: with --out DIR its photos are written beside it; with --format html they are"
              + " in it.");
    }
    return out.tell(week.sheet().with(photos.files()), telling, opened, session);
  }
}
