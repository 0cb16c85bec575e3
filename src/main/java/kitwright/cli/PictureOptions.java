package kitwright.cli;

import java.util.function.Supplier;
import kitwright.drawing.Svg;

/** Where a drawing goes. */
final class PictureOptions {
  private String picture = "";
  private boolean replace;

  void declare(Declaring to) {
    to.option("--picture", "FILE", given -> picture = given, "Also draw it, into an SVG file.");
    to.flag(
        "--force --replace-picture",
        () -> replace = true,
        "Replace a picture that Kitwright did not write.");
  }

  /** Draws where a file was named, and tells so beside the text. */
  void draw(Supplier<Svg> drawing, Session session) {
    if (!picture.isEmpty()) {
      OneFile.named(picture, ".svg", "picture", session)
          .write(drawing.get().text(), replace, session::note);
    }
  }
}
