/**
 * Goes over a plan as a distrustful second person would, from the records and the cuts that will be
 * told: shares no line with what made the plan. Start with {@link
 * kitwright.cutting.verify.PlanCheck}.
 */
@NullMarked
package kitwright.cutting.verify;

import org.jspecify.annotations.NullMarked;
