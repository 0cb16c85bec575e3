/**
 * A week for the crew and for the public. Uses {@code words}. Start with {@link
 * kitwright.report.week.WeekReport}.
 */
@NullMarked
package kitwright.report.week;

import org.jspecify.annotations.NullMarked;
