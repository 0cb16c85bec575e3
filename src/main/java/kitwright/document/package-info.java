/**
 * Documents as immutable blocks: headings, paragraphs, tables, lists, code, quotes and templates,
 * turned into Markdown by way of a commonmark tree, with every text of a ledger escaped. Uses
 * {@code value}. Start with {@link kitwright.document.Document}.
 */
@NullMarked
package kitwright.document;

import org.jspecify.annotations.NullMarked;
