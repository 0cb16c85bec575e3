package kitwright.cutting.solve;

/**
 * One part to be cut.
 *
 * @param mark the part
 * @param copy which of the parts of that mark, from 1
 * @param area where it lies; its length on the panel is the part's width where it is turned
 */
public record PanelPiece(String mark, int copy, Area area) {}
