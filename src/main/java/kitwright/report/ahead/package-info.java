/**
 * What comes next: the weeks ahead, what is open, the page for tomorrow. Uses {@code words}. Start
 * with {@link kitwright.report.ahead.AheadReport}.
 */
@NullMarked
package kitwright.report.ahead;

import org.jspecify.annotations.NullMarked;
