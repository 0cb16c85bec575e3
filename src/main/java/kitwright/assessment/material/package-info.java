/**
 * What a material brings into a check: its values with their sources, as cured and as told twice,
 * and the factors that stand on them. Uses {@code sheet} alone. Start with {@link
 * kitwright.assessment.material.Materials}.
 */
@NullMarked
package kitwright.assessment.material;

import org.jspecify.annotations.NullMarked;
