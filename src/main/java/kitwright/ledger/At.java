package kitwright.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import kitwright.value.Place;
import kitwright.yaml.Node;
import org.jspecify.annotations.Nullable;

/**
 * What was written for a record or a group in one: each value, its key and its place. Of a hundred
 * thousand records a few places are ever asked, so they are kept as plain numbers.
 */
public sealed class At permits Written {
  private static final String ID = "id";

  /** Numbers of a place: first line and column, last line and column. */
  private static final int NUMBERS = 4;

  private final String file;
  private final Layout layout;

  /** The key of each entry, as a slot of the layout; below zero where the layout lacks it. */
  private final int[] slots;

  /** Kept only where an earlier day may take something from it: most of a ledger is not. */
  private final Node.@Nullable Mapping source;

  /** In the order of the entries; null where nothing stands that could be read. */
  private final @Nullable Object[] values;

  /** The record's own place, then its values' in the order of the entries. */
  private final int[] numbers;

  At(Node.Mapping source, Layout layout, int[] slots, @Nullable Object[] bySlot) {
    List<Node.Entry> entries = source.entries();
    this.file = source.at().file();
    this.layout = layout;
    this.slots = slots;
    this.values = new Object[slots.length];
    this.numbers = new int[(slots.length + 1) * NUMBERS];
    put(0, source.at());
    for (int i = 0; i < slots.length; i++) {
      put(i + 1, entries.get(i).value().at());
      values[i] = slots[i] < 0 ? null : bySlot[slots[i]];
    }
    this.source = mayBeCut() ? source : null;
  }

  /** Sees the values of a record. */
  public interface Visitor {
    /**
     * A value that was written and could be read.
     *
     * @param within the group that it stands in, then those around it
     * @param value of the key's sort; of a reference a {@link kitwright.value.Ref}; a list, a
     *     {@link kitwright.value.ThreePoint}, or a map by reference, as the key's form says
     */
    void see(List<At> within, Key key, Object value);
  }

  /** Shows every value of the record, those in its groups too. */
  public final void each(Visitor visitor) {
    each(List.of(this), visitor);
  }

  @SuppressWarnings("unchecked") // the value of a key with keys inside is their places
  private void each(List<At> within, Visitor visitor) {
    for (int i = 0; i < slots.length; i++) {
      Object value = values[i];
      if (value == null) {
        continue;
      }
      Key key = layout.key(slots[i]);
      if (key.inner().isEmpty()) {
        visitor.see(within, key, value);
      } else {
        for (At inner : (List<At>) value) {
          inner.each(inside(within, inner), visitor);
        }
      }
    }
  }

  private static List<At> inside(List<At> within, At inner) {
    List<At> all = new ArrayList<>(within.size() + 1);
    all.add(inner);
    all.addAll(within);
    return all;
  }

  /** Whether something in the record happened after a day. */
  @SuppressWarnings("unchecked") // as above
  final boolean happensAfter(LocalDate day) {
    for (int i = 0; i < slots.length; i++) {
      if (values[i] instanceof LocalDate value) {
        if (value.isAfter(day) && layout.key(slots[i]).isHappened()) {
          return true;
        }
      } else if (values[i] instanceof List<?> && layout.key(slots[i]).inner().isPresent()) {
        for (At inner : (List<At>) values[i]) {
          if (inner.happensAfter(day)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * Whether an earlier day may take something from the record and leave the rest: it holds a day
   * that has happened, besides the one from which on it is there.
   */
  @SuppressWarnings("unchecked") // as above
  private boolean mayBeCut() {
    for (int i = 0; i < slots.length; i++) {
      if (values[i] instanceof LocalDate) {
        Key key = layout.key(slots[i]);
        if (key.isHappened() && !key.isOpening()) {
          return true;
        }
      } else if (values[i] instanceof List<?> && layout.key(slots[i]).inner().isPresent()) {
        for (At inner : (List<At>) values[i]) {
          if (inner.happensAfter(LocalDate.MIN)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** What was written, where an earlier day may take something from it. */
  final Optional<Node.Mapping> source() {
    return Optional.ofNullable(source);
  }

  final Layout layout() {
    return layout;
  }

  /** The value of a key, as {@link Visitor} gets it. */
  public final Optional<Object> value(String key) {
    int index = indexOf(key);
    return index < 0 ? Optional.empty() : Optional.ofNullable(values[index]);
  }

  /** What is declared of a key. */
  public final Optional<Key> key(String name) {
    int slot = layout.slotOf(name);
    return slot < 0 ? Optional.empty() : Optional.of(layout.key(slot));
  }

  private void put(int index, Place place) {
    int from = index * NUMBERS;
    numbers[from] = place.line();
    numbers[from + 1] = place.column();
    numbers[from + 2] = place.endLine();
    numbers[from + 3] = place.endColumn();
  }

  private Place place(int index) {
    int from = index * NUMBERS;
    return new Place(file, numbers[from], numbers[from + 1], numbers[from + 2], numbers[from + 3]);
  }

  private int indexOf(String key) {
    int slot = layout.slotOf(key);
    for (int i = 0; slot >= 0 && i < slots.length; i++) {
      if (slots[i] == slot) {
        return i;
      }
    }
    return -1;
  }

  /** The place of the record: its id, or its first key. */
  public final Place record() {
    return place(indexOf(ID) + 1);
  }

  /** The place of a key's value; of the record where the key was not written. */
  public final Place of(String key) {
    int index = indexOf(key);
    return index < 0 ? record() : place(index + 1);
  }

  /** Whether the key was written with a value, read or not; behind a bare key stands none. */
  public final boolean has(String key) {
    int index = indexOf(key);
    return index >= 0 && !place(index + 1).isEmpty();
  }

  /** Whether the key was written and its value could be read. */
  final boolean isRead(String key) {
    int index = indexOf(key);
    return index >= 0 && values[index] != null;
  }

  /** Two places are equal where the same keys stand at the same spots. */
  @Override
  public final boolean equals(Object other) {
    return other instanceof At at
        && at.file.equals(file)
        && Arrays.equals(at.slots, slots)
        && Arrays.equals(at.numbers, numbers);
  }

  @Override
  public final int hashCode() {
    return 31 * file.hashCode() + Arrays.hashCode(numbers);
  }

  @Override
  public final String toString() {
    return record().toString();
  }
}
