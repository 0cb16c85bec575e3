/**
 * How the saw parts one piece: a tree of straight cuts, each from edge to edge, worked out from
 * where the parts lie. Plain numbers, tenths of a millimetre; uses nothing else of the program.
 * Start with {@link kitwright.cutting.saw.Parting}.
 */
@NullMarked
package kitwright.cutting.saw;

import org.jspecify.annotations.NullMarked;
