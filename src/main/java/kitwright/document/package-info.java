/**
 * What is told, once, and the ways to tell it: blocks and parts of lines as plain records, which
 * become Markdown (with every text of a ledger escaped), a page for a browser, lines for a terminal
 * of any width, or JSON. Uses {@code value}, and of {@code finding} the breaking of lines and the
 * layout of JSON.
 *
 * <p>A room's telling builds {@link kitwright.document.Slots} and nothing else; a template arranges
 * them. A cell says what people read and what it means; a column has a name, which JSON uses and
 * which stays:
 *
 * <pre>
 * List&lt;Column&gt; columns =
 *     columns(head("Part"), right("Length, mm").named("length-mm"), left("Cut on"));
 * Row row = row(named("keel bolt", "k-4"), number("1 850", length), day(on)); // or Cell.none()
 * Slots told = Slots.none().value("today", day(today)).table("parts", new Table("", columns, rows));
 * </pre>
 *
 * <p>{@code {{parts}}} in {@code templates/NAME.md} shows the table as Markdown or on a terminal,
 * {@code told.json()} gives {@code {"today": …, "parts": [{"part": "k-4", "length-mm": 1850, …}]}}.
 */
@NullMarked
package kitwright.document;

import org.jspecify.annotations.NullMarked;
