package kitwright.ledger;

import java.util.Arrays;
import java.util.List;
import kitwright.value.Place;
import kitwright.yaml.Fields;
import kitwright.yaml.Node;

/**
 * Where a record and each of its values stands. Of a hundred thousand records a few are ever asked,
 * so the places are kept as plain numbers.
 */
public sealed class At permits Written {
  private static final String ID = "id";

  /** Numbers of a place: first line and column, last line and column. */
  private static final int NUMBERS = 4;

  private final String file;
  private final String[] keys;

  /** The record's own place, then its values' in the order of the keys. */
  private final int[] numbers;

  At(Node.Mapping source) {
    List<Node.Entry> entries = source.entries();
    this.file = source.at().file();
    this.keys = new String[entries.size()];
    this.numbers = new int[(keys.length + 1) * NUMBERS];
    put(0, source.at());
    for (int i = 0; i < keys.length; i++) {
      keys[i] = entries.get(i).key().text();
      put(i + 1, entries.get(i).value().at());
    }
  }

  static At of(Fields fields) {
    return new At(fields.source());
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
    for (int i = 0; i < keys.length; i++) {
      if (keys[i].equals(key)) {
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

  /** Whether the key was written. */
  public final boolean has(String key) {
    return indexOf(key) >= 0;
  }

  /** Two places are equal where the same keys stand at the same spots. */
  @Override
  public final boolean equals(Object other) {
    return other instanceof At at
        && at.file.equals(file)
        && Arrays.equals(at.keys, keys)
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
