package kitwright.yaml;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.value.Place;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** The faults that YAML itself can have, in a builder's words. */
final class Faults {
  private static final String REST =
      "The file is read up to here; the records below it are missing.";

  private Faults() {}

  /** Git leaves such lines where it could not join two branches. */
  private static final Pattern UNFINISHED_MERGE = Pattern.compile("(?m)^(<{7}|={7}|>{7})(?= |$)");

  /** A key and a text with a colon in it, on one line. */
  private static final Pattern COLON_IN_TEXT =
      Pattern.compile("^(?<key>\\s*(?:- )*[\\w-]+:)\\s+(?<text>[^\"'\\[{|>&*!#].*?)\\s*$");

  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|'[^']*'");

  /** A comment with a closing bracket in it. */
  private static final Pattern SWALLOWED = Pattern.compile("(?<=\\s)#.*[\\]}]");

  static Finding broken(MarkedYAMLException broken, String text, Lines lines) {
    String file = lines.file();
    Matcher merge = UNFINISHED_MERGE.matcher(text);
    if (merge.find()) {
      return merge(text, merge.start(), lines);
    }
    Mark mark = Optional.ofNullable(broken.getProblemMark()).orElseGet(broken::getContextMark);
    Place at = mark == null ? Place.wholeFile(file) : lines.at(mark);
    String problem = Optional.ofNullable(broken.getProblem()).orElse("").toLowerCase(Locale.ROOT);
    if (problem.contains("\\t(tab)") || problem.contains("'\t'") || problem.contains("\\t")) {
      return fault(
          at,
          "A tab stands where only spaces may indent.",
          "Replace the tab by spaces; most editors can do it for the whole file.");
    }
    Optional<Finding> cut = cutByHash(broken, at, text, lines);
    if (cut.isPresent()) {
      return cut.get();
    }
    if (problem.contains("mapping values are not allowed")) {
      return fault(
          at,
          "A colon and a space stand inside a text.",
          quoted(text, at, lines)
              .map(line -> "Put the text in quotes: " + line)
              .orElse(
                  "Put the text in quotes, or check the indentation of this line and the one"
                      + " above."));
    }
    if (problem.contains("could not find expected ':'") && broken.getContextMark() != null) {
      return fault(
          lines.at(broken.getContextMark()),
          "Behind the key on this line a colon and a space are missing.",
          "Write the key, a colon, a space and the value; or indent the line if the text above goes"
              + " on here.");
    }
    if (problem.contains("end of stream") || problem.contains("stream end")) {
      return fault(
          at,
          "The file ends in the middle of a text or a list.",
          "Close the quote or bracket that was opened above.");
    }
    if (problem.contains("expected ',' or")) {
      return fault(
          at,
          "A comma or a closing bracket is missing before this place.",
          "Separate the entries by commas and close the bracket; a text with a comma needs"
              + " quotes.");
    }
    if (problem.contains("expected <block end>")) {
      return fault(
          at,
          "This line does not stand under the ones before it.",
          "Give all entries of a list or group the same indentation.");
    }
    if (problem.contains("cannot start any token")) {
      return fault(
          at,
          "This character cannot start a value.",
          "Put the text in quotes (texts that start with @, `, %, *, & or ! need them).");
    }
    return fault(
        at,
        "The YAML cannot be understood here (" + problem.replaceAll("\\s+", " ") + ").",
        "Check quotes, brackets, commas and indentation on this line and the one above.");
  }

  private static Finding merge(String text, int start, Lines lines) {
    int line =
        1 + lines.skipped() + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
    return YamlText.fault(
        "yaml-unreadable",
        new Place(lines.file(), line, 1, line, 8),
        "A merge of two branches was not finished here: Git has left both versions of these lines.",
        REST,
        "Keep the lines that are right, or both, delete the lines of <, = and >, and commit the"
            + " merge.");
  }

  /** A comment that swallows the closing bracket of the list or group in which it stands. */
  private static Optional<Finding> cutByHash(
      MarkedYAMLException broken, Place at, String text, Lines lines) {
    if (broken.getContextMark() == null || !String.valueOf(broken.getContext()).contains("flow")) {
      return Optional.empty();
    }
    int first = lines.at(broken.getContextMark()).line();
    List<String> all = text.lines().toList();
    for (int line = first; line <= at.line() && line - lines.skipped() <= all.size(); line++) {
      String written = all.get(line - 1 - lines.skipped());
      Matcher cut =
          SWALLOWED.matcher(
              QUOTED.matcher(written).replaceAll(q -> "x".repeat(q.group().length())));
      if (cut.find()) {
        return Optional.of(
            fault(
                new Place(lines.file(), line, cut.start() + 1, line, written.length() + 1),
                "The # begins a comment, and the closing bracket stands in it.",
                "If the # belongs to a text, put that text in quotes; if it begins a comment, close"
                    + " the bracket before it."));
      }
    }
    return Optional.empty();
  }

  /** The line with its text in quotes, where it is a key and a text. */
  private static Optional<String> quoted(String text, Place at, Lines lines) {
    Matcher line =
        text.lines()
            .skip(Math.max(0, at.line() - 1 - lines.skipped()))
            .findFirst()
            .map(COLON_IN_TEXT::matcher)
            .orElseGet(() -> COLON_IN_TEXT.matcher(""));
    return line.matches()
        ? Optional.of(
            line.group("key").strip().replaceFirst("^(- )+", "")
                + " \""
                + line.group("text").replace("\\", "\\\\").replace("\"", "\\\"")
                + "\"")
        : Optional.empty();
  }

  static Finding unprintable(ReaderException odd, String text, String file, int skipped) {
    int index = Math.max(0, Math.min(odd.getPosition(), text.codePointCount(0, text.length())));
    String before = text.substring(0, text.offsetByCodePoints(0, index));
    int line = 1 + skipped + (int) before.chars().filter(c -> c == '\n').count();
    int column = 1 + before.codePointCount(before.lastIndexOf('\n') + 1, before.length());
    return YamlText.fault(
        "yaml-unreadable",
        new Place(file, line, column, line, column + 1),
        String.format(
            Locale.ROOT, "The control character U+%04X stands in the text.", odd.getCodePoint()),
        REST,
        "Delete it; it was probably pasted from another program.");
  }

  static Finding unplaced(RuntimeException odd, String file) {
    String said = Optional.ofNullable(odd.getMessage()).orElse(odd.getClass().getSimpleName());
    return fault(
        Place.wholeFile(file),
        "The YAML cannot be understood (" + said.replaceAll("\\s+", " ") + ").",
        "Check the file for tags, anchors, and unusual characters.");
  }

  static Finding notRecords(Place at) {
    return fault(
        at,
        "The file does not start with a key that names a kind of record.",
        "Start it with a kind and a colon, such as kit: or spending:, and list the records below.");
  }

  static Finding notAKey(Place at) {
    return YamlText.fault(
        "yaml-not-plain",
        at,
        "A key is a list or a group of keys.",
        "It and its value are passed over.",
        "Write a plain word before the colon; a text in curly brackets needs quotes.");
  }

  static Finding keyTwice(Node.Scalar key, Place first, int depth) {
    return YamlText.fault(
        "key-twice",
        key.at(),
        "The key “"
            + key.text()
            + "” stands here for the second time; the first is on line "
            + first.line()
            + ".",
        depth == 1 || key.text().equals("id")
            ? "Only the first is read, so that nothing is replaced unseen."
            : "Which of the two is meant nobody can tell: the record is left out of every sum and"
                + " report.",
        "Delete one of the two, or join their lists.");
  }

  static Finding tooDeep(Place at) {
    return fault(
        at,
        "The nesting is deeper than any record.",
        "Remove the surplus brackets or indentation.");
  }

  static Finding notPlain(Place at, String what) {
    return YamlText.fault(
        "yaml-not-plain",
        at,
        "Here stands " + what + " of YAML, which a ledger does not use.",
        what.equals("an alias")
            ? "The value is passed over."
            : "The mark is passed over, the value is read.",
        "Write the value out in full; a text that starts with *, & or ! needs quotes.");
  }

  private static Finding fault(Place at, String what, String mend) {
    return YamlText.fault("yaml-unreadable", at, what, REST, mend);
  }
}
