/**
 * Bolts and metals that mix badly, with the strengths of their standards. Uses only {@code
 * kitwright.mechanics}. Start with {@link kitwright.mechanics.fastener.BoltClass}.
 */
@NullMarked
package kitwright.mechanics.fastener;

import org.jspecify.annotations.NullMarked;
