package kitwright.choice;

import java.util.List;
import java.util.Optional;
import kitwright.value.Quantity;

/**
 * Something at hand that a substitution takes.
 *
 * @param thing its id
 * @param qty how much is taken
 * @param left what is at hand after that, before the others have theirs; empty where nobody can say
 * @param lacking how much of it is not here; empty where enough is, or nobody can say
 * @param losers work that it was kept for or promised to, by name, which may go short
 */
public record Taken(
    String thing,
    String what,
    Quantity qty,
    Optional<Quantity> left,
    Optional<Quantity> lacking,
    List<String> losers) {
  public Taken {
    losers = List.copyOf(losers);
  }
}
