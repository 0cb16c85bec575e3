/**
 * Cross-sections of beams, from layers or shapes, and how they bend, shear, twist and first fail.
 * Uses only {@code kitwright.mechanics}. Start with {@link kitwright.mechanics.beam.LayeredSection}
 * or {@link kitwright.mechanics.beam.Shapes}, then {@link kitwright.mechanics.beam.Bending}.
 */
@NullMarked
package kitwright.mechanics.beam;

import org.jspecify.annotations.NullMarked;
