package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what is open, most pressing first. */
@picocli.CommandLine.Command(
    name = "open",
    description = {
      "Lists every open matter, most pressing first: by when it is needed so that the launch does"
          + " not move, how many working days of float the work has, whom it waits for and what to"
          + " do next."
    })
final class OpenCommand implements Command {
  /** How the list is told. */
  enum Format {
    TEXT,
    JSON
  }

  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(
      names = "--format",
      paramLabel = "HOW",
      description = "text, or json for other programs; text where not said.")
  private Format format = Format.TEXT;

  @Option(
      names = "--within",
      paramLabel = "WEEKS",
      description =
          "Only what one must act on within so many weeks: to order, to ask, or to have at hand.")
  private int within = -1;

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts now = Facts.of(opened.ledger(session), opened.today());
    OpenMatters open = OpenMatters.on(now);
    List<OpenMatter> matters = within < 0 ? open.all() : open.actingBy(last(opened.today()));
    session
        .out()
        .print(
            format == Format.JSON
                ? OpenJson.of(now, matters)
                : OpenText.of(now, matters, session.screen().width()));
    return CLEAN;
  }

  private LocalDate last(LocalDate today) {
    return today.plusWeeks(Math.min(within, AheadCommand.MOST_WEEKS));
  }
}
