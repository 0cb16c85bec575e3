package kitwright.cli;

import java.util.Optional;
import java.util.function.Function;
import kitwright.document.Filled;
import kitwright.document.Templates;
import kitwright.report.words.Sheet;
import kitwright.report.writing.PackagedTemplates;
import kitwright.report.writing.TemplateFindings;

/** How a command tells: the same words and figures for people, for a forge, for other programs. */
final class Telling {
  enum Format {
    TEXT,
    MARKDOWN,
    HTML,
    JSON
  }

  private Optional<Format> format = Optional.empty();

  void declare(Declaring to) {
    to.option(
        "--format",
        "HOW",
        Format.class,
        given -> format = Optional.of(given),
        "text, markdown, html (one page to send on, pictures in it), or json for other programs;"
            + " text where not said, but a letter or a week is Markdown.");
  }

  /** Whether a form was asked for. */
  boolean isChosen() {
    return format.isPresent();
  }

  /** Whether it is for other programs. */
  boolean isForPrograms() {
    return format.filter(Format.JSON::equals).isPresent();
  }

  /** Whether what is printed holds its pictures. */
  boolean hasPicturesInIt() {
    return format.filter(Format.HTML::equals).isPresent();
  }

  /**
   * The form of files: Markdown, or HTML where it was asked for; another is refused rather than
   * passed over.
   */
  Format forFiles() {
    Format chosen = format.orElse(Format.MARKDOWN);
    if (chosen != Format.MARKDOWN && chosen != Format.HTML) {
      throw new Refusal(
          "Files are written as Markdown or HTML only.",
          "Leave out --out, and send what is printed on.");
    }
    return chosen;
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
        format.orElse(usual) == Format.TEXT ? sheet : opened.whole(sheet),
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
                  switch (chosen) {
                    case TEXT -> page.text(session.screen().width());
                    case HTML -> page.html(sheet.pictures());
                    default -> page.markdown();
                  });
              return Command.CLEAN;
            },
            refuse);
  }
}
