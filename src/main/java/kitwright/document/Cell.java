package kitwright.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Money;

/**
 * A cell of a table, or a value in a sentence.
 *
 * @param shown what people read
 * @param value what it means, for other programs
 */
public record Cell(Inline shown, Value value) {
  /** What stands where there is nothing to say. */
  public static final String NONE = "–";

  /** Words that mean what they say. */
  public static Cell text(String words) {
    return new Cell(Inline.text(words), Value.of(words));
  }

  /** Any part of a line, which means its words. */
  public static Cell of(Inline shown) {
    return new Cell(shown, Value.of(PlainWords.of(shown)));
  }

  /** Words for people, and what they mean. */
  public static Cell of(String shown, Value value) {
    return new Cell(Inline.text(shown), value);
  }

  /** Nothing. */
  public static Cell none() {
    return new Cell(Inline.text(NONE), new Value.Nothing());
  }

  /** The id of a record. */
  public static Cell id(String id) {
    return new Cell(Inline.code(id), new Value.Id(id));
  }

  /** The ids of several records. */
  public static Cell ids(List<String> ids) {
    List<Inline> shown = new ArrayList<>();
    for (String id : ids) {
      if (!shown.isEmpty()) {
        shown.add(Inline.text(", "));
      }
      shown.add(Inline.code(id));
    }
    return new Cell(
        new Inline.Together(shown), new Value.Several(ids.stream().map(Cell::worded).toList()));
  }

  /** What a record is called, with its id, by which the builder finds it; its value is the id. */
  public static Cell named(String what, String id) {
    return new Cell(Inline.named(what, id), new Value.Id(id));
  }

  /** A day as ISO 8601 writes it, which never breaks and sorts as it reads. */
  public static Cell day(LocalDate day) {
    return new Cell(Inline.text(day.toString()), new Value.Day(day));
  }

  public static Cell day(Optional<LocalDate> day) {
    return day.map(Cell::day).orElseGet(Cell::none);
  }

  /** Words, where there are any. */
  public static Cell text(Optional<String> words) {
    return words.map(Cell::text).orElseGet(Cell::none);
  }

  /** A whole number. */
  public static Cell number(long number) {
    return of(Long.toString(number), new Value.Figure(BigDecimal.valueOf(number)));
  }

  /** A number as {@code shown}. */
  public static Cell number(String shown, BigDecimal number) {
    return of(shown, new Value.Figure(number));
  }

  /** Yes or no, as {@code shown}. */
  public static Cell yes(String shown, boolean so) {
    return of(shown, new Value.Yes(so));
  }

  /** Several sums, as {@code shown}. */
  public static Cell sums(String shown, List<Money> sums) {
    return of(shown, Value.of(sums));
  }

  /** Several texts, as {@code shown}. */
  public static Cell several(String shown, List<String> texts) {
    return of(shown, new Value.Several(texts.stream().map(Cell::worded).toList()));
  }

  private static Value worded(String text) {
    return new Value.Text(text);
  }

  /** The same, and for other programs a value beside it, which its words tell. */
  public Cell with(String name, Value told) {
    Map<String, Value> beside = new LinkedHashMap<>(value.beside());
    beside.put(name, told);
    return new Cell(shown, new Value.Told(plain(), beside));
  }

  /** The same, and a number beside it. */
  public Cell with(String name, long number) {
    return with(name, new Value.Figure(BigDecimal.valueOf(number)));
  }

  /** The same, and a day beside it, where there is one. */
  public Cell with(String name, Optional<LocalDate> day) {
    return day.map(on -> with(name, new Value.Day(on))).orElse(this);
  }

  /** The same, and several values beside it. */
  public Cell with(Map<String, Value> told) {
    Cell more = this;
    for (Map.Entry<String, Value> each : told.entrySet()) {
      more = more.with(each.getKey(), each.getValue());
    }
    return more;
  }

  private Value plain() {
    return value instanceof Value.Told told ? told.words() : value;
  }

  /** The same with words that weigh more. */
  public Cell strong() {
    return new Cell(Inline.strong(shown), value);
  }
}
