/**
 * Loads along a cantilever or a beam, what they demand at each station, and where it breaks first.
 * Uses only {@code kitwright.mechanics}. Start with {@link kitwright.mechanics.load.Cantilever} and
 * {@link kitwright.mechanics.load.BreakOrder}.
 */
@NullMarked
package kitwright.mechanics.load;

import org.jspecify.annotations.NullMarked;
