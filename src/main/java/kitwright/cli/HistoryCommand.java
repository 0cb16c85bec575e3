package kitwright.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import kitwright.history.Figure;
import kitwright.history.History;
import kitwright.history.NoHistory;
import kitwright.history.Series;
import kitwright.ledger.Ledger;
import kitwright.report.past.HistoryTold;

/** How a figure of the build went. */
final class HistoryCommand implements Command {
  private static final int USUAL = 40;

  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private final PictureOptions picture = new PictureOptions();
  private String figure = "";
  private int days = USUAL;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Follows a figure of the build over the days on which somebody committed, as it was told on"
            + " each: spent, forecast, end, missing or unsigned.",
        "For example: kitwright history forecast --picture forecast.svg");
    options.declare(to);
    telling.declare(to);
    picture.declare(to);
    to.place(
        0,
        "FIGURE",
        given -> figure = given,
        "spent, forecast, end (of the plan), missing or unsigned.");
    to.option(
        "--days",
        "N",
        int.class,
        given -> days = given,
        "So many days at the most, evenly chosen; 40 where not said.");
  }

  @Override
  public int run(Session session) {
    Figure wanted =
        Figure.of(figure)
            .orElseThrow(
                () ->
                    new Refusal(
                        "There is no figure “" + figure + "”.", "Name one of " + all() + "."));
    if (days < 2) {
      throw new Refusal("“--days " + days + "” is too few to follow anything.", "Write 2 or more.");
    }
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    try {
      Series series = read(wanted, opened, session);
      if (!series.readings().isEmpty()) {
        picture.draw(() -> HistoryTold.drawing(ledger, series), session);
      }
      return telling.tell(HistoryTold.sheet(ledger, series), opened, session);
    } catch (NoHistory none) {
      throw new Refusal(none.what(), none.mend());
    }
  }

  private Series read(Figure wanted, Opened opened, Session session) throws NoHistory {
    try (Progress progress = new Progress(session, "days")) {
      return Series.of(History.of(opened.folder().root()), wanted, days, Opened::checked, progress);
    }
  }

  private static String all() {
    return Arrays.stream(Figure.values()).map(Figure::word).collect(Collectors.joining(", "));
  }
}
