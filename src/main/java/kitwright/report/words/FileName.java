package kitwright.report.words;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** The part of a file’s name that an id makes: no two ids of a ledger share a file. */
public final class FileName {
  private FileName() {}

  /**
   * An id may hold signs that no file name may, and some disks take capitals for small letters.
   * Where another id then reads the same, one of the two is told apart by a number, whatever their
   * order in the files.
   *
   * @param all ids of the kind
   */
  public static String of(String id, List<String> all) {
    String plain = plain(id);
    Set<String> alike = new TreeSet<>();
    for (String other : all) {
      if (folded(other).equals(folded(id))) {
        alike.add(other);
      }
    }
    int at = alike.stream().filter(other -> isBefore(other, id)).toList().size();
    String name = plain;
    for (int number = at + 1; at > 0 && (name.equals(plain) || isTaken(name, all)); number++) {
      name = plain + "-" + number;
    }
    return name;
  }

  /** Those that are names of files as they stand come first. */
  private static boolean isBefore(String other, String id) {
    boolean own = plain(other).equals(other);
    boolean mine = plain(id).equals(id);
    return own == mine ? other.compareTo(id) < 0 : own;
  }

  private static boolean isTaken(String name, List<String> all) {
    return all.stream().anyMatch(other -> folded(other).equals(name.toLowerCase(Locale.ROOT)));
  }

  private static String folded(String id) {
    return plain(id).toLowerCase(Locale.ROOT);
  }

  private static String plain(String id) {
    return id.replaceAll("[^\\p{L}\\p{N}._-]", "-");
  }
}
