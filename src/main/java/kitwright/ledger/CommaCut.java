package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.value.Decimal;
import kitwright.yaml.Node;

/**
 * An unquoted text in curly brackets that a comma ends, so that the rest of it looks like a key.
 *
 * @param key the key whose text is cut
 * @param first the text before the comma
 * @param rest what stands behind it, as if it were a key
 */
record CommaCut(Node.Scalar key, Node.Scalar first, Node.Scalar rest) {
  private static final Pattern ENDS_IN_DIGIT = Pattern.compile("[0-9]$");
  private static final Pattern NUMBER = Pattern.compile("[0-9][0-9.]*,[0-9][0-9.,]*");

  /** The two parts of a text, if the second entry is no entry but the rest of the first. */
  static Optional<CommaCut> of(Node.Entry before, Node.Entry entry) {
    return entry.value() instanceof Node.Scalar nothing
            && nothing.isEmpty()
            && before.value() instanceof Node.Scalar text
            && !text.quoted()
        ? Optional.of(new CommaCut(before.key(), text, entry.key()))
        : Optional.empty();
  }

  Finding finding(String owner, List<String> records) {
    return new Finding(
        "text-cut-by-comma",
        Severity.STOP,
        isNumber() ? first.at() : rest.at(),
        isNumber()
            ? "The comma in “" + first.text() + "," + rest.text() + "” cuts the number in two."
            : "The comma before “"
                + rest.text()
                + "” cuts the text of “"
                + key.text()
                + "” in two.",
        "The " + owner + " is left out of every sum and report.",
        isNumber()
            ? withoutComma()
            : "Put the text in quotes: "
                + (key.text() + ": \"" + first.text() + ", " + rest.text() + "\""),
        records);
  }

  /** Digits on both sides of the comma and no space: a decimal comma, or thousands. */
  private boolean isNumber() {
    return ENDS_IN_DIGIT.matcher(first.text()).find()
        && Character.isDigit(rest.text().codePointAt(0))
        && first.at().endLine() == rest.at().line()
        && first.at().endColumn() + 1 == rest.at().column();
  }

  /** The whole value as it was meant, with its key. */
  private String withoutComma() {
    Matcher number = NUMBER.matcher(first.text() + "," + rest.text());
    if (!number.find()) {
      return "Write a decimal with a full stop, and nothing between thousands.";
    }
    List<String> meant =
        Decimal.withoutComma(number.group()).stream()
            .map(plain -> key.text() + ": " + number.replaceFirst(plain))
            .toList();
    return switch (meant.size()) {
      case 0 -> "Write a decimal with a full stop, and nothing between thousands.";
      case 1 ->
          number.group().indexOf(',') > number.group().indexOf('.')
              ? "Write a decimal with a full stop: " + meant.get(0)
              : "Write thousands with nothing between: " + meant.get(0);
      default ->
          "Write thousands with nothing between, "
              + meant.get(0)
              + "; or a decimal with a full stop, "
              + meant.get(1);
    };
  }
}
