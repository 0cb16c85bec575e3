package kitwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import kitwright.document.Templates;
import kitwright.finding.Finding;
import kitwright.report.Existing;
import kitwright.report.PackagedTemplates;
import kitwright.report.Sheet;
import kitwright.report.TemplateFindings;
import kitwright.report.Writing;
import picocli.CommandLine.Option;

/** Where documents go. */
final class OutOptions {
  /** For documents that are printed unless a folder is named. */
  static final String PRINTED = "-";

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The folder to write into; “-” prints instead.")
  private String out = "";

  @Option(names = "--force", description = "Replace files that Kitwright did not write.")
  private boolean force;

  /**
   * Writes documents into the folder that was named, else into {@code usual}; prints for {@code -}.
   */
  int tell(List<Sheet> sheets, String usual, Opened opened, Session session) {
    return tell(sheets, List.of(), usual, opened, session);
  }

  /** The same, telling also of documents that could not be made. */
  int tell(List<Sheet> sheets, List<Finding> broken, String usual, Opened opened, Session session) {
    Templates templates = new Templates(name -> own(opened, name), PackagedTemplates::text);
    String where = out.isEmpty() ? usual : out;
    List<Finding> faults = new ArrayList<>(broken);
    for (Sheet sheet : sheets) {
      sheet
          .fill(templates)
          .<Runnable>match(
              text -> () -> put(where, sheet, text.markdown(), opened, session, faults),
              unfit -> () -> faults.addAll(TemplateFindings.of(unfit)))
          .run();
    }
    if (faults.isEmpty()) {
      return Command.CLEAN;
    }
    session.err().print(Opened.text(session).render(faults, file -> lines(opened, file)));
    return Command.UNREADABLE;
  }

  /**
   * A document and its drawings go together: where the one is refused, the others are not written.
   */
  private void put(
      String where,
      Sheet sheet,
      String markdown,
      Opened opened,
      Session session,
      List<Finding> faults) {
    int before = faults.size();
    put(where, sheet.file(), markdown, opened, session, faults);
    if (!where.equals(PRINTED) && faults.size() == before) {
      new TreeMap<>(sheet.drawings())
          .forEach((name, svg) -> put(where, name, svg, opened, session, faults));
    }
  }

  private void put(
      String where,
      String name,
      String text,
      Opened opened,
      Session session,
      List<Finding> faults) {
    if (where.equals(PRINTED)) {
      session.out().print(text);
      return;
    }
    Path folder =
        where.equals("reports")
            ? opened.folder().root().resolve(where)
            : LedgerOptions.path(session, where);
    Writing.into(folder)
        .write(name, text, force ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> session.out().println("written  " + done.file()),
            same -> () -> session.out().println("as it was " + same.file()),
            refused -> () -> faults.add(refused.why()))
        .run();
  }

  /** The ledger's own template, which takes the place of the one that comes with the program. */
  private static Optional<String> own(Opened opened, String name) {
    Path file = opened.folder().root().resolve("templates").resolve(name + ".md");
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Files.readString(file));
    } catch (IOException unreadable) {
      throw new Refusal(
          "The template “" + file + "” cannot be read.",
          "Check who may read it, and save it as UTF-8.");
    }
  }

  private static List<String> lines(Opened opened, String file) {
    Path path = opened.folder().root().resolve(file);
    try {
      return Files.isRegularFile(path)
          ? Files.readAllLines(path, StandardCharsets.UTF_8)
          : List.of();
    } catch (IOException unreadable) {
      return List.of();
    }
  }
}
