/**
 * What it costs: the budget, a line of it, its picture. Uses {@code words}. Start with {@link
 * kitwright.report.budget.BudgetReport}.
 */
@NullMarked
package kitwright.report.budget;

import org.jspecify.annotations.NullMarked;
