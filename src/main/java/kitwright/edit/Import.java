package kitwright.edit;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Keys;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.value.Decimal;
import kitwright.value.Misread;
import kitwright.value.Nearest;

/**
 * Rows of a list from elsewhere as records of a kind. A row whose record is there already changes
 * only what differs; a row that cannot be read is refused with its number and the reason, and the
 * others are taken all the same.
 */
public final class Import {
  private final Kind kind;
  private final Layout layout;
  private final Keys reader;
  private final Map<String, Key> keys = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> fresh = new LinkedHashMap<>();
  private final Map<Entry, Map<String, String>> changed = new LinkedHashMap<>();
  private final List<String> refused = new ArrayList<>();
  private int alike;

  private Import(Kind kind, Currency currency) {
    this.kind = kind;
    this.layout = new Layouts().of(kind);
    this.reader = Keys.ofNoRecord(currency);
    new Layouts()
        .of(kind).keys().stream()
            .filter(key -> key.inner().isEmpty() && key.form() == Key.Form.ONE)
            .forEach(key -> keys.put(key.name(), key));
  }

  /**
   * @param bytes of a file of delimited text
   * @param columns the key that each column holds, by the column’s title; a column whose title is a
   *     key needs none
   * @throws Misread where no column holds a key, or two hold the same
   */
  public static Import of(Kind kind, byte[] bytes, Map<String, String> columns, Ledger ledger)
      throws Misread {
    Import made = new Import(kind, ledger.build().currency());
    String text = Csv.decoded(bytes);
    List<Csv.Row> rows = Csv.rows(text, Csv.delimiter(text));
    if (rows.isEmpty()) {
      throw new Misread("the list is empty", "check that it was saved as CSV");
    }
    Map<Integer, String> places = made.places(rows.get(0).cells(), columns);
    Map<String, Integer> seen = new HashMap<>();
    for (Csv.Row row : rows.subList(1, rows.size())) {
      made.take(row, places, seen, ledger);
    }
    return made;
  }

  private Map<Integer, String> places(List<String> titles, Map<String, String> columns)
      throws Misread {
    Map<Integer, String> places = new LinkedHashMap<>();
    for (int i = 0; i < titles.size(); i++) {
      String title = titles.get(i).strip();
      String key = columns.getOrDefault(title, title.toLowerCase(Locale.ROOT));
      if (columns.containsKey(title) && !keys.containsKey(key)) {
        throw new Misread(
            "a " + kind.word() + " has no plain key “" + key + "”",
            Nearest.to(key, keys.keySet())
                .map(near -> "did you mean “" + near + "”?")
                .orElse("use one of: " + String.join(", ", keys.keySet())));
      }
      if (keys.containsKey(key) && places.containsValue(key)) {
        throw new Misread("two columns hold “" + key + "”", "name the right one with --columns");
      }
      if (keys.containsKey(key)) {
        places.put(i, key);
      }
    }
    if (places.isEmpty()) {
      throw new Misread(
          "no column’s title is a key of a " + kind.word() + ": " + String.join(", ", titles),
          "say which is which, such as --columns \"Description=what,Quantity=qty\"");
    }
    return places;
  }

  private void take(
      Csv.Row row, Map<Integer, String> places, Map<String, Integer> seen, Ledger ledger) {
    try {
      Map<String, String> values = values(row, places);
      String id = values.getOrDefault(idKey(), FreshId.slug(values.getOrDefault("what", "")));
      if (id.isEmpty()) {
        throw new Misread("the row has no id and no “what” to make one of", "fill one of them in");
      }
      Integer before = seen.putIfAbsent(id, row.line());
      if (before != null) {
        throw new Misread("“" + id + "” stands in row " + before + " already", "give it an id");
      }
      values.put(idKey(), NewRecord.written(id));
      Optional<Entry> there = ledger.find(kind, id);
      if (there.isPresent()) {
        update(there.get(), values);
      } else {
        requireWhole(values);
        fresh.put(id, values);
      }
    } catch (Misread misread) {
      refused.add("row " + row.line() + ": " + misread.what() + "; " + misread.mend());
    }
  }

