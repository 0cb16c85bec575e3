package kitwright.cutting.solve;

import java.util.List;

/**
 * What the linear relaxation says of a node.
 *
 * @param bound no whole plan for the rest costs less; exact, not subject to rounding
 * @param columns the columns of the last linear program
 * @param master its solution
 */
record Relaxed<L>(long bound, List<Column<L>> columns, Master master) {}
