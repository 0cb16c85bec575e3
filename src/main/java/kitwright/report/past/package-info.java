/**
 * What a record said before, and what changed since. Uses {@code words}. Start with {@link
 * kitwright.report.past.SinceTold}.
 */
@NullMarked
package kitwright.report.past;

import org.jspecify.annotations.NullMarked;
