/**
 * Timber: what a scarf leaves of its strength, and how deep another wood must be. Uses {@code
 * kitwright.mechanics}. Start with {@link kitwright.mechanics.timber.Replacement}.
 */
@NullMarked
package kitwright.mechanics.timber;

import org.jspecify.annotations.NullMarked;
