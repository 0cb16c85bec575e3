package kitwright.cutting.solve;

/**
 * Parts that cannot be made from the stock.
 *
 * @param mark which
 * @param missing how many of them
 */
public record Shortfall(String mark, int missing) {}
