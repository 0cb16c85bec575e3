/**
 * Timber and plywood: what moisture, duration, grade, slope of grain and a scarf leave of the
 * clear-wood value, each a named factor. Uses {@code kitwright.mechanics}. Start with {@link
 * kitwright.mechanics.timber.Adjusted} and {@link kitwright.mechanics.timber.Plywood}.
 */
@NullMarked
package kitwright.mechanics.timber;

import org.jspecify.annotations.NullMarked;
