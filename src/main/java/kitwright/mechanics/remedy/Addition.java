package kitwright.mechanics.remedy;

import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * One line of the menu: something of which nought to so many may be added.
 *
 * @param name as it is told to a person
 * @param most how many at most
 * @param price of each, in whatever is to be least: kg, or money; nought or more
 */
public record Addition(String name, int most, double price) {
  public Addition {
    Refuse.unless(!name.isBlank(), "an addition has a name");
    Refuse.unless(most >= 0 && most <= 1000, () -> "from zero to a thousand: " + most);
    Refuse.ifNegative("price", price);
  }

  /**
   * How many of each line of a menu the combination of that number adds; the first counts fastest.
   */
  public static int[] counts(int number, List<Addition> menu) {
    int[] counts = new int[menu.size()];
    int rest = number;
    for (int i = 0; i < counts.length; i++) {
      counts[i] = rest % (menu.get(i).most() + 1);
      rest /= menu.get(i).most() + 1;
    }
    return counts;
  }
}
