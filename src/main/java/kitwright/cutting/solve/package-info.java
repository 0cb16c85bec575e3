/**
 * Which piece of stock yields which parts: lengths, and panels by two-stage guillotine; whole
 * tenths of a millimetre in, whole tenths out. Uses {@code numbers} alone. Start with {@link
 * kitwright.cutting.solve.BarCutter}.
 */
@NullMarked
package kitwright.cutting.solve;

import org.jspecify.annotations.NullMarked;
