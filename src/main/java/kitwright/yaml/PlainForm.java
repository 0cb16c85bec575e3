package kitwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import kitwright.value.Place;

/**
 * Reads the plain form that nearly every ledger is written in: groups and lists by indentation,
 * values on one line, plain or in quotes without escapes, short lists and groups in brackets,
 * comments. It takes less than it could: at the first thing that is not of this form, or that is a
 * fault, it stops, and {@link YamlText} has the YAML library read the text. What it does take, it
 * takes exactly as the library does, places included; {@code PlainFormProperties} holds the two
 * side by side.
 */
final class PlainForm {
  /** Groups with more keys, and deeper nesting, are left to the library. */
  private static final int MOST_KEYS = 64;

  private static final int DEEPEST = 12;
  private static final int LONGEST_KEY = 100;

  private final String file;
  private final Recall recall;
  private final boolean itemByItem;
  private final Handing handing;

  /** The text and a line feed behind it. */
  private final char[] text;

  private int at;
  private int line;
  private int lineStart;

  /** Of the line that {@link #at} stands in; below zero at the end of the text. */
  private int indent;

  private PlainForm(Lines lines, String text, Recall recall, boolean itemByItem, Handing handing) {
    this.file = lines.file();
    this.line = lines.skipped() + 1;
    this.recall = recall;
    this.itemByItem = itemByItem;
    this.handing = handing;
    this.text = new char[text.length() + 1];
    text.getChars(0, text.length(), this.text, 0);
    this.text[text.length()] = '\n';
  }

