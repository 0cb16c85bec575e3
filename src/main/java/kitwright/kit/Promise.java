package kitwright.kit;

import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Something at hand that is promised to a piece of work.
 *
 * @param to the substitution, the task or the cut that it is promised to
 * @param qty how much; empty where the record names the thing but no amount
 * @param task the work that it goes into: the task, the cut's task, the substitution's held task
 * @param at where the promise stands
 */
public record Promise(Entry to, Optional<Quantity> qty, Optional<Ref> task, Place at) {}
