package kitwright.yaml;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Days;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * What was read lately, so that a text which stands in record after record is held once, and its
 * meaning is worked out once. It forgets rather than grows. Not to be shared between threads.
 */
public final class Recall {
  /** Longer texts are sentences, which hardly return. */
  private static final int LONGEST = 40;

  private final Shelf<String> texts = new Shelf<>();
  private final Shelf<LocalDate> days = new Shelf<>();
  private final Map<Unit, Shelf<Quantity>> quantities = new EnumMap<>(Unit.class);

  /** One value a place; a newcomer takes the place of what was there. */
  private static final class Shelf<T> {
    private static final int PLACES = 1 << 10;

    private final String[] texts = new String[PLACES];
    private final Object[] values = new Object[PLACES];

    private static int place(int hash) {
      return (hash ^ (hash >>> 10) ^ (hash >>> 20)) & (PLACES - 1);
    }

    @SuppressWarnings("unchecked") // only put fills the places
    Optional<T> get(String text) {
      int place = place(text.hashCode());
      return text.equals(texts[place]) ? Optional.of((T) values[place]) : Optional.empty();
    }

    T put(String text, T value) {
      int place = place(text.hashCode());
      texts[place] = text;
      values[place] = value;
      return value;
    }
  }

  /** The same text, as it was held before where it was. */
  String text(String text) {
    return text.length() > LONGEST ? text : texts.get(text).orElseGet(() -> texts.put(text, text));
  }

  /** A day; see {@link Days#day}. */
  public LocalDate day(String text) throws Misread {
    Optional<LocalDate> known = days.get(text);
    return known.isPresent() ? known.get() : days.put(text, Days.day(text));
  }

  /** A quantity; see {@link Quantity#parse}. */
  public Quantity quantity(String text, Unit fallback) throws Misread {
    Shelf<Quantity> shelf = quantities.computeIfAbsent(fallback, unit -> new Shelf<>());
    Optional<Quantity> known = shelf.get(text);
    return known.isPresent() ? known.get() : shelf.put(text, Quantity.parse(text, fallback));
  }
}
