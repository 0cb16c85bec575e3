/**
 * A photo for others: what its file says beside its pixels, and the pixels drawn anew without it.
 * Stands by itself. Start with {@link kitwright.report.photo.Picture}.
 */
@NullMarked
package kitwright.report.photo;

import org.jspecify.annotations.NullMarked;
