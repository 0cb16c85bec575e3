package kitwright.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import kitwright.value.Place;

/**
 * The tags of a template, looked at before it is filled: {@code {{name}}}, {@code {{#name}}},
 * {@code {{^name}}}, {@code {{/name}}} and {@code {{! remark }}}. All others of the Mustache
 * language (templates within templates, changed signs, dotted names) are faults: a template can
 * read nothing but its slots, and its size bounds its work.
 */
final class Tags {
  private static final int DEEPEST = 20;
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  private static final String USE =
      "Write {{name}}, {{#name}} … {{/name}}, {{^name}} … {{/name}} or {{! remark }}.";

  private final String file;
  private final String text;
  private final Set<String> names;
  private final List<TemplateFault> faults = new ArrayList<>();
  private final Deque<Open> open = new ArrayDeque<>();

  private int line = 1;
  private int lineStart = 0;

  private record Open(String name, Place at) {}

  private Tags(String file, String text, Set<String> names) {
    this.file = file;
    this.text = text;
    this.names = names;
  }

  static boolean isName(String name) {
    return NAME.matcher(name).matches();
  }

  /** What is wrong with {@code text}, which may use {@code names}; empty where nothing is. */
  static List<TemplateFault> faults(String file, String text, Set<String> names) {
    return new Tags(file, text, names).look();
  }

  private List<TemplateFault> look() {
    int from = text.indexOf("{{");
    while (from >= 0) {
      int end = text.indexOf("}}", from + 2);
      if (end < 0) {
        fault(place(from, from + 2), "This tag is not closed.", "Close it with }}.");
        break;
      }
      if (text.charAt(from + 2) != '!') {
        tag(text.substring(from + 2, end).strip(), place(from, end + 2));
      }
      from = text.indexOf("{{", end + 2);
    }
    open.forEach(
        left -> fault(left.at(), "{{#" + left.name() + "}} is not closed.", closing(left)));
    return faults.stream().sorted(Comparator.comparing(TemplateFault::at)).toList();
  }

  private void tag(String inside, Place at) {
    char sign = inside.isEmpty() ? ' ' : inside.charAt(0);
    boolean opens = sign == '#' || sign == '^';
    String name = opens || sign == '/' ? inside.substring(1).strip() : inside;
    if (!isName(name)) {
      fault(at, "This tag means nothing here.", USE);
    } else if (sign == '/') {
      close(name, at);
    } else {
      if (!names.contains(name)) {
        fault(at, "This template knows no " + name + ".", "Use one of: " + known() + ".");
      }
      if (opens) {
        open(name, at);
      }
    }
  }

  private void open(String name, Place at) {
    open.push(new Open(name, at));
    if (open.size() == DEEPEST + 1) {
      fault(at, "More than " + DEEPEST + " parts stand inside each other.", "Close some first.");
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

  private static String closing(Open part) {
    return "Close it with {{/" + part.name() + "}}.";
  }

  private String known() {
    return names.isEmpty() ? "none" : String.join(", ", names);
  }

  private void fault(Place at, String what, String mend) {
    faults.add(new TemplateFault(at, what, mend));
  }

  /** Called with rising positions only. */
  private Place place(int from, int to) {
    for (int at = text.indexOf('\n', lineStart);
        at >= 0 && at < from;
        at = text.indexOf('\n', lineStart)) {
      lineStart = at + 1;
      line++;
    }
    int lineEnd = text.indexOf('\n', from);
    int end = lineEnd < 0 ? to : Math.min(to, lineEnd);
    int column = 1 + text.codePointCount(lineStart, from);
    return new Place(file, line, column, line, column + text.codePointCount(from, end));
  }
}
