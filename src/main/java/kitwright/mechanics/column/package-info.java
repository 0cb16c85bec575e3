/**
 * Parts pushed along their length: masts, posts, struts. Uses {@code kitwright.mechanics} alone.
 * Start with {@link kitwright.mechanics.column.Column}.
 */
@NullMarked
package kitwright.mechanics.column;

import org.jspecify.annotations.NullMarked;
