/**
 * What an engineering check of a substitution says: worked out here from the sections as designed
 * and as built, or elsewhere by a person who is named. Here stands the checking itself; below it,
 * one way: {@code sheet} (what a calculation sheet says) from which {@code material} takes, from
 * both {@code part}, from these {@code method} and {@code joint}. Uses {@code mechanics}. Start
 * with {@link kitwright.assessment.Judging}.
 */
@NullMarked
package kitwright.assessment;

import org.jspecify.annotations.NullMarked;
