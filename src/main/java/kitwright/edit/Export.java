package kitwright.edit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.value.Decimal;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.ThreePoint;
import kitwright.value.Word;

/**
 * The records of a ledger as flat tables, for spreadsheets and databases. A table is a kind, or the
 * groups of a key: {@code claims}, {@code claims.events}. Its columns follow from the declarations,
 * whether or not anything is written, so that tables of many ledgers fit together. Amounts are
 * numbers, with their unit or currency in a column beside them.
 */
public final class Export {
  private final String build;
  private final List<String> columns = new ArrayList<>();
  private final List<Map<String, Object>> rows = new ArrayList<>();

  private Export(String build) {
    this.build = build;
  }

  /** The names of all tables. */
  public static List<String> tables() {
    Layouts layouts = new Layouts();
    List<String> all = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      all.add(kind.key());
      groups(kind.key(), layouts.of(kind), all);
    }
    return all;
  }

  private static void groups(String path, Layout layout, List<String> all) {
    for (Key key : layout.keys()) {
      key.inner()
          .ifPresent(
              inner -> {
                all.add(path + "." + key.name());
                groups(path + "." + key.name(), inner, all);
              });
    }
  }

  /**
   * The table of a ledger.
   *
   * @param table one of {@link #tables}
   */
  public static Export of(Ledger ledger, String table) {
    Export export = new Export(ledger.build().name());
    String[] path = table.split("\\.");
    Kind kind =
        Stream.of(Kind.values()).filter(k -> k.key().equals(path[0])).findFirst().orElseThrow();
    Layout layout = new Layouts().of(kind);
    export.columns.addAll(List.of("ledger", "record"));
    export.columns(layout, path, 1);
    for (Entry entry : ledger.entries(kind)) {
      export.rows(entry.id(), entry.at(), path, 1);
    }
    return export;
  }

  private void columns(Layout layout, String[] path, int depth) {
    if (depth < path.length) {
      layout.keys().stream()
          .filter(key -> key.name().equals(path[depth]))
          .flatMap(key -> key.inner().stream())
          .forEach(inner -> columns(inner, path, depth + 1));
      return;
    }
    for (Key key : layout.keys()) {
      if (key.inner().isEmpty()) {
        columns.addAll(parts(key));
      }
    }
  }

  /** A value’s columns: its own, with low and high of a range, and its unit or currency. */
  private static List<String> parts(Key key) {
    List<String> all = new ArrayList<>();
    if (key.form() == Key.Form.RANGE) {
      all.addAll(List.of(key.name() + ".low", key.name() + ".likely", key.name() + ".high"));
    } else {
      all.add(key.name());
    }
    if (key.form() != Key.Form.LIST && key.form() != Key.Form.NAMED) {
      switch (key.sort().word()) {
        case "money" -> all.add(key.name() + ".currency");
        case "price" -> all.addAll(List.of(key.name() + ".currency", key.name() + ".per"));
        default -> {
          if (key.sort().bare().isPresent()
              && key.sort().isNeverNegative()
              && !key.sort().isWhole()
              && !key.sort().word().equals("share")
              && !key.sort().word().equals("ratio")) {
            all.add(key.name() + ".unit");
          }
        }
      }
    }
    return all;
  }

  @SuppressWarnings("unchecked") // the value of a key with keys inside is their places
  private void rows(String record, At at, String[] path, int depth) {
    if (depth < path.length) {
      at.value(path[depth])
          .ifPresent(groups -> ((List<At>) groups).forEach(g -> rows(record, g, path, depth + 1)));
      return;
    }
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("ledger", build);
    row.put("record", record);
    at.each(
        (within, key, value) -> {
          if (within.size() == 1) {
            put(key.name(), value, row);
          }
        });
    rows.add(row);
  }

  private static void put(String name, Object value, Map<String, Object> row) {
    if (value instanceof ThreePoint<?> guess) {
      put(name, guess.likely(), row);
      Object unit = row.remove(name);
      row.put(name + ".likely", unit);
      row.put(name + ".low", number(guess.low()));
      row.put(name + ".high", number(guess.high()));
    } else if (value instanceof Money money) {
      row.put(name, money.amount());
      row.put(name + ".currency", money.currency().getCurrencyCode());
    } else if (value instanceof Price price) {
      row.put(name, price.amount());
      row.put(name + ".currency", price.currency().getCurrencyCode());
      price.per().ifPresent(unit -> row.put(name + ".per", unit.symbol()));
    } else if (value instanceof Quantity quantity) {
      row.put(name, quantity.amount());
      row.put(name + ".unit", quantity.unit().symbol());
    } else if (value instanceof Collection<?> list) {
      row.put(name, list.stream().map(Export::text).collect(Collectors.joining("; ")));
    } else if (value instanceof Map<?, ?> map) {
      row.put(
          name,
          map.entrySet().stream()
              .map(each -> each.getKey() + ": " + text(each.getValue()))
              .collect(Collectors.joining("; ")));
    } else {
      row.put(name, value instanceof Number || value instanceof Boolean ? value : text(value));
    }
  }

  private static Object number(Object value) {
    return value instanceof Money money
        ? money.amount()
        : value instanceof Quantity quantity ? quantity.amount() : value;
  }

  private static String text(Object value) {
    if (value instanceof Enum<?> word) {
      return Word.key(word);
    }
    return value instanceof BigDecimal number ? Decimal.print(number) : value.toString();
  }

  /** As CSV by RFC 4180, with a line of names; texts that begin a formula get an apostrophe. */
  public String csv() {
    StringBuilder out = new StringBuilder(Csv.row(columns));
    for (Map<String, Object> row : rows) {
      out.append(Csv.row(columns.stream().map(name -> cell(row.get(name))).toList()));
    }
    return out.toString();
  }

  private static String cell(@org.jspecify.annotations.Nullable Object value) {
    if (value == null) {
      return "";
    }
    return value instanceof Number || value instanceof Boolean
        ? text(value)
        : Csv.harmless(value.toString());
  }

  /** As JSON Lines: an object a row, every column in each, what is not written as null. */
  public String jsonLines() {
    StringWriter out = new StringWriter();
    for (Map<String, Object> row : rows) {
      try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
        json.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
        json.configure(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN, true);
        json.writeStartObject();
        for (String column : columns) {
          member(json, column, row.get(column));
        }
        json.writeEndObject();
      } catch (IOException impossible) {
        throw new UncheckedIOException("a string writer cannot fail", impossible);
      }
      out.append('\n');
    }
    return out.toString();
  }

  private static void member(
      JsonGenerator json, String name, @org.jspecify.annotations.Nullable Object value)
      throws IOException {
    json.writeFieldName(name);
    if (value == null) {
      json.writeNull();
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean yes) {
      json.writeBoolean(yes);
    } else {
      json.writeString(value.toString());
    }
  }
}
