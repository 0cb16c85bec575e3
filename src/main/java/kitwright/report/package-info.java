/**
 * What the features worked out, laid out for a reader: here stands the list of reports; each room
 * below holds the documents of one matter, all of them stand on {@code words}, and none on another.
 * Uses the features, {@code document} and {@code drawing}. Start with {@link
 * kitwright.report.Reports}.
 */
@NullMarked
package kitwright.report;

import org.jspecify.annotations.NullMarked;
