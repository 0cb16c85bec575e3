package kitwright.network;

import java.util.List;

/**
 * Something in the links that cannot stand; the network is computed without it.
 *
 * @param kind what is wrong
 * @param ids the tasks concerned: of a loop all its tasks in the order of work, the first one not
 *     repeated; of a bad link the earlier and the later
 */
public record NetworkFault(Kind kind, List<String> ids) {
  /** What can be wrong. */
  public enum Kind {
    /** Each task waits for the one before it, round and round. */
    LOOP,
    /** A task waits for itself. */
    SELF_LINK,
    /** A link names a task that is not in the network. */
    UNKNOWN_TASK,
    /** Two tasks share an id; the first is kept. */
    SAME_ID
  }

  public NetworkFault {
    ids = List.copyOf(ids);
  }
}
