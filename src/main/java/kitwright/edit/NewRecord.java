package kitwright.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layouts;
import kitwright.ledger.Meant;
import kitwright.value.Misread;

/**
 * A new record to be filled in: one file, every key with a word on what it means, those that may be
 * left out behind a {@code #}.
 */
public final class NewRecord {
  private static final Pattern KEY_LINE =
      Pattern.compile("(?m)^( {2}- | {4}| {2}|)(# )?([a-z-]+):(?= |$).*$");

  private NewRecord() {}

  /**
   * The file of a new record.
   *
   * @param about what it is about, in the user's words, for its id; may be empty
   * @param values of keys, as they shall stand; a list or group in YAML's brackets
   * @param taken whether the ledger has an id of this kind already
   * @throws Misread where a value is given for a key that the kind does not have
   */
  public static NewFile of(
      Kind kind, String about, LocalDate today, Map<String, String> values, Predicate<String> taken)
      throws Misread {
    String id = values.getOrDefault(idKey(kind), FreshId.of(kind, about, today, taken));
    String text =
        Blank.of(kind, new Layouts().of(kind), today)
            .replace(": ID\n", ": " + Scalar.of(id) + "\n");
    if (kind == Kind.BUILD) {
      text = with(kind, text, "name", about.isBlank() ? "My boat" : about);
    }
    for (Map.Entry<String, String> value : values.entrySet()) {
      text = with(kind, text, value.getKey(), value.getValue());
    }
    return new NewFile(path(kind, id, values.getOrDefault("day", today.toString())), text);
  }

  public record Filled(NewFile file, String id) {}

  /**
   * A record of what is known, and no more: a line a key, in the order of the kind.
   *
   * @param about as for {@link #of}
   * @param values of keys, as YAML on one line each
   * @param words below a day of the log
   */
  public static Filled filled(
      Kind kind,
      String about,
      LocalDate today,
      Map<String, String> values,
      String words,
      Predicate<String> taken) {
    Map<String, String> all = new LinkedHashMap<>(values);
    String id = unquoted(all.getOrDefault(idKey(kind), FreshId.of(kind, about, today, taken)));
    if (kind != Kind.LOG) {
      all.put(idKey(kind), Scalar.of(id));
    }
    StringBuilder out = new StringBuilder(kind == Kind.LOG ? "---\n" : kind.key() + ":\n");
    String indent = kind == Kind.LOG ? "" : "  - ";
    for (Key key : new Layouts().of(kind).keys()) {
      String value = all.get(key.name());
      if (value != null) {
        out.append(indent).append(key.name()).append(": ").append(value).append('\n');
        indent = kind == Kind.LOG ? "" : "    ";
      }
    }
    out.append(kind == Kind.LOG ? "---\n" + ended(words) : "");
    String day = all.getOrDefault("day", today.toString());
    return new Filled(
        new NewFile(path(kind, id, day), out.toString()), kind == Kind.LOG ? day : id);
  }

  private static String ended(String words) {
    return words.isEmpty() || words.endsWith("\n") ? words : words + "\n";
  }

  private static String unquoted(String written) {
    return written.startsWith("\"") ? written.substring(1, written.length() - 1) : written;
  }

  private static String idKey(Kind kind) {
    return kind == Kind.BUDGET ? "line" : "id";
  }

  private static String path(Kind kind, String id, String day) {
    String name = FreshId.slug(id);
    return switch (kind) {
      case BUILD -> "build.yaml";
      case LOG -> "log/" + FreshId.slug(day) + ".md";
      case FORECAST -> "forecast/" + FreshId.slug(day) + ".yaml";
      default -> kind.key() + "/" + (name.isEmpty() ? "new" : name) + ".yaml";
    };
  }

  private static String with(Kind kind, String text, String key, String value) throws Misread {
    List<String> known = new ArrayList<>();
    Matcher line = KEY_LINE.matcher(text);
    while (line.find()) {
      known.add(line.group(3));
      if (line.group(3).equals(key)) {
        String set = line.group(1) + key + ": " + written(value);
        return text.substring(0, line.start()) + set + text.substring(line.end());
      }
    }
    known.remove(kind.key());
    throw new Misread(
        "a " + kind.word() + " has no key “" + key + "”",
        Meant.by(key, known)
            .map(near -> "did you mean “" + near + "”?")
            .orElse("use one of: " + String.join(", ", known)));
  }

  /** A value of the command line as YAML on one line: brackets as they stand, text as text. */
  public static String written(String value) {
    boolean brackets =
        (value.startsWith("[") && value.endsWith("]"))
            || (value.startsWith("{") && value.endsWith("}"));
    return brackets && value.chars().noneMatch(Character::isISOControl) ? value : Scalar.of(value);
  }
}
