package kitwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kitwright.document.Filled;
import kitwright.document.Templates;
import kitwright.finding.Finding;
import kitwright.report.words.Sheet;
import kitwright.report.writing.Existing;
import kitwright.report.writing.TemplateFindings;
import kitwright.report.writing.Writing;

/** Where documents go. */
final class OutOptions {
  /** For documents that are printed unless a folder is named. */
  static final String PRINTED = "-";

  private String out = "";
  private boolean force;

  void declare(Declaring to) {
    to.option(
        "--out", "DIR", given -> out = given, "The folder to write into; “-” prints instead.");
    to.flag("--force", () -> force = true, "Replace files that Kitwright did not write.");
  }

  /** Whether a folder was named to write into. */
  boolean isNamed() {
    return !out.isEmpty() && !out.equals(PRINTED);
  }

  /** Writes a letter or a week into the folder that was named, else prints it as it was asked. */
  int tell(Sheet sheet, Telling telling, Opened opened, Session session) {
    return isNamed()
        ? tell(List.of(sheet), telling.forFiles(), PRINTED, opened, session)
        : telling.tell(sheet, Telling.Format.MARKDOWN, opened, session);
  }

  /**
   * Writes documents into the folder that was named, else into {@code usual}; prints for {@code -}.
   */
  int tell(List<Sheet> sheets, Telling.Format form, String usual, Opened opened, Session session) {
    return tell(sheets, List.of(), form, usual, opened, session);
  }

  /** The same, telling also of documents that could not be made. */
  int tell(
      List<Sheet> sheets,
      List<Finding> broken,
      Telling.Format form,
      String usual,
      Opened opened,
      Session session) {
    Templates templates = opened.templates();
    String where = out.isEmpty() ? usual : out;
    List<Finding> faults = new ArrayList<>(broken);
    for (Sheet each : sheets) {
      Sheet sheet = opened.whole(each);
      sheet
          .fill(templates)
          .<Runnable>match(
              page -> () -> put(where, sheet, page, form, opened, session, faults),
              unfit -> () -> faults.addAll(TemplateFindings.of(unfit)))
          .run();
    }
    if (faults.isEmpty()) {
      return Command.CLEAN;
    }
    return opened.refuse(faults, session);
  }

  /**
   * A document and its pictures go together: where the one is refused, the others are not written.
   * A page has them in it.
   */
  private void put(
      String where,
      Sheet sheet,
      Filled.Page page,
      Telling.Format form,
      Opened opened,
      Session session,
      List<Finding> faults) {
    if (form == Telling.Format.HTML) {
      String name = sheet.file().replaceFirst("\\.md$", ".html");
      put(where, name, page.html(sheet.pictures()).getBytes(UTF_8), opened, session, faults);
      return;
    }
    int before = faults.size();
    put(where, sheet.file(), page.markdown().getBytes(UTF_8), opened, session, faults);
    if (!where.equals(PRINTED) && faults.size() == before) {
      sheet.pictures().forEach((name, bytes) -> put(where, name, bytes, opened, session, faults));
    }
  }

  private void put(
      String where,
      String name,
      byte[] content,
      Opened opened,
      Session session,
      List<Finding> faults) {
    if (where.equals(PRINTED)) {
      session.print(new String(content, UTF_8));
      return;
    }
    Path folder =
        where.equals("reports")
            ? opened.folder().root().resolve(where)
            : LedgerOptions.path(session, where);
    Writing.into(folder)
        .write(name, content, force ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> session.say("written  " + done.file()),
            same -> () -> session.say("as it was " + same.file()),
            refused -> () -> faults.add(refused.why()))
        .run();
  }
}
