package kitwright.cutting.solve;

import java.util.List;

/**
 * The best way found for each kind of stock.
 *
 * @param complete false when the work ran out, so that {@code most} proves nothing
 * @param most no way of cutting that kind is worth more than this
 * @param best a way to cut each kind of interest; its worth may fall short of {@code most}
 */
record Offers<L>(boolean complete, List<Long> most, List<Column<L>> best) {}
