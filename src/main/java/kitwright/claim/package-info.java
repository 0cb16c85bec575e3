/**
 * What is claimed from the supplier, what it is worth, and how far the claim has come. Uses {@code
 * shortage} and {@code money}. Start with {@link kitwright.claim.Standings}.
 */
@NullMarked
package kitwright.claim;

import org.jspecify.annotations.NullMarked;
