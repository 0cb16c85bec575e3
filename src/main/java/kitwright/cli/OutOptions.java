package kitwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import kitwright.document.Templates;
import kitwright.finding.Finding;
import kitwright.report.words.Sheet;
import kitwright.report.writing.Existing;
import kitwright.report.writing.TemplateFindings;
import kitwright.report.writing.Writing;
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

  /** Whether a folder was named to write into. */
  boolean isNamed() {
    return !out.isEmpty() && !out.equals(PRINTED);
  }

  /**
   * Writes documents into the folder that was named, else into {@code usual}; prints for {@code -}.
   */
  int tell(List<Sheet> sheets, String usual, Opened opened, Session session) {
    return tell(sheets, List.of(), usual, opened, session);
  }

  /** The same, telling also of documents that could not be made. */
  int tell(List<Sheet> sheets, List<Finding> broken, String usual, Opened opened, Session session) {
    Templates templates = opened.templates();
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
    return opened.refuse(faults, session);
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
      session.print(text);
      return;
    }
    Path folder =
        where.equals("reports")
            ? opened.folder().root().resolve(where)
            : LedgerOptions.path(session, where);
    Writing.into(folder)
        .write(name, text, force ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> session.say("written  " + done.file()),
            same -> () -> session.say("as it was " + same.file()),
            refused -> () -> faults.add(refused.why()))
        .run();
  }

  /** Writes pictures into the folder that was named. */
  int write(Map<String, byte[]> pictures, Opened opened, Session session) {
    List<Finding> faults = new ArrayList<>();
    pictures.forEach(
        (name, bytes) ->
            Writing.into(LedgerOptions.path(session, out))
                .write(name, bytes, force ? Existing.REPLACE : Existing.KEEP_FOREIGN)
                .<Runnable>match(
                    done -> () -> session.say("written  " + done.file()),
                    same -> () -> session.say("as it was " + same.file()),
                    refused -> () -> faults.add(refused.why()))
                .run());
    return faults.isEmpty() ? Command.CLEAN : opened.refuse(faults, session);
  }
}
