/**
 * The bench plan: which stock yields which parts. Uses {@code kit}, {@code ledger}, {@code finding}
 * and {@code value}; its sub-room {@code solve} uses none of them. Start with {@link
 * kitwright.cutting.CutPlan}.
 */
@NullMarked
package kitwright.cutting;

import org.jspecify.annotations.NullMarked;
