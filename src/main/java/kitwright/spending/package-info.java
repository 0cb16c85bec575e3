/**
 * What of each payment, order and refund counts on a day, and in other currencies what it is worth:
 * the one answer to what was paid, what is still to be paid and what has come back. Uses {@code
 * ledger}, {@code finding} and {@code value}. Start with {@link kitwright.spending.Books}.
 */
@NullMarked
package kitwright.spending;

import org.jspecify.annotations.NullMarked;
