/**
 * What in words looks private: names, sums, claims, papers, places and how to reach somebody. Reads
 * Markdown as a reader would see it, through {@code document}. It changes nothing and decides
 * nothing. Start with {@link kitwright.privacy.Overheard}.
 */
@NullMarked
package kitwright.privacy;

import org.jspecify.annotations.NullMarked;
