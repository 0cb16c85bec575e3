/**
 * The ledger: one record a kind with the keys it may have, the reading of a folder, and what a rule
 * is. Each key is declared once, where its record reads it: see {@link kitwright.ledger.Keys}. Uses
 * {@code yaml}, {@code finding} and {@code value}. Start with {@link kitwright.ledger.Ledger} and
 * {@link kitwright.ledger.Kind}.
 */
@NullMarked
package kitwright.ledger;

import org.jspecify.annotations.NullMarked;
