/**
 * The small values of the trade: money, quantity, unit, size, days, place in a file. Uses nothing
 * else of the program. Start with {@link kitwright.value.Quantity}.
 */
@NullMarked
package kitwright.value;

import org.jspecify.annotations.NullMarked;
