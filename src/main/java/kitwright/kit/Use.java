package kitwright.kit;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * So much used up on a day, as the log says.
 *
 * @param task the work it went into, where the log says so
 * @param at where the log says it
 */
public record Use(LocalDate on, Quantity qty, Optional<Ref> task, Place at) {}
