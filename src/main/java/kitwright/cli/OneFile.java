package kitwright.cli;

import java.nio.file.Path;
import java.util.function.Consumer;
import kitwright.report.writing.Existing;
import kitwright.report.writing.Writing;

/** The one file that a command was asked to write, by its folder and its name. */
record OneFile(Path folder, String name) {
  /** The file of that name, which must have the ending of its kind. */
  static OneFile named(String name, String ending, String kind, Session session) {
    Path path = LedgerOptions.path(session, name).toAbsolutePath().normalize();
    Path folder = path.getParent();
    if (!name.endsWith(ending) || folder == null) {
      throw new Refusal(
          "“" + name + "” is no name for a " + kind + ".",
          "Name a file that ends in " + ending + ".");
    }
    return new OneFile(folder, path.getFileName().toString());
  }

  /** Writes it, and tells so. */
  void write(String text, boolean replace, Consumer<String> told) {
    Writing.into(folder)
        .write(name, text, replace ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> told.accept("written  " + done.file()),
            same -> () -> told.accept("as it was " + same.file()),
            refused ->
                () -> {
                  throw new Refusal(refused.why().what(), refused.why().mend());
                })
        .run();
  }
}
