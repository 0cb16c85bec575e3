package kitwright.report.writing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The templates that come with the program, from the project's folder {@code templates}. */
public final class PackagedTemplates {
  private PackagedTemplates() {}

  /** The text of the template, if there is one of this name. */
  public static Optional<String> text(String name) {
    try (InputStream in =
        PackagedTemplates.class.getResourceAsStream("/kitwright/templates/" + name + ".md")) {
      return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException("the program’s own file cannot be read: " + name, e);
    }
  }
}
