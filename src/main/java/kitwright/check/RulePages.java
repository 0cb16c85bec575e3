package kitwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import kitwright.finding.RulePage;

/** The rules' pages, which stand among the resources. */
public final class RulePages {
  private RulePages() {}

  /** The page of a rule; empty where there is no such rule. */
  public static Optional<RulePage> of(String name) {
    if (!name.matches("[a-z0-9-]+")) {
      return Optional.empty();
    }
    try (InputStream in = RulePages.class.getResourceAsStream("/kitwright/rules/" + name + ".md")) {
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

  /** The pages of all rules. */
  public static List<RulePage> all() {
    return RuleNames.all().stream().flatMap(name -> of(name).stream()).toList();
  }
}
