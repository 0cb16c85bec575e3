package kitwright.finding;

/** Whether severity words and guilty stretches are coloured. Colour never says anything alone. */
public enum Ink {
  /** No escape sequences at all. */
  PLAIN,
  /** Colours and weights by ECMA-48, section 8.3.117 (select graphic rendition). */
  COLOUR;

  /** {@code text} in the colour of {@code severity}. */
  String severity(Severity severity, String text) {
    return switch (severity) {
      case STOP -> paint("1;31", text);
      case WARN -> paint("1;33", text);
      case NOTE -> paint("1;34", text);
    };
  }

  /** {@code text} underlined. */
  String guilty(String text) {
    return text.isEmpty() ? text : paint("4", text);
  }

  private String paint(String code, String text) {
    return this == PLAIN ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
  }
}
