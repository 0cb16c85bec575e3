package kitwright.shortage;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Quantity;

/**
 * So much of a thing that is sent, ordered or promised for no day that holds. No work can be
 * planned on it.
 *
 * @param by the record, such as {@code delivery d-fourth}
 * @param said the day for which it was said, where that has passed
 */
public record Dayless(String by, Quantity qty, Optional<LocalDate> said) {}
