package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/**
 * A Markdown file cut into its front matter and the text below.
 *
 * @param yaml the keys between the two lines of three hyphens
 * @param body the Markdown below
 */
record FrontMatter(String path, String yaml, String body) {
  private static final Pattern OPENING = Pattern.compile("---[ \\t]*\\R");
  private static final Pattern CLOSING =
      Pattern.compile("(?m)^(?:---|\\.\\.\\.)[ \\t]*(?:\\R|\\z)");

  /** Up to three lines, blank or of odd hyphens, then keys of which one is the day of a log. */
  private static final Pattern HEADLESS =
      Pattern.compile(
          "(?:[ \\t\\p{Pd}]*\\R){0,3}(?:[ \\t]*[a-z]+:.*\\R){0,8}[ \\t]*day:[ \\t]*[0-9]{4}-.*\\R");

  /** In the folder of the log, or named by a day. */
  private static final Pattern AMONG_LOGS =
      Pattern.compile("(^|/)(log/(?!README)[^/]*|[0-9]{4}-[0-9]{2}-[0-9]{2}[^/]*)$");

  private static final Pattern USED = Pattern.compile("(?m)^[ \\t]*used[ \\t]*:");

  /** The front matter of a file; empty for Markdown that has none, which is no log day. */
  static Optional<FrontMatter> of(SourceFile file, Findings out, Consumer<Unread> unread) {
    Matcher opening = OPENING.matcher(file.text());
    if (!opening.lookingAt()) {
      if (HEADLESS.matcher(file.text()).lookingAt()) {
        out.add(headless(file));
        unread.accept(Unread.from(file, 1));
      } else if (AMONG_LOGS.matcher(file.path()).find()) {
        out.add(PassedOver.logWithoutKeys(file.path()));
        if (USED.matcher(file.text()).find()) {
          unread.accept(Unread.from(file, 1));
        }
      }
      return Optional.empty();
    }
    Matcher closing = CLOSING.matcher(file.text());
    if (!closing.find(opening.end())) {
      out.add(unclosed(file));
      unread.accept(Unread.from(file, 1));
      return Optional.empty();
    }
    return Optional.of(
        new FrontMatter(
            file.path(),
            file.text().substring(opening.end(), closing.start()),
            file.text().substring(closing.end())));
  }

  /** The line from which on something was lost; none where all was read. */
  OptionalInt read(Recall recall, BiConsumer<Node.Scalar, Node> key, Findings out) {
    return YamlText.readOne(path, yaml, 1, recall, key, out);
  }

  private static Finding headless(SourceFile file) {
    return passedOver(
        new Place(file.path(), 1, 1, 1, 2),
        "The keys of a log day stand here, but the first line is not three hyphens.",
        "Write a line of three hyphens, and nothing above it, as the first line of the file.");
  }

  private static Finding unclosed(SourceFile file) {
    return passedOver(
        new Place(file.path(), 1, 1, 1, 4),
        "The front matter that starts here never ends.",
        "Write a line of three hyphens below the last key.");
  }

  private static Finding passedOver(Place at, String what, String mend) {
    return new Finding(
        "yaml-unreadable",
        Severity.STOP,
        at,
        what,
        "The whole file is passed over, so that the day is missing from the log.",
        mend,
        List.of());
  }
}