  /** Ends the reading: here stands what is left to the library. */
  private static final class NotPlain extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotPlain() {
      super(null, null, false, false);
    }
  }

  /** Hands on each record when the next is read, and so never one that the library would refuse. */
  private static final class Handing {
    private final BiConsumer<Node.Scalar, Node> record;
    private Runnable last = () -> {};
    private int handed = -1;

    Handing(BiConsumer<Node.Scalar, Node> record) {
      this.record = record;
    }

    void take(Node.Scalar key, Node value) {
      handOn();
      last = () -> record.accept(key, value);
    }

    void handOn() {
      last.run();
      handed++;
    }
  }

  /**
   * Reads a text and hands its records to {@code record}.
   *
   * @return empty where the whole text was read; else how many records were handed on before
   *     something stood there that is left to the library
   */
  static OptionalInt read(
      Lines lines,
      String text,
      Recall recall,
      boolean itemByItem,
      BiConsumer<Node.Scalar, Node> record) {
    Handing handing = new Handing(record);
    try {
      new PlainForm(lines, text, recall, itemByItem, handing).records();
    } catch (NotPlain left) {
      return OptionalInt.of(Math.max(0, handing.handed));
    }
    handing.handOn();
    return OptionalInt.empty();
  }

  private void records() {
    for (char each : text) {
      check(isOrdinary(each));
    }
    nextLine();
    List<Node.Entry> keys = new ArrayList<>();
    while (indent == 0) {
      Node.Scalar key = key(keys);
      keys.add(new Node.Entry(key, key));
      top(key);
    }
    // A line that stands under none of those before it ends every group and list, up to here.
    check(indent < 0);
  }

  /** Hands on the value of a top key, or item by item where it is a list. */
  private void top(Node.Scalar key) {
    Node.Scalar nothing = empty();
    if (!lineEnds()) {
      check(!itemByItem || text[at] != '[');
      handing.take(key, inLine(2));
      return;
    }
    nextLine();
    if (itemByItem && indent >= 0 && isDash()) {
      int column = indent;
      while (indent == column && isDash()) {
        handing.take(key, item(3));
      }
    } else {
      handing.take(key, below(nothing, 0, 2));
    }
  }

  /** What may stand in a text here: no control, no break but the line feed, no pair of halves. */
  private static boolean isOrdinary(char each) {
    if (each < 0xA0) {
      return (each >= ' ' && each <= '~') || each == '\n';
    }
    return each < 0xE000
        ? each < 0xD800 && each != '\u2028' && each != '\u2029'
        : each <= 0xFFFD && each != '\uFEFF';
  }

  private static void check(boolean plain) {
    if (!plain) {
      throw new NotPlain();
    }
  }

  private boolean atEnd() {
    return at >= text.length;
  }

  /** From the start of a line to the first that says something. */
  private void nextLine() {
    while (!atEnd()) {
      lineStart = at;
      blanks();
      if (text[at] != '\n' && text[at] != '#') {
        indent = at - lineStart;
        return;
      }
      skipLine();
    }
    indent = -1;
  }

  private void blanks() {
    while (text[at] == ' ') {
      at++;
    }
  }

  private void skipLine() {
    while (text[at] != '\n') {
      at++;
    }
    at++;
    line++;
  }

  /** Whether only blanks and a comment are left of the line, which are then passed. */
  private boolean lineEnds() {
    int from = at;
    blanks();
    boolean ends = text[at] == '\n' || (text[at] == '#' && at > from);
    if (ends) {
      skipLine();
    }
    return ends;
  }

  private boolean isDash() {
    return text[at] == '-' && text[at + 1] == ' ';
  }

  private Node block(int depth) {
    check(depth <= DEEPEST);
    return isDash() ? listing(depth) : mapping(depth);
  }

  private Node listing(int depth) {
    int column = at - lineStart;
    List<Node> items = new ArrayList<>();
    while (indent == column && isDash()) {
      items.add(item(depth + 1));
    }
    return new Node.Listing(items, items.get(0).at());
  }

  /** An item of a list, from its hyphen. */
  private Node item(int depth) {
    at++;
    blanks();
    return keyAhead() ? mapping(depth) : inLine(depth);
  }

  private Node mapping(int depth) {
    int column = at - lineStart;
    List<Node.Entry> entries = new ArrayList<>();
    do {
      Node.Scalar key = key(entries);
      entries.add(new Node.Entry(key, value(column, depth + 1)));
    } while (indent == column);
    return new Node.Mapping(entries, entries.get(0).key().at());
  }

  /** Whether a plain key and its colon stand here. */
  private boolean keyAhead() {
    int end = keyEnd();
    return end > at && text[end] == ':' && (text[end + 1] == ' ' || text[end + 1] == '\n');
  }

  private int keyEnd() {
    int end = at;
    if (isWord(text[end])) {
      while (isWord(text[end]) || text[end] == '-' || text[end] == '.' || text[end] == ' ') {
        end++;
      }
    }
    return end;
  }

  private static boolean isWord(char each) {
    return (each >= 'a' && each <= 'z')
        || (each >= 'A' && each <= 'Z')
        || (each >= '0' && each <= '9')
        || each == '_';
  }

  /** The key that stands here, and its colon. */
  private Node.Scalar key(List<Node.Entry> before) {
    check(keyAhead());
    int end = keyEnd();
    check(text[end - 1] != ' ' && end - at <= LONGEST_KEY && before.size() < MOST_KEYS);
    Node.Scalar key = scalar(at, end, false, at, end);
    for (Node.Entry each : before) {
      check(!each.key().text().equals(key.text()));
    }
    at = end + 1;
    return key;
  }

  private Node.Scalar scalar(int from, int to, boolean quoted, int start, int end) {
    return new Node.Scalar(
        recall.text(text, from, to),
        quoted,
        file,
        line,
        start - lineStart + 1,
        line,
        end - lineStart + 1);
  }

  /** The value of a key in a group whose keys stand in a column, and the way to the next line. */
  private Node value(int column, int depth) {
    Node.Scalar nothing = empty();
    if (!lineEnds()) {
      return inLine(depth);
    }
    nextLine();
    return below(nothing, column, depth);
  }

  private Node.Scalar empty() {
    return scalar(at, at, false, at, at);
  }

  /** What stands in the lines below a key, or nothing. */
  private Node below(Node.Scalar nothing, int column, int depth) {
    if (indent > column) {
      return block(depth);
    }
    return indent == column && isDash() ? listing(depth) : nothing;
  }

  /** A value that begins and ends on this line, or ends in a bracket further down. */
  private Node inLine(int depth) {
    Node value =
        switch (text[at]) {
          case '[', '{' -> inBrackets(depth);
          case '"', '\'' -> quoted();
          default -> plain();
        };
    check(lineEnds());
    nextLine();
    return value;
  }

  private Node.Scalar quoted() {
    char quote = text[at];
    int end = at + 1;
    while (text[end] != quote) {
      check(text[end] != '\n' && (text[end] != '\\' || quote == '\''));
      end++;
    }
    Node.Scalar value = scalar(at + 1, end, true, at, end + 1);
    at = end + 1;
    return value;
  }

  private Node.Scalar plain() {
    check(startsPlain());
    int end = at;
    while (text[end] != '\n' && (text[end] != '#' || text[end - 1] != ' ')) {
      check(text[end] != ':' || (text[end + 1] != ' ' && text[end + 1] != '\n'));
      end++;
    }
    return upTo(end);
  }

  /** The plain value from here to an end, without the blanks before that. */
  private Node.Scalar upTo(int limit) {
    int end = limit;
    while (text[end - 1] == ' ') {
      end--;
    }
    Node.Scalar value = scalar(at, end, false, at, end);
    at = end;
    return value;
  }

  private boolean startsPlain() {
    char first = text[at];
    return first == '-' ? isWord(text[at + 1]) : "?:,[]{}#&*!|>'\"%@`\n".indexOf(first) < 0;
  }

  private Node inBrackets(int depth) {
    check(depth <= DEEPEST);
    Place start = new Place(file, line, at - lineStart + 1, line, at - lineStart + 2);
    return text[at++] == '[' ? listInBrackets(depth, start) : groupInBrackets(depth, start);
  }

  private Node listInBrackets(int depth, Place start) {
    List<Node> items = new ArrayList<>();
    while (goesOn(']', items.isEmpty())) {
      items.add(valueInBrackets(depth + 1));
    }
    return new Node.Listing(items, items.isEmpty() ? start : items.get(0).at());
  }

  private Node groupInBrackets(int depth, Place start) {
    List<Node.Entry> entries = new ArrayList<>();
    while (goesOn('}', entries.isEmpty())) {
      Node.Scalar key = key(entries);
      blanks();
      entries.add(new Node.Entry(key, valueInBrackets(depth + 1)));
    }
    return new Node.Mapping(entries, entries.isEmpty() ? start : entries.get(0).key().at());
  }

  /** Whether another entry follows in brackets; passes the comma before it, or the end. */
  private boolean goesOn(char closing, boolean first) {
    blanks();
    boolean more = first ? text[at] != closing : text[at] == ',';
    check(more || text[at] == closing);
    if (!more || !first) {
      at++;
    }
    if (more) {
      blanks();
      while (text[at] == '\n') {
        check(at + 1 < text.length);
        skipLine();
        lineStart = at;
        blanks();
      }
    }
    return more;
  }

  private Node valueInBrackets(int depth) {
    return switch (text[at]) {
      case '[', '{' -> inBrackets(depth);
      case '"', '\'' -> quoted();
      default -> plainInBrackets();
    };
  }

  private Node.Scalar plainInBrackets() {
    check(startsPlain());
    int end = at;
    while (",]}".indexOf(text[end]) < 0) {
      check("\n?[{".indexOf(text[end]) < 0 && (text[end] != '#' || text[end - 1] != ' '));
      check(text[end] != ':' || isWord(text[end + 1]));
      end++;
    }
    return upTo(end);
  }
}
