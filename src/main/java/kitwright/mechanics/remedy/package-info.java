/**
 * The search for the least addition that mends a part. Uses {@code kitwright.mechanics}. Start with
 * {@link kitwright.mechanics.remedy.Remedy}.
 */
@NullMarked
package kitwright.mechanics.remedy;

import org.jspecify.annotations.NullMarked;
