package kitwright.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.value.Money;

/** What a cell means, whatever is shown of it: JSON writes this, people read what is shown. */
public sealed interface Value {
  /** Answers with the case at hand. */
  <R> R match(Cases<R> cases);

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

  /** An amount with its currency. */
  record Cash(Money money) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.money(money);
    }
  }

  record Yes(boolean so) implements Value {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.yes(so);
    }
  }

  /** Several values in their order; may be none. */
  record Several(List<Value> values) implements Value {
    public Several {
      values = List.copyOf(values);
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
