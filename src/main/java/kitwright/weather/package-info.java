/**
 * Windows in the forecast in which glue and paint can go on, and how cold slows them. Uses no other
 * feature. Start with {@link kitwright.weather.Window}.
 */
@NullMarked
package kitwright.weather;

import org.jspecify.annotations.NullMarked;
