/**
 * What the kit promised, what was counted good, damaged and wrong, what is at hand and to whom it
 * is promised. Uses {@code network} alone, for work that has ended. Start with {@link
 * kitwright.kit.Positions}.
 */
@NullMarked
package kitwright.kit;

import org.jspecify.annotations.NullMarked;
