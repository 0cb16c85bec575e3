/**
 * Timber: what moisture, duration, grade, slope of grain and a scarf leave of the clear-wood value,
 * each a named factor. Uses {@code kitwright.mechanics}. Start with {@link
 * kitwright.mechanics.timber.TimberFactors}.
 */
@NullMarked
package kitwright.mechanics.timber;

import org.jspecify.annotations.NullMarked;
