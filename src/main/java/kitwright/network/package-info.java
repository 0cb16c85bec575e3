/**
 * The tasks of a build as a network in working time: calendar, earliest and latest dates, float,
 * spread, what is short and when. Uses {@code weather}. Start with {@link
 * kitwright.network.Schedule}.
 */
@NullMarked
package kitwright.network;

import org.jspecify.annotations.NullMarked;
