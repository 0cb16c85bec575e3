package kitwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What is told about a rule when somebody asks.
 *
 * @param summary one sentence
 * @param text the whole page, Markdown
 */
public record RulePage(String name, String summary, String text) {
  /** The page of a rule, from the resources; empty where there is no such rule. */
  public static Optional<RulePage> of(String name) {
    if (!name.matches("[a-z0-9-]+")) {
      return Optional.empty();
    }
    try (InputStream in = RulePage.class.getResourceAsStream("/kitwright/rules/" + name + ".md")) {
      if (in == null) {
        return Optional.empty();
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String[] parts = text.split("\\n\\n", 3);
      return Optional.of(new RulePage(name, parts[1].replace('\n', ' ').strip(), text));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
