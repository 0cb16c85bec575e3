package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.drawing.Svg;
import kitwright.ledger.Facts;
import kitwright.network.Plan;
import kitwright.network.Range;
import kitwright.network.Simulation;
import kitwright.report.ahead.AheadReport;
import kitwright.report.ahead.Outlook;
import kitwright.report.ahead.WorkPicture;
import kitwright.shortage.LookAhead;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Looks ahead: work, material, weather, and what follows if something is late. */
@picocli.CommandLine.Command(
    name = "ahead",
    description = {
      "Looks ahead: the work of the next weeks with its float, the material that it lacks or that"
          + " nobody has counted, the last days to order, the weather, and the indoor work that is"
          + " ready.",
      "With --late it shows what follows if goods or work come later than said.",
      "For example: kitwright ahead --late claim-2026-02-24=14d"
    })
final class AheadCommand implements Command {
  static final int MOST_WEEKS = 520;

  @Mixin private Telling telling = new Telling();

  @Mixin private PictureOptions picture = new PictureOptions();

  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(
      names = "--weeks",
      paramLabel = "N",
      description = "How many weeks to look ahead; else the build’s horizon.")
  private int weeks = -1;

  @Option(
      names = "--late",
      paramLabel = "ID=TIME",
      description =
          "Suppose that the delivery, claim, shortage, order or task with this id is so much later:"
              + " d-fourth=14d. Days of a task are working days. May be given several times.")
  private List<String> late = List.of();

  @Option(
      names = "--range",
      description = "Show in what range the end lies, by simulation and by the classical estimate.")
  private boolean range;

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
            LookAhead.on(now).paced().network(),
            Plan.on(now).calendar(),
            Plan.on(now).morning(),
            shown);
    shown.clear();
    return range;
  }

  /** A refusal that offers the nearest id. */
  static Refusal unknown(String id, List<String> known) {
    return Refusal.unknown(
        "No delivery, claim, shortage, order or task has the id “" + id + "”.",
        id,
        known,
        "Look it up in the ledger.");
  }
}
