package kitwright.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Quantity;

/** What a cell means, whatever is shown of it: JSON writes this, people read what is shown. */
public sealed interface Value {
  /** Answers with the case at hand. */
  <R> R match(Cases<R> cases);

  /**
   * What its words tell, each by a name of its own: JSON writes it beside the words, so that no
   * program has to read numbers out of them.
   */
  default Map<String, Value> beside() {
    return Map.of();
  }

  /** An answer for each sort of value. */
  interface Cases<R> {
    R nothing();

    R text(String words);

    R id(String id);

    R number(BigDecimal number);

    R day(LocalDate day);

    R money(Money money);

    R yes(boolean so);

    R several(List<Value> values);

    R rows(Table table);

    R parts(Map<String, Value> parts);
  }

  /** What words mean: nothing where they say nothing. */
  static Value of(String words) {
    String said = words.strip();
    return said.isEmpty() || said.equals(Cell.NONE) ? new Nothing() : new Text(said);
  }

  /** {@code 6 sheet}; beside it {@code number} and {@code unit}. */
  static Value of(Quantity quantity) {
    return new Told(new Text(quantity.toString()), parts(quantity));
  }

  /**
   * {@code 11.40 NZD/m}; beside it {@code number}, {@code currency} and, where it says so, {@code
   * per}.
   */
  static Value of(Price price) {
    Map<String, Value> parts = parts(price.amount(), price.currency());
    price.per().ifPresent(unit -> parts.put("per", new Text(unit.symbol())));
    return new Told(new Text(price.toString()), parts);
  }

  /** Sums of several currencies, in their order. */
  static Value of(List<Money> sums) {
    return new Several(sums.stream().<Value>map(Cash::new).toList());
  }

  /** A quantity as number and unit. */
  static Map<String, Value> parts(Quantity quantity) {
    Map<String, Value> parts = new LinkedHashMap<>();
    parts.put("number", new Figure(quantity.amount()));
    parts.put("unit", new Text(quantity.unit().symbol()));
    return parts;
  }

  private static Map<String, Value> parts(BigDecimal number, Currency currency) {
    Map<String, Value> parts = new LinkedHashMap<>();
    parts.put("number", new Figure(number));
    parts.put("currency", new Text(currency.getCurrencyCode()));
    return parts;
  }

  /** There is nothing to say; JSON leaves it out. */
  record Nothing() implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.nothing();
    }
  }

  record Text(String words) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.text(words);
    }
  }

  record Id(String id) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.id(id);
    }
  }

  /** A number without a unit, or in the unit that its column's name says. */
  record Figure(BigDecimal number) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.number(number);
    }
  }

  record Day(LocalDate day) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.day(day);
    }
  }

  /** An amount with its currency; beside it {@code number} and {@code currency}. */
  record Cash(Money money) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.money(money);
    }

    @Override
    public Map<String, Value> beside() {
      return parts(money.amount(), money.currency());
    }
  }

  /**
   * Words with the values that they tell.
   *
   * @param words what is written by the name of the column itself
   * @param beside what is written beside them, by names of its own
   */
  record Told(Value words, Map<String, Value> beside) implements Value {
    public Told {
      beside = Collections.unmodifiableMap(new LinkedHashMap<>(beside));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return words.match(cases);
    }
  }

  record Yes(boolean so) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.yes(so);
    }
  }

  /**
   * Several values in their order; may be none. What each tells stands beside them, in the same
   * order.
   */
  record Several(List<Value> values) implements Value {
    public Several {
      values = List.copyOf(values);
    }

    @Override
    public Map<String, Value> beside() {
      Set<String> names = new LinkedHashSet<>();
      values.forEach(value -> names.addAll(value.beside().keySet()));
      Map<String, Value> all = new LinkedHashMap<>();
      for (String name : names) {
        List<Value> each = new ArrayList<>();
        values.forEach(value -> each.add(value.beside().getOrDefault(name, new Nothing())));
        all.put(name, new Several(each));
      }
      return all;
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.several(values);
    }
  }

  /** A table of its own within the cell. */
  record Rows(Table table) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.rows(table);
    }
  }

  /** Several values, each by its name, in their order. */
  record Parts(Map<String, Value> parts) implements Value {
    public Parts {
      parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.parts(parts);
    }
  }
}
