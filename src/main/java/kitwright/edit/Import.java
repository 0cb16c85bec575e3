package kitwright.edit;

import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntBinaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Keys;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Meant;
import kitwright.value.Decimal;
import kitwright.value.Misread;

/**
 * Rows of a list from elsewhere as records of a kind. A row whose record is there already changes
 * only what differs; a row that cannot be read is refused with its number and the reason, and the
 * others are taken all the same.
 */
public final class Import {
  /** Characters of a file; the reader takes four times as many bytes. */
  private static final int LARGEST = 8 << 20;

  private static final Pattern DAY_FIRST =
      Pattern.compile("([0-9]{1,2})\\.([0-9]{1,2})\\.((?:19|20|21)[0-9]{2})");

  private final Kind kind;
  private final Map<String, String> every;
  private final Layout layout;
  private final Keys reader;
  private final Map<String, Key> keys = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> fresh = new LinkedHashMap<>();
  private final Map<Entry, Map<String, String>> changed = new LinkedHashMap<>();
  private final List<String> refused = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private ListNumbers numbers = ListNumbers.UNSEEN;
  private int alike;

  private Import(Kind kind, Currency currency, Map<String, String> every) {
    this.kind = kind;
    this.every = every;
    this.layout = new Layouts().of(kind);
    this.reader = Keys.ofNoRecord(currency);
    new Layouts()
        .of(kind).keys().stream()
            .filter(key -> key.inner().isEmpty() && key.form() == Key.Form.ONE)
            .forEach(key -> keys.put(key.name(), key));
  }

