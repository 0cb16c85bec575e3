package kitwright.value;

import java.util.Optional;

/**
 * A number and the word behind it, such as {@code 26 m} or {@code 46.20 EUR}, taken apart but not
 * yet understood.
 *
 * @param number the characters that a number could be written with
 * @param word what follows; may hold spaces, never ends with one
 */
record Figure(String number, Optional<String> word) {
  /**
   * Takes a text apart; empty where it does not start with a number.
   *
   * @param digits the characters that a number may be written with, besides a sign before it
   */
  static Optional<Figure> of(String text, String digits) {
    String written = text.strip();
    int from = written.startsWith("-") || written.startsWith("+") ? 1 : 0;
    int end = from;
    while (end < written.length() && digits.indexOf(written.charAt(end)) >= 0) {
      end++;
    }
    while (end > from && (written.charAt(end - 1) == 'e' || written.charAt(end - 1) == 'E')) {
      end--; // the first letter of a word, as in 4each
    }
    if (end == from) {
      return Optional.empty();
    }
    String word = written.substring(end).strip();
    return Optional.of(
        new Figure(
            written.substring(0, end), word.isEmpty() ? Optional.empty() : Optional.of(word)));
  }
}
