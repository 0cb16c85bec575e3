/**
 * Borrowed tools: who waits for what, until when, and what borrowing saved. Uses {@code network}.
 * Start with {@link LoanStanding}.
 */
@NullMarked
package kitwright.loan;

import org.jspecify.annotations.NullMarked;
