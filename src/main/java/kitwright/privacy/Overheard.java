package kitwright.privacy;

import java.util.List;
import kitwright.ledger.Ledger;

/**
 * What in a text looks private beside the records of a ledger. It rather shows a word too many to
 * the author than one too few to the public, and it changes nothing: what goes out is the author's
 * to say. Nobody can make guessing safe: a person whom no record names is not heard.
 *
 * <p>Common practice, no source: how people write names, sums and numbers.
 */
public final class Overheard {
  private final List<Ear> ears;

  private Overheard(Ledger ledger) {
    Names names = Names.in(ledger);
    this.ears =
        List.of(
            names,
            Initials.in(ledger),
            new Papers(ledger),
            new Letters(ledger),
            new Sums(),
            new Amounts(ledger),
            Reach.in(ledger),
            new Whereabouts());
  }

  /** What looks private beside the records of a ledger. */
  public static Overheard of(Ledger ledger) {
    return new Overheard(ledger);
  }

  /** Whether two words are the same without accents, signs and case. */
  public static boolean isSame(String one, String other) {
    return !Folded.of(one).isEmpty() && Folded.of(one).equals(Folded.of(other));
  }

  /** What of a text looks private, each thing once. */
  public List<Suspicion> in(String text) {
    AsRead read = AsRead.of(text);
    Heard heard = new Heard();
    ears.forEach(ear -> ear.hear(read, heard));
    return heard.suspicions();
  }
}
