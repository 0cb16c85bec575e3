package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.drawing.Svg;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Range;
import kitwright.network.Simulation;
import kitwright.openmatter.Ends;
import kitwright.report.ahead.AheadReport;
import kitwright.report.ahead.Outlook;
import kitwright.report.ahead.WorkPicture;
import kitwright.value.Nearest;

/** Looks ahead: work, material, weather, and what follows if something is late. */
final class AheadCommand implements Command {
  static final int MOST_WEEKS = 520;

  private final Telling telling = new Telling();
  private final PictureOptions picture = new PictureOptions();
  private final LedgerOptions options = new LedgerOptions();
  private int weeks = -1;
  private List<String> late = List.of();
  private boolean range;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Looks ahead: the work of the next weeks with its float, the material that it lacks or that"
            + " nobody has counted, the last days to order, the weather, and the indoor work that"
            + " is ready.",
        "With --late it shows what follows if goods or work come later than said.",
        "For example: kitwright ahead --late claim-2026-02-24=14d");
    telling.declare(to);
    picture.declare(to);
    options.declare(to);
    to.option(
        "--weeks",
        "N",
        int.class,
        given -> weeks = given,
        "How many weeks to look ahead; else the build’s horizon.");
    to.options(
        "--late",
        "ID=TIME",
        given -> late = given,
        "Suppose that the delivery, claim, shortage, order or task with this id is so much later:"
            + " d-fourth=14d. Days of a task are working days. May be given several times.");
    to.flag(
        "--range",
        () -> range = true,
        "Show in what range the end lies, by simulation and by the classical estimate.");
  }

  @Override
  public int run(Session session) {
    if (weeks > MOST_WEEKS || weeks < -1) {
      throw new Refusal(
          "After --weeks: " + weeks + " weeks.", "Please write 1 to " + MOST_WEEKS + ".");
    }
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    Outlook outlook =
        new Outlook(
            now,
            weeks < 0 ? Plan.on(now).horizon() : now.day().plusWeeks(weeks),
            late.isEmpty() ? Optional.empty() : Optional.of(LateWord.of(late, now)),
            range ? Optional.of(simulated(now, session)) : Optional.empty());
    int told = telling.tell(AheadReport.sheet(outlook), opened, session);
    picture.draw(() -> drawing(outlook), session);
    return told;
  }

  /** As far as can be read unless {@code --weeks} says otherwise. */
  private Svg drawing(Outlook outlook) {
    return weeks < 0
        ? WorkPicture.of(outlook.now())
        : WorkPicture.upTo(outlook.last(), outlook.now());
  }

  private static Range simulated(Facts now, Session session) {
    RunsShown shown = new RunsShown(session);
    Range range =
        Simulation.run(
            Ends.on(now).last().network(), Plan.on(now).calendar(), Plan.on(now).morning(), shown);
    shown.clear();
    return range;
  }

  /** A refusal that offers the nearest id. */
  static Refusal unknown(String id, List<String> known) {
    return Refusal.unknown(
        "No delivery, claim, shortage, order or task has the id “" + id + "”.",
        Nearest.to(id, known),
        "Look it up in the ledger.");
  }
}
