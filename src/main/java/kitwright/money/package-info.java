/**
 * Where the money went, where it will end and why: exchange, paid, ordered, remaining, forecast,
 * earned value, causes and range. Uses {@code shortage} and {@code network}. Start with {@link
 * kitwright.money.Spent}.
 */
@NullMarked
package kitwright.money;

import org.jspecify.annotations.NullMarked;
