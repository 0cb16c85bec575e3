package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.ledger.Unread;

/**
 * Which work may be started, gone on with or closed up on a day, as far as substitutions hold it,
 * and what is lacking. A substitution holds its task until it may be built: assessed as its grade
 * asks, signed by somebody entitled, and nothing signed has changed since. Everything that tells
 * whether work may go on asks here.
 */
public final class Release {
  private static final Facts.Fact<Release> FACT =
      day -> new Release(day.ledger(), SubstitutionStandings.on(day));

  private final Ledger ledger;
  private final SubstitutionStandings standings;

  private Release(Ledger ledger, SubstitutionStandings standings) {
    this.ledger = ledger;
    this.standings = standings;
  }

  /** What follows from how the substitutions stand on the day. */
  public static Release on(Facts day) {
    return FACT.on(day);
  }

  /** The substitutions that hold a task, in the ledger's order; none where it is released. */
  public List<SubstitutionStanding> holding(Task task) {
    return standings.holding(task.id()).stream()
        .filter(standing -> standing.state() == SubstitutionStanding.State.WAITING)
        .toList();
  }

  /** What cannot be read and may be a substitution that holds a task. */
  public Optional<Unread> unread(Task task) {
    return ledger.unreadHold(task);
  }

  /** Whether no substitution holds a task. */
  public boolean isGiven(Task task) {
    return holding(task).isEmpty() && unread(task).isEmpty();
  }
}
