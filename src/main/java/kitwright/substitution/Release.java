package kitwright.substitution;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;

/**
 * Which work may be started, gone on with or closed up on a day, as far as substitutions hold it,
 * and what is lacking. A substitution holds its task until it may be built: assessed as its grade
 * asks, signed by somebody entitled, and nothing signed has changed since. Everything that tells
 * whether work may go on asks here.
 */
public final class Release {
  private static final Facts.Fact<Release> FACT = new Work();

  private final Map<String, List<Standing>> byTask = new HashMap<>();

  private final Ledger ledger;

  private Release(Ledger ledger) {
    this.ledger = ledger;
  }

  /** What follows from how the substitutions stand on the day. */
  public static Release on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<Release> {
    @Override
    protected Release work(Facts day) {
      return Release.of(day.ledger(), Standings.on(day));
    }
  }

  private static Release of(Ledger ledger, Standings standings) {
    Release release = new Release(ledger);
    standings.all().stream()
        .filter(standing -> standing.state() == Standing.State.WAITING)
        .forEach(
            standing ->
                standing
                    .substitution()
                    .hold()
                    .ifPresent(
                        task ->
                            release
                                .byTask
                                .computeIfAbsent(task.id(), id -> new ArrayList<>())
                                .add(standing)));
    return release;
  }

  /** The substitutions that hold a task, in the ledger's order; none where it is released. */
  public List<Standing> holding(Task task) {
    return List.copyOf(byTask.getOrDefault(task.id(), List.of()));
  }

  /**
   * The substitution that holds a task and cannot be read, by its id: nobody knows what it says.
   */
  public Optional<String> unread(Task task) {
    return ledger.unreadHold(task);
  }

  /** Whether no substitution holds a task. */
  public boolean isGiven(Task task) {
    return !byTask.containsKey(task.id()) && unread(task).isEmpty();
  }
}
