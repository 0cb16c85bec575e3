package kitwright.cli;

import java.nio.file.Path;
import java.util.function.Supplier;
import kitwright.drawing.Svg;
import kitwright.report.writing.Existing;
import kitwright.report.writing.Writing;

/** Where a drawing goes. */
final class PictureOptions {
  private String picture = "";
  private boolean replace;

  void declare(Declaring to) {
    to.option(
        "--picture",
        "FILE",
        String.class,
        given -> picture = given,
        "Also draw it, into an SVG file.");
    to.flag(
        "--force --replace-picture",
        () -> replace = true,
        "Replace a picture that Kitwright did not write.");
  }

  /** Draws where a file was named, and tells so beside the text. */
  void draw(Supplier<Svg> drawing, Session session) {
    if (picture.isEmpty()) {
      return;
    }
    Path file = LedgerOptions.path(session, picture).toAbsolutePath().normalize();
    Path folder = file.getParent();
    if (!picture.endsWith(".svg") || folder == null) {
      throw new Refusal(
          "“" + picture + "” is no name for a picture.", "Name a file that ends in .svg.");
    }
    Writing.into(folder)
        .write(
            file.getFileName().toString(),
            drawing.get().text(),
            replace ? Existing.REPLACE : Existing.KEEP_FOREIGN)
        .<Runnable>match(
            done -> () -> session.note("written  " + done.file()),
            same -> () -> session.note("as it was " + same.file()),
            refused ->
                () -> {
                  throw new Refusal(refused.why().what(), refused.why().mend());
                })
        .run();
  }
}
