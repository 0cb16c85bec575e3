/**
 * The words of a calculation sheet: what went in and whence, the working line by line, figures,
 * rows and the verdict. Knows no material, part or method; all the others stand on it. Start with
 * {@link kitwright.assessment.sheet.Row}.
 */
@NullMarked
package kitwright.assessment.sheet;

import org.jspecify.annotations.NullMarked;
