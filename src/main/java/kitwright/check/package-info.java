/**
 * The one list of rules, and their running. Uses the features. Start with {@link
 * kitwright.check.Check}.
 */
@NullMarked
package kitwright.check;

import org.jspecify.annotations.NullMarked;
