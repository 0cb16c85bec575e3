/**
 * Substitutions and what their checks say: calculation sheets, drawings, signatures. Uses {@code
 * words}. Start with {@link kitwright.report.strength.CalculationSheet}.
 */
@NullMarked
package kitwright.report.strength;

import org.jspecify.annotations.NullMarked;
