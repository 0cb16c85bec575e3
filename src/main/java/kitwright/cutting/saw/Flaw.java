package kitwright.cutting.saw;

/**
 * A stretch of a piece that nothing may be made of, tenths of a millimetre from the marked end.
 *
 * @param what what is wrong there; may be empty
 */
public record Flaw(long from, long to, String what) {}
