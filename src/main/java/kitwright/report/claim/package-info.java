/**
 * Shortages and what is done about them: letters of claim, how claims stand, ways out. Uses {@code
 * words}. Start with {@link kitwright.report.claim.ClaimLetter}.
 */
@NullMarked
package kitwright.report.claim;

import org.jspecify.annotations.NullMarked;
