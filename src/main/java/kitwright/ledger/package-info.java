/**
 * The ledger: one record a kind with the keys it may have, the reading of a folder, and what a rule
 * is. Uses {@code yaml}, {@code finding} and {@code value}. Start with {@link
 * kitwright.ledger.Ledger} and {@link kitwright.ledger.Kind}.
 */
@NullMarked
package kitwright.ledger;

import org.jspecify.annotations.NullMarked;
