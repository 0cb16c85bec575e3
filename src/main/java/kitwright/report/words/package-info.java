/**
 * What all documents say alike: sheets, cells, names, sums, cautions. No other room of reports is
 * known here. Start with {@link kitwright.report.words.Say}.
 */
@NullMarked
package kitwright.report.words;

import org.jspecify.annotations.NullMarked;
