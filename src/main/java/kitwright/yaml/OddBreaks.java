package kitwright.yaml;

/**
 * U+0085, U+2028 and U+2029 are line breaks in YAML 1.1, which the parser follows, but plain
 * characters in YAML 1.2 (section 5.4) and in every editor. They are put out of its sight while it
 * reads, so that places stay true, and put back into the values.
 */
record OddBreaks(boolean hides) {
  private static final String ODD = "\u0085\u2028\u2029";
  private static final String STAND_INS = "\uE085\uE828\uE829";

  /** Whether a text holds any; most hold none, and their values need no second look. */
  static OddBreaks of(String text) {
    return new OddBreaks(ODD.chars().anyMatch(odd -> text.indexOf(odd) >= 0));
  }

  String hidden(String text) {
    return hides ? exchanged(text, ODD, STAND_INS) : text;
  }

  String shown(String value) {
    return hides ? exchanged(value, STAND_INS, ODD) : value;
  }

  private static String exchanged(String text, String from, String to) {
    String result = text;
    for (int i = 0; i < from.length(); i++) {
      if (result.indexOf(from.charAt(i)) >= 0) {
        result = result.replace(from.charAt(i), to.charAt(i));
      }
    }
    return result;
  }
}
