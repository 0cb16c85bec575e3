package kitwright.cli;

import java.util.Optional;
import java.util.function.Function;
import kitwright.document.Filled;
import kitwright.document.Templates;
import kitwright.report.words.Sheet;
import kitwright.report.writing.PackagedTemplates;
import kitwright.report.writing.TemplateFindings;
import picocli.CommandLine.Option;

/** How a command tells: the same words and figures for people, for a forge, for other programs. */
final class Telling {
  /** In which form. */
  enum Format {
    TEXT,
    MARKDOWN,
    JSON
  }

  @Option(
      names = "--format",
      paramLabel = "HOW",
      description =
          "text, markdown, or json for other programs; text where not said, but a letter or a week"
              + " is Markdown.")
  private Optional<Format> format = Optional.empty();

  /** Whether a form was asked for. */
  boolean isChosen() {
    return format.isPresent();
  }

  /** Whether it is for other programs. */
  boolean isForPrograms() {
    return format.filter(Format.JSON::equals).isPresent();
  }

  /** Files are written as Markdown; asking for another form is refused rather than passed over. */
  void refuseForFiles() {
    if (format.filter(chosen -> chosen != Format.MARKDOWN).isPresent()) {
      throw new Refusal(
          "Files are written as Markdown only.", "Leave out --out, and send what is printed on.");
    }
  }

  /** Prints a document, laid out by its template unless as JSON. */
  int tell(Sheet sheet, Opened opened, Session session) {
    return tell(sheet, Format.TEXT, opened, session);
  }

  /** A document of the program itself, which no ledger lays out. */
  int tell(Sheet sheet, Session session) {
    return tell(
        sheet,
        Format.TEXT,
        new Templates(name -> Optional.empty(), PackagedTemplates::text),
        broken -> Command.UNREADABLE,
        session);
  }

  /** The same, in the form {@code usual} where none was asked for. */
  int tell(Sheet sheet, Format usual, Opened opened, Session session) {
    return tell(
        sheet,
        usual,
        opened.templates(),
        broken -> opened.refuse(TemplateFindings.of(broken), session),
        session);
  }

  private int tell(
      Sheet sheet,
      Format usual,
      Templates templates,
      Function<Filled.Broken, Integer> refuse,
      Session session) {
    Format chosen = format.orElse(usual);
    if (chosen == Format.JSON) {
      session.print(sheet.slots().json());
      return Command.CLEAN;
    }
    return sheet
        .fill(templates)
        .match(
            page -> {
              session.print(
                  chosen == Format.TEXT ? page.text(session.screen().width()) : page.markdown());
              return Command.CLEAN;
            },
            refuse);
  }
}
