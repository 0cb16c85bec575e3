/**
 * The ledger at another commit, and what has changed since, in a builder's words. Asks the git
 * program and changes nothing. Uses the features, to compare their facts of two days. Start with
 * {@link kitwright.history.History}.
 */
@NullMarked
package kitwright.history;

import org.jspecify.annotations.NullMarked;
