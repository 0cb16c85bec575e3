/**
 * Drawings as SVG from plain numbers: no ledger, no file. Uses {@code value} only. Start with
 * {@link kitwright.drawing.Svg}.
 */
@NullMarked
package kitwright.drawing;

import org.jspecify.annotations.NullMarked;
