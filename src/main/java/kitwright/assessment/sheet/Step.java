package kitwright.assessment.sheet;

/**
 * A line of a calculation that a person can follow.
 *
 * @param what is worked out
 * @param formula in conventional notation
 * @param numbers the formula with the numbers put in
 * @param result with its unit
 */
public record Step(String what, String formula, String numbers, String result) {}
