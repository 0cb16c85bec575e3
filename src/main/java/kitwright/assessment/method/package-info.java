/**
 * How a part is worked under its load: laminate, panel, beam, with thrust and torque. Uses {@code
 * part}, {@code material} and {@code sheet}. Start with {@link
 * kitwright.assessment.method.SectionMethod}.
 */
@NullMarked
package kitwright.assessment.method;

import org.jspecify.annotations.NullMarked;
