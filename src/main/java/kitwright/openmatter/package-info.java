/**
 * Every open matter of the build with the day on which it begins to stop work, the days of float
 * left, whom it waits for and what to do next. Uses {@code shortage}, {@code claim}, {@code
 * substitution}, {@code loan}, {@code network} and what stands below them. Start with {@link
 * kitwright.openmatter.OpenMatters}.
 */
@NullMarked
package kitwright.openmatter;

import org.jspecify.annotations.NullMarked;
