package kitwright.substitution;

import java.util.ArrayList;
import java.util.List;
import kitwright.ledger.Substitution.SignOff;

/**
 * A sign-off as it counts today.
 *
 * @param lacks why it does not count; empty where it does
 * @param statement what it would sign if it were given today
 * @param earlierForm whether it quotes digits of the first form, which covers less
 */
public record Signature(
    SignOff signOff, List<Lack> lacks, Statement statement, boolean earlierForm) {
  public Signature {
    lacks = List.copyOf(lacks);
  }

  public boolean counts() {
    return lacks.isEmpty();
  }

  /**
   * Whether it counted on the day it was given, as far as can be told: a record that was changed
   * later does not undo that somebody entitled had looked before the part was closed up.
   */
  boolean countedWhenGiven() {
    return lacks.stream().allMatch(lack -> lack == Lack.STALE || lack == Lack.SUPERSEDED);
  }

  /**
   * Whether its signer said something else by it than that all may be built as it is: signed other
   * records, or asks for what is not met, not told or came out otherwise.
   */
  boolean saysOtherwise() {
    return lacks.contains(Lack.STALE)
        || lacks.contains(Lack.CONDITION_UNMET)
        || lacks.contains(Lack.CONDITION_UNCHECKED)
        || lacks.contains(Lack.VERDICT_TURNED);
  }

  /** The same, where its signer has signed something else since: the last word counts. */
  Signature superseded() {
    List<Lack> more = new ArrayList<>(lacks);
    more.add(Lack.SUPERSEDED);
    return new Signature(signOff, more, statement, earlierForm);
  }
}
