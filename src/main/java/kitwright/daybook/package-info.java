/**
 * What the daily log and the dated records say of a week: hours, progress, arrivals, decisions.
 * Uses {@code ledger}, {@code finding} and {@code value}, and may use every feature before it.
 * Start with {@link kitwright.daybook.WeekLog}.
 */
@NullMarked
package kitwright.daybook;

import org.jspecify.annotations.NullMarked;
