/**
 * How a shortage stands, worked out from counts, claims and substitutions. Uses {@code kit}, {@code
 * substitution} and {@code network}. Start with {@link ShortageStandings}.
 */
@NullMarked
package kitwright.shortage;

import org.jspecify.annotations.NullMarked;
