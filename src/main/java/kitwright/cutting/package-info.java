/**
 * The bench plan: which stock yields which parts. Uses {@code kit}, {@code ledger}, {@code finding}
 * and {@code value}, and of {@code money} the rates; its sub-rooms {@code solve} and {@code saw}
 * use none of them, and {@code verify} shares nothing with what makes a plan. Start with {@link
 * kitwright.cutting.CutPlan}.
 */
@NullMarked
package kitwright.cutting;

import org.jspecify.annotations.NullMarked;