  /**
   * @param bytes of a file of delimited text, or of a workbook whose first sheet is the list
   * @param columns the key that each column holds, by the column’s title; a column whose title is a
   *     key needs none; columns named for one key are joined, such as a number and its unit
   * @param every what each new record says of a key whose cell is empty
   * @param progress told how many rows are taken, and of how many
   * @throws Misread where no column holds a key, or two hold the same that are not both named
   */
  public static Import of(
      Kind kind,
      byte[] bytes,
      Map<String, String> columns,
      Map<String, String> every,
      Ledger ledger,
      IntBinaryOperator progress)
      throws Misread {
    Import made = new Import(kind, ledger.build().currency(), every);
    for (String key : every.keySet()) {
      made.requireKnown(key);
    }
    boolean isWorkbook = Workbook.isOne(bytes);
    String text = isWorkbook ? "" : Csv.decoded(bytes);
    char delimiter = Csv.delimiter(text);
    List<Csv.Row> rows = isWorkbook ? Workbook.of(bytes).rows() : Csv.rows(text, delimiter);
    if (rows.isEmpty()) {
      throw new Misread(
          "the list is empty", "check that it was saved as CSV, or its first sheet as xlsx");
    }
    Map<Integer, String> places = made.places(rows.get(0).cells(), columns);
    made.numbers = ListNumbers.of(rows, made.ofNumbers(places), delimiter);
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 1; i < rows.size(); i++) {
      made.take(rows.get(i), places, seen, ledger);
      int unused = progress.applyAsInt(i, rows.size() - 1);
    }
    return made;
  }

  private Map<Integer, String> places(List<String> titles, Map<String, String> columns)
      throws Misread {
    Map<Integer, String> places = new LinkedHashMap<>();
    for (int i = 0; i < titles.size(); i++) {
      String title = titles.get(i).strip();
      String key = columns.getOrDefault(title, title.toLowerCase(Locale.ROOT));
      if (columns.containsKey(title)) {
        requireKnown(key);
      }
      if (!keys.containsKey(key)) {
        if (!title.isEmpty()) {
          leftOut.add(title);
        }
        continue;
      }
      boolean joined =
          columns.containsKey(title)
              && places.entrySet().stream()
                  .filter(place -> place.getValue().equals(key))
                  .allMatch(place -> columns.containsKey(titles.get(place.getKey()).strip()));
      if (places.containsValue(key) && !joined) {
        throw new Misread(
            "two columns hold “" + key + "”",
            "name the right one with --columns; two that are both named are joined, such as a"
                + " number and its unit");
      }
      places.put(i, key);
    }
    if (places.isEmpty()) {
      throw new Misread(
          "no column’s title is a key of a " + kind.word() + ": " + String.join(", ", titles),
          "say which is which, such as --columns \"Description=what,Quantity=qty\"");
    }
    return places;
  }

  private void requireKnown(String key) throws Misread {
    if (!keys.containsKey(key)) {
      throw new Misread(
          "a " + kind.word() + " has no plain key “" + key + "”",
          Meant.by(key, List.copyOf(keys.keySet()))
              .map(near -> "did you mean “" + near + "”?")
              .orElse("use one of: " + String.join(", ", keys.keySet())));
    }
  }

  private Set<Integer> ofNumbers(Map<Integer, String> places) {
    Set<Integer> columns = new HashSet<>();
    places.forEach(
        (column, key) -> {
          if (isNumber(key(key))) {
            columns.add(column);
          }
        });
    return columns;
  }

  private static boolean isNumber(Key key) {
    return key.sort().bare().isPresent();
  }

  private void take(
      Csv.Row row, Map<Integer, String> places, Map<String, Integer> seen, Ledger ledger) {
    try {
      Map<String, String> own = cells(row, places);
      Map<String, String> cells = new LinkedHashMap<>(own);
      every.forEach(cells::putIfAbsent);
      String id = cells.getOrDefault(idKey(), made(cells));
      if (id.isEmpty()) {
        throw new Misread("the row has no id and no “what” to make one of", "fill one of them in");
      }
      Integer before = seen.putIfAbsent(id, row.line());
      if (before != null) {
        throw new Misread("“" + id + "” stands in row " + before + " already", "give it an id");
      }
      cells.put(idKey(), id);
      Optional<Entry> there = ledger.find(kind, id);
      if (there.isPresent()) {
        update(there.get(), own);
      } else {
        requireWhole(cells);
        Map<String, String> written = new LinkedHashMap<>();
        for (Map.Entry<String, String> cell : cells.entrySet()) {
          written.put(cell.getKey(), value(cell.getKey(), cell.getValue()));
        }
        fresh.put(id, written);
      }
    } catch (Misread misread) {
      refused.add("row " + row.line() + ": " + misread.what() + "; " + misread.mend());
    }
  }

  /** Of what happens on a day, the day too: the same thing is bought more than once. */
  private String made(Map<String, String> cells) {
    String about = FreshId.slug(cells.getOrDefault("what", ""));
    return about.isEmpty()
        ? ""
        : layout.keys().stream()
            .filter(key -> key.isHappened() && key.needed())
            .flatMap(key -> Stream.ofNullable(cells.get(key.name())))
            .findFirst()
            .map(day -> FreshId.on(day, kind, about))
            .orElse(about);
  }

  private String idKey() {
    return kind == Kind.BUDGET ? "line" : "id";
  }

  /** What stands in the row, by key. */
  private Map<String, String> cells(Csv.Row row, Map<Integer, String> places) throws Misread {
    int last = places.keySet().stream().mapToInt(i -> i).max().orElse(0);
    if (row.cells().size() <= last) {
      throw new Misread(
          "it has " + row.cells().size() + " cells where " + (last + 1) + " are needed",
          "look for a missing delimiter or a quote that is never closed");
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (Map.Entry<Integer, String> place : places.entrySet()) {
      String cell = row.cells().get(place.getKey()).strip();
      if (!cell.isEmpty()) {
        cells.merge(place.getValue(), cell, (first, then) -> first + " " + then);
      }
    }
    cells.replaceAll((name, cell) -> key(name).isDay() ? isoDay(cell) : cell);
    return cells;
  }

  /** Full stops part day, month and year in this order (common practice, no source). */
  private static String isoDay(String cell) {
    Matcher day = DAY_FIRST.matcher(cell);
    return day.matches()
        ? "%s-%02d-%02d"
            .formatted(day.group(3), Integer.parseInt(day.group(2)), Integer.parseInt(day.group(1)))
        : cell;
  }

  private Key key(String name) {
    Key key = keys.get(name);
    return key == null ? keys.values().iterator().next() : key;
  }

  /** The cell as YAML; a decimal comma is taken where it can mean one thing only. */
  private String value(String name, String cell) throws Misread {
    Key key = key(name);
    if (isNumber(key)) {
      numbers.requireClear(cell);
    }
    try {
      key.requireReads(cell, reader);
      requireNotBelowZero(key, cell);
      return Scalar.of(cell);
    } catch (Misread misread) {
      String plain = withoutComma(key, cell).orElseThrow(() -> misread);
      requireNotBelowZero(key, plain);
      return Scalar.of(plain);
    }
  }

  /** What check would stop at: the words beside an amount say which way it goes. */
  private static void requireNotBelowZero(Key key, String cell) throws Misread {
    if (key.isMoney() && cell.startsWith("-")) {
      throw new Misread(
          "“" + cell + "” is below zero",
          "write it above zero; what came back is a row with “refunded” as its state");
    }
  }

  private Optional<String> withoutComma(Key key, String cell) {
    String number = ListNumbers.number(cell);
    List<String> meant = Decimal.withoutComma(number);
    String rest = cell.substring(number.length());
    return meant.size() == 1 && key.reads(meant.get(0) + rest, reader)
        ? Optional.of(meant.get(0) + rest)
        : Optional.empty();
  }

  /** Most rows of a list that is sent again say what is on record: that is looked at first. */
  private void update(Entry entry, Map<String, String> cells) throws Misread {
    Map<String, String> differing = new LinkedHashMap<>();
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      String name = cell.getKey();
      if (!sameAs(entry, name, cell.getValue())) {
        String written = value(name, cell.getValue());
        Optional<String> plain = withoutComma(key(name), cell.getValue());
        if (plain.isEmpty() || !sameAs(entry, name, plain.get())) {
          differing.put(name, written);
        }
      }
    }
    if (differing.isEmpty()) {
      alike++;
    } else {
      changed.put(entry, differing);
    }
  }

  /** Whether the record says so already, in whatever unit or spelling. */
  private boolean sameAs(Entry entry, String name, String text) {
    Object there = entry.at().value(name).orElse(null);
    return there != null && key(name).means(text, there, reader);
  }

  private void requireWhole(Map<String, String> values) throws Misread {
    for (Key key : layout.keys()) {
      if (key.needed() && !values.containsKey(key.name())) {
        throw new Misread("it has no “" + key.name() + "”", "fill it in, or name its column");
      }
    }
  }

  /** Records that are new, as texts of files, none too large to be read again. */
  public List<String> freshTexts() {
    List<String> texts = new ArrayList<>();
    StringBuilder out = new StringBuilder();
    for (Map<String, String> values : fresh.values()) {
      if (out.length() > LARGEST) {
        texts.add(out.toString());
        out.setLength(0);
      }
      out.append(out.isEmpty() ? kind.key() + ":\n" : "");
      String indent = "  - ";
      for (String name : keys.keySet()) {
        String value = values.get(name);
        if (value != null) {
          out.append(indent).append(name).append(": ").append(value).append('\n');
          indent = "    ";
        }
      }
    }
    if (!out.isEmpty()) {
      texts.add(out.toString());
    }
    return texts;
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

  /** Titles of columns that nothing was taken from. */
  public List<String> leftOut() {
    return leftOut;
  }
}
