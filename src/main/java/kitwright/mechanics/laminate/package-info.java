/**
 * Laminates of fibre and resin: from cloth and fibre content to plies, from plies to stiffness and
 * first failure by classical laminate theory. Uses {@code kitwright.mechanics} and {@code
 * kitwright.mechanics.beam}. Start with {@link kitwright.mechanics.laminate.Cloth} and {@link
 * kitwright.mechanics.laminate.Laminate}.
 */
@NullMarked
package kitwright.mechanics.laminate;

import org.jspecify.annotations.NullMarked;
