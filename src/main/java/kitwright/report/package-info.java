/**
 * One class a document: what the features worked out, laid out for a reader, and written to a file.
 * Uses the features, {@code document}, {@code drawing} and {@code finding}. Start with {@link
 * kitwright.report.Writing}.
 */
@NullMarked
package kitwright.report;

import org.jspecify.annotations.NullMarked;
