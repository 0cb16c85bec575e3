package kitwright.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import kitwright.value.Place;

/**
 * A template, read once: text, {@code {{name}}}, {@code {{#name}} … {{/name}}} for where a slot
 * says something, {@code {{^name}} … {{/name}}} for where it does not, and {@code {{! remark }}}. A
 * tag of the last three sorts that is alone on its line takes the line with it. Nothing else is a
 * tag: a template can read nothing but its slots, and its size bounds its work.
 */
final class Template {
  private static final int DEEPEST = 20;
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final String USE =
      "Write {{name}}, {{#name}} … {{/name}}, {{^name}} … {{/name}} or {{! remark }}.";

  private final List<Piece> pieces;
  private final List<TemplateFault> faults;

  private Template(List<Piece> pieces, List<TemplateFault> faults) {
    this.pieces = pieces;
    this.faults = faults;
  }

  /** A piece of a template. */
  private interface Piece {
    void fill(Predicate<String> speaks, UnaryOperator<String> says, StringBuilder out);
  }

  private record Words(String text) implements Piece {
    @Override
    public void fill(Predicate<String> speaks, UnaryOperator<String> says, StringBuilder out) {
      out.append(text);
    }
  }

  private record Slot(String name) implements Piece {
    @Override
    public void fill(Predicate<String> speaks, UnaryOperator<String> says, StringBuilder out) {
      out.append(says.apply(name));
    }
  }

  /** Shown where the slot speaks as {@code wanted} says. */
  private record Part(String name, boolean wanted, Place at, List<Piece> inside) implements Piece {
    @Override
    public void fill(Predicate<String> speaks, UnaryOperator<String> says, StringBuilder out) {
      if (speaks.test(name) == wanted) {
        inside.forEach(piece -> piece.fill(speaks, says, out));
      }
    }
  }

  static boolean isName(String name) {
    return NAME.matcher(name).matches();
  }

  /** Reads {@code text}, which may use {@code names}. */
  static Template read(String file, String text, Set<String> names) {
    return new Reading(file, text, names).read();
  }

  /** What is wrong with it, in its order; where anything is, it is not to be filled. */
  List<TemplateFault> faults() {
    return faults;
  }

  /**
   * Its text.
   *
   * @param speaks whether a slot says anything
   * @param says what stands where a slot is named
   */
  String filled(Predicate<String> speaks, UnaryOperator<String> says) {
    StringBuilder out = new StringBuilder();
    pieces.forEach(piece -> piece.fill(speaks, says, out));
    return out.toString();
  }

  private static final class Reading {
    private final String file;
    private final String text;
    private final Set<String> names;
    private final List<TemplateFault> faults = new ArrayList<>();
    private final Deque<Part> open = new ArrayDeque<>();
    private final List<Piece> pieces = new ArrayList<>();

    private int line = 1;
    private int lineStart;
    private int copied;

    Reading(String file, String text, Set<String> names) {
      this.file = file;
      this.text = text;
      this.names = names;
    }

    Template read() {
      int from = text.indexOf("{{");
      while (from >= 0) {
        int end = text.indexOf("}}", from + 2);
        if (end < 0) {
          fault(place(from, from + 2), "This tag is not closed.", "Close it with }}.");
          break;
        }
        tag(from, end + 2, text.substring(from + 2, end));
        from = text.indexOf("{{", end + 2);
      }
      words(text.length());
      open.forEach(
          left -> fault(left.at(), "{{#" + left.name() + "}} is not closed.", closing(left)));
      faults.sort(Comparator.comparing(TemplateFault::at));
      return new Template(pieces, List.copyOf(faults));
    }

    private void tag(int from, int to, String inside) {
      String tag = inside.strip();
      char sign = tag.isEmpty() ? ' ' : tag.charAt(0);
      boolean alone = "#^/!".indexOf(sign) >= 0 && isAlone(from, to);
      words(alone ? startOfLine(from) : from);
      copied = alone ? Math.min(text.length(), endOfLine(to) + 1) : to;
      if (sign == '!') {
        return;
      }
      Place at = place(from, to);
      boolean opens = sign == '#' || sign == '^';
      String name = opens || sign == '/' ? tag.substring(1).strip() : tag;
      if (!isName(name)) {
        fault(at, "This tag means nothing here.", USE);
      } else if (sign == '/') {
        close(name, at);
      } else {
        if (!names.contains(name)) {
          fault(at, "This template knows no " + name + ".", "Use one of: " + known() + ".");
        }
        add(opens ? new Part(name, sign == '#', at, new ArrayList<>()) : new Slot(name));
      }
    }

    private void add(Piece piece) {
      (open.isEmpty() ? pieces : open.peek().inside()).add(piece);
      if (piece instanceof Part part) {
        open.push(part);
        if (open.size() == DEEPEST + 1) {
          fault(
              part.at(),
              "More than " + DEEPEST + " parts stand inside each other.",
              "Close some first.");
        }
      }
    }

    private void close(String name, Place at) {
      if (open.isEmpty()) {
        fault(
            at,
            "{{/" + name + "}} closes nothing.",
            "Take it out, or open it with {{#" + name + "}}.");
      } else if (open.peek().name().equals(name)) {
        open.pop();
      } else {
        fault(
            at,
            "{{/" + name + "}} stands where " + open.peek().name() + " is open.",
            closing(open.pop()));
      }
    }

    private static String closing(Part part) {
      return "Close it with {{/" + part.name() + "}}.";
    }

    private String known() {
      return names.isEmpty() ? "none" : String.join(", ", names);
    }

    private void fault(Place at, String what, String mend) {
      faults.add(new TemplateFault(at, what, mend));
    }

    private void words(int to) {
      if (copied < to) {
        add(new Words(text.substring(copied, to)));
      }
    }

    private boolean isAlone(int from, int to) {
      return text.substring(startOfLine(from), from).isBlank()
          && text.substring(to, endOfLine(to)).isBlank();
    }

    private int startOfLine(int from) {
      return text.lastIndexOf('\n', from - 1) + 1;
    }

    private int endOfLine(int to) {
      int end = text.indexOf('\n', to);
      return end < 0 ? text.length() : end;
    }

    /** Called with rising positions only. */
    private Place place(int from, int to) {
      for (int at = text.indexOf('\n', lineStart);
          at >= 0 && at < from;
          at = text.indexOf('\n', lineStart)) {
        lineStart = at + 1;
        line++;
      }
      int end = Math.min(to, endOfLine(from));
      int column = 1 + text.codePointCount(lineStart, from);
      return new Place(file, line, column, line, column + text.codePointCount(from, end));
    }
  }
}
