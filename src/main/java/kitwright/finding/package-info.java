/**
 * A fault that a person can mend: what, where, what follows, how to put it right; and its
 * renderings as text, JSON and SARIF. Uses {@code value}. Start with {@link
 * kitwright.finding.Finding}.
 */
@NullMarked
package kitwright.finding;

import org.jspecify.annotations.NullMarked;
