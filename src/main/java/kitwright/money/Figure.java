package kitwright.money;

/**
 * A figure of the earned-value method, for a builder who never heard of it.
 *
 * @param name in plain words
 * @param abbreviation the usual abbreviation, such as {@code CPI}
 * @param value as shown
 * @param says one sentence that says what it means for this build
 */
public record Figure(String name, String abbreviation, String value, String says) {}
