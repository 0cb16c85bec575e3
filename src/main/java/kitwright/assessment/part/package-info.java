/**
 * A section made of its materials, ready to be worked: layered or shaped, and its outline to draw.
 * Uses {@code material} and {@code sheet}; knows no load and no method. Start with {@link
 * kitwright.assessment.part.Parts}.
 */
@NullMarked
package kitwright.assessment.part;

import org.jspecify.annotations.NullMarked;
