package kitwright.edit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;

/** The page of all keys, as Markdown: made from the declarations that the reader reads by. */
public final class KeyReference {
  private final StringBuilder out = new StringBuilder();

  /** Where a group’s keys have been shown, by what they are. */
  private final Map<String, String> shown = new LinkedHashMap<>();

  private KeyReference() {}

  /** The whole page. */
  public static String page() {
    KeyReference page = new KeyReference();
    page.out.append(
        """
        # The keys of the records

        Made by `kitwright keys` from what the program reads by. A file’s top keys name kinds of record; each holds one record or
        a list. **Keys in bold must be there.** A list of one may stand without brackets. Days are ISO 8601, money is
        `46.20 EUR`, a bare amount is in the build’s currency, and quantities have units.
        """);
    Layouts layouts = new Layouts();
    for (Kind kind : Kind.values()) {
      page.kind(kind.key(), kind.says(), layouts.of(kind));
    }
    return page.out.toString();
  }

  public static String of(Kind kind) {
    return of(kind.key(), kind.says(), new Layouts().of(kind));
  }

  /** The section of records of a layout. */
  public static String of(String top, String says, Layout layout) {
    KeyReference page = new KeyReference();
    page.kind(top, says, layout);
    return page.out.toString().stripLeading();
  }

  private void kind(String top, String says, Layout layout) {
    out.append("\n## ").append(top).append("\n\n");
    out.append(says.substring(0, 1).toUpperCase(Locale.ROOT)).append(says.substring(1));
    out.append(".\n");
    table(layout);
    groups(top, layout);
  }

  private void groups(String path, Layout layout) {
    for (Key key : layout.keys()) {
      if (key.inner().isPresent()) {
        String name = key.name() + " of " + path;
        String before = shown.putIfAbsent(signature(key.inner().get()), name);
        if (before == null) {
          out.append("\n### ").append(name).append('\n');
          table(key.inner().get());
          groups(name, key.inner().get());
        }
      }
    }
  }

  private static String signature(Layout layout) {
    StringBuilder all = new StringBuilder();
    layout
        .keys()
        .forEach(key -> all.append(key.name()).append('\n').append(key.says()).append('\n'));
    return all.toString();
  }

  private void table(Layout layout) {
    out.append("\n| key | what it means | holds | such as |\n|---|---|---|---|\n");
    for (Key key : layout.keys()) {
      String name = key.needed() ? "**" + key.name() + "**" : key.name();
      String holds =
          KeyWords.holds(key)
              + key.inner()
                  .map(inner -> shown.get(signature(inner)))
                  .map(before -> ": as " + before)
                  .orElse("");
      out.append("| ").append(name);
      out.append(" | ").append(cell(KeyWords.says(key)));
      out.append(" | ").append(cell(holds));
      out.append(" | `").append(cell(KeyWords.example(key))).append("` |\n");
    }
  }

  private static String cell(String text) {
    return text.replace("|", "\\|");
  }
}
