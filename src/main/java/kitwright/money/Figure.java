package kitwright.money;

/**
 * A figure of the earned-value method, for a builder who never heard of it.
 *
 * @param name in plain words
 * @param abbreviation the usual abbreviation, such as {@code CPI}
 * @param value an amount, or a number
 * @param says one sentence that says what it means for this build
 */
public record Figure(String name, String abbreviation, String value, String says) {
  /** The value as a person reads it, with a true minus. */
  public String shown() {
    return value.replaceFirst("^-", "−");
  }
}
