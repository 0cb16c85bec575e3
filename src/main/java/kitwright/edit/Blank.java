package kitwright.edit;

import java.time.LocalDate;
import java.util.Locale;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;

/**
 * A record with nothing in it yet: every key that it may have with a word on what it means, those
 * that may be left out behind a {@code #}.
 */
final class Blank {
  /** The column at which words on keys begin. */
  private static final int WORDS = 32;

  private final StringBuilder out = new StringBuilder();

  private final LocalDate today;

  private Blank(LocalDate today) {
    this.today = today;
  }

  static String of(Kind kind, Layout layout, LocalDate today) {
    Blank blank = new Blank(today);
    switch (kind) {
      case LOG -> {
        blank.out.append("---\n");
        blank.keys(layout, "", "");
        blank.out.append("---\n");
      }
      case BUILD -> {
        blank.out.append("build:\n");
        blank.keys(layout, "  ", "  ");
      }
      default -> {
        blank.out.append(kind.key()).append(":\n");
        blank.keys(layout, "  - ", "    ");
      }
    }
    return blank.out.toString();
  }

  /** First what must be there or is usually said, then what may be left out. */
  private void keys(Layout layout, String first, String rest) {
    String indent = first;
    for (Key key : layout.keys()) {
      if (isWritten(key)) {
        line(indent + key.name() + ":", begins(key), words(key));
        indent = rest;
      }
    }
    for (Key key : layout.keys()) {
      if (!isWritten(key)) {
        line(rest + "# " + key.name() + ":", KeyWords.example(key), key.says());
      }
    }
  }

  private static boolean isWritten(Key key) {
    return key.needed() || key.begins().isPresent();
  }

  private String begins(Key key) {
    if (key.begins().isPresent()) {
      return key.begins()
          .get()
          .replace("IN-TWO-WEEKS", today.plusWeeks(2).toString())
          .replace("TODAY", today.toString());
    }
    if (key.inner().isPresent()) {
      return "{}";
    }
    return key.sort().words().isEmpty() ? "" : key.sort().words().get(0);
  }

  private static String words(Key key) {
    if (key.begins().filter(value -> value.equals("ID") || value.equals("TODAY")).isPresent()) {
      return "";
    }
    if (!key.sort().words().isEmpty()) {
      return String.join(", ", key.sort().words());
    }
    boolean showsItself = key.sort().word().equals("text") && key.inner().isEmpty();
    return showsItself || KeyWords.example(key).isEmpty()
        ? key.says()
        : key.says() + ", such as " + KeyWords.example(key);
  }

  private void line(String key, String value, String words) {
    String left = value.isEmpty() ? key : key + " " + value;
    out.append(
        words.isEmpty()
            ? left
            : left.length() < WORDS
                ? String.format(Locale.ROOT, "%-" + WORDS + "s# %s", left, words)
                : left + "  # " + words);
    out.append('\n');
  }
}