  private String idKey() {
    return kind == Kind.BUDGET ? "line" : "id";
  }

  private Map<String, String> values(Csv.Row row, Map<Integer, String> places) throws Misread {
    int last = places.keySet().stream().mapToInt(i -> i).max().orElse(0);
    if (row.cells().size() <= last) {
      throw new Misread(
          "it has " + row.cells().size() + " cells where " + (last + 1) + " are needed",
          "look for a missing delimiter or a quote that is never closed");
    }
    Map<String, String> values = new LinkedHashMap<>();
    for (Map.Entry<Integer, String> place : places.entrySet()) {
      String cell = row.cells().get(place.getKey()).strip();
      if (!cell.isEmpty()) {
        values.put(place.getValue(), value(keys.getOrDefault(place.getValue(), any()), cell));
      }
    }
    return values;
  }

  private Key any() {
    return keys.values().iterator().next();
  }

  /** The cell as YAML; a decimal comma is taken where it can mean one thing only. */
  private String value(Key key, String cell) throws Misread {
    Optional<String> plain = key.reads(cell, reader) ? Optional.of(cell) : withoutComma(key, cell);
    if (plain.isPresent()) {
      return NewRecord.written(plain.get());
    }
    key.requireReads(cell, reader);
    return NewRecord.written(cell);
  }

  private Optional<String> withoutComma(Key key, String cell) {
    int end = 0;
    while (end < cell.length() && "0123456789.,+-".indexOf(cell.charAt(end)) >= 0) {
      end++;
    }
    List<String> meant = Decimal.withoutComma(cell.substring(0, end));
    String rest = cell.substring(end);
    return meant.size() == 1 && key.reads(meant.get(0) + rest, reader)
        ? Optional.of(meant.get(0) + rest)
        : Optional.empty();
  }

  private void update(Entry entry, Map<String, String> values) {
    Map<String, String> differing = new LinkedHashMap<>();
    values.forEach(
        (key, written) -> {
          if (!sameAs(entry, key, written)) {
            differing.put(key, written);
          }
        });
    if (differing.isEmpty()) {
      alike++;
    } else {
      changed.put(entry, differing);
    }
  }

  /** Whether the record says so already, in whatever unit or spelling. */
  private boolean sameAs(Entry entry, String key, String written) {
    String text = written.startsWith("\"") ? written.substring(1, written.length() - 1) : written;
    return entry
        .at()
        .value(key)
        .filter(there -> keys.get(key) != null && keys.get(key).means(text, there, reader))
        .isPresent();
  }

  private void requireWhole(Map<String, String> values) throws Misread {
    for (Key key : layout.keys()) {
      if (key.needed() && !values.containsKey(key.name())) {
        throw new Misread("it has no “" + key.name() + "”", "fill it in, or name its column");
      }
    }
  }

  /** Records that are new, by id, each with its keys as YAML. */
  public String freshText() {
    if (fresh.isEmpty()) {
      return "";
    }
    StringBuilder out = new StringBuilder(kind.key()).append(":\n");
    for (Map<String, String> values : fresh.values()) {
      String indent = "  - ";
      for (Key key : keys.values()) {
        String value = values.get(key.name());
        if (value != null) {
          out.append(indent).append(key.name()).append(": ").append(value).append('\n');
          indent = "    ";
        }
      }
    }
    return out.toString();
  }

  /** How many are new. */
  public int fresh() {
    return fresh.size();
  }

  /** Records that are there and say otherwise, each with the keys that differ. */
  public Map<Entry, Map<String, String>> changed() {
    return changed;
  }

  /** How many are there already and say the same. */
  public int alike() {
    return alike;
  }

  /** Rows that could not be taken, each with its number, the reason and the mend. */
  public List<String> refused() {
    return refused;
  }
}
