/**
 * Rectangular plates under even pressure, single skin or sandwich, on simple supports or clamped.
 * Uses {@code kitwright.mechanics} and {@code kitwright.mechanics.laminate}. Start with {@link
 * kitwright.mechanics.panel.Panel}.
 */
@NullMarked
package kitwright.mechanics.panel;

import org.jspecify.annotations.NullMarked;
