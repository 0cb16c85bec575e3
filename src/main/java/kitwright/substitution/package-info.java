/**
 * Whether something built otherwise than drawn may be built so: its fingerprint, its signatures,
 * who may give them, and the hold point. Uses {@code assessment} and {@code network}. Start with
 * {@link SubstitutionStandings}.
 */
@NullMarked
package kitwright.substitution;

import org.jspecify.annotations.NullMarked;
