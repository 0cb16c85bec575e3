/**
 * A week for the crew and for the public. Its photos are read and drawn in {@code photo}. Uses
 * {@code words}. Start with {@link kitwright.report.week.CrewWeek}.
 */
@NullMarked
package kitwright.report.week;

import org.jspecify.annotations.NullMarked;
