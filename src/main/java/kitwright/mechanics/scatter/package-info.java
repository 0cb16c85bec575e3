/**
 * Chance: properties that scatter, and how likely the built part is below the designed one. Uses
 * {@code kitwright.mechanics}. Start with {@link kitwright.mechanics.scatter.Scatter}.
 */
@NullMarked
package kitwright.mechanics.scatter;

import org.jspecify.annotations.NullMarked;
