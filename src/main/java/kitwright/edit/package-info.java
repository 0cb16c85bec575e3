/**
 * New records, the layout of a new ledger, and changes to what is there. Uses the features and
 * {@code yaml}. Start with {@link kitwright.edit.Starter} and {@link kitwright.edit.NewRecord}.
 */
@NullMarked
package kitwright.edit;

import org.jspecify.annotations.NullMarked;
