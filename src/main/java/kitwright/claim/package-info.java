/**
 * What is claimed from the supplier, what it is worth, and how far the claim has come. Uses {@code
 * kit} and {@code shortage}. Start with {@link ClaimStandings}.
 */
@NullMarked
package kitwright.claim;

import org.jspecify.annotations.NullMarked;
