/**
 * The ways out of a shortage side by side: waiting, buying, substituting, each with its whole price
 * in money, hours, days, off-cuts, strength and mass; never decided for the builder. Uses every
 * feature before it. Start with {@link kitwright.choice.Choice}.
 */
@NullMarked
package kitwright.choice;

import org.jspecify.annotations.NullMarked;
