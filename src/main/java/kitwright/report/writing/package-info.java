/**
 * Documents to files: the templates that lay them out, the mark of what was written, the calendar.
 * Stands by itself. Start with {@link kitwright.report.writing.Writing}.
 */
@NullMarked
package kitwright.report.writing;

import org.jspecify.annotations.NullMarked;
