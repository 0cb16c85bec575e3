package kitwright.kit;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.ledger.Entry;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * So much used up on a day, as the log says, or a cut that is done.
 *
 * @param by the day of the log, or the cut
 * @param task the work it went into, where that is said
 * @param at where it is said
 */
public record Use(Entry by, LocalDate on, Quantity qty, Optional<Ref> task, Place at) {}
