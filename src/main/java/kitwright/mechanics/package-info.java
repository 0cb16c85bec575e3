/**
 * The strength of parts: SI numbers in, SI numbers out, no file, ledger or person. Uses nothing
 * else of the program. Start with {@link kitwright.mechanics.beam.Section} and {@link
 * kitwright.mechanics.beam.Bending}.
 */
@NullMarked
package kitwright.mechanics;

import org.jspecify.annotations.NullMarked;
