/**
 * What an engineering check of a substitution says: worked out here from the sections as designed
 * and as built, or elsewhere by a person who is named. Uses {@code mechanics}. Start with {@link
 * kitwright.assessment.Judging}.
 */
@NullMarked
package kitwright.assessment;

import org.jspecify.annotations.NullMarked;
