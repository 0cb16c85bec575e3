package kitwright.cutting.solve;

/**
 * A strip of a panel to avoid, from edge to edge.
 *
 * @param run which way the strip runs
 * @param span where it lies: over the width if it runs along, over the length if across
 */
public record Spoilt(Run run, Span span) {}
