package kitwright.yaml;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.value.Place;
import org.yaml.snakeyaml.error.Mark;

/**
 * An unquoted text that a {@code #} ends which hardly begins a comment: one space before it and
 * none behind, as in {@code sheet #3 cracked}.
 *
 * @param lost what YAML takes for a comment
 */
record HashCut(String lost) {
  /** What follows a text on its line, if it looks like the rest of it. */
  static Optional<HashCut> of(Mark end) {
    int[] signs = end.getBuffer();
    int at = end.getPointer();
    boolean cut =
        at + 2 < signs.length
            && signs[at] == ' '
            && signs[at + 1] == '#'
            && Character.isLetterOrDigit(signs[at + 2]);
    return cut ? Optional.of(new HashCut(rest(signs, at + 1))) : Optional.empty();
  }

  private static String rest(int[] signs, int from) {
    StringBuilder rest = new StringBuilder();
    for (int i = from;
        i < signs.length && signs[i] > 0 && signs[i] != '\n' && signs[i] != '\r';
        i++) {
      rest.appendCodePoint(signs[i]);
    }
    return rest.toString().strip();
  }

  Finding finding(String text, Place at) {
    return new Finding(
        "text-cut-by-hash",
        Severity.WARN,
        at,
        "The # before “"
            + lost.substring(1)
            + "” begins a comment, so that the text ends before it.",
        "What stands behind it is read by nobody.",
        "If it belongs to the text, put the whole in quotes: \""
            + (text + " " + lost).strip()
            + "\"; if it is a comment, write a space behind the #.",
        List.of());
  }
}
