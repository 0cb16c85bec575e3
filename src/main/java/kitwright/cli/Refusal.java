package kitwright.cli;

import java.util.Optional;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Misread;
import kitwright.value.Nearest;
import kitwright.value.Word;

/** The command cannot be carried out: told in one line, and the exit code is 2. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Whether the same command, given once more, may well be carried out. */
  private final boolean again;

  Refusal(String what, String mend) {
    this(what, mend, false);
  }

  private Refusal(String what, String mend, boolean again) {
    super(what + " " + mend, null, false, false);
    this.again = again;
  }

  /** Somebody else wrote at the same time, and nothing of this was written. */
  static Refusal meanwhile(String what) {
    return new Refusal(what, "Give the command again.", true);
  }

  boolean isWorthAnotherTry() {
    return again;
  }

  /** A word of the command line that could not be read. */
  static Refusal of(Misread misread) {
    return new Refusal(sentence(misread.what()), sentence(misread.mend()));
  }

  /** The same, of an option. */
  static Refusal of(String option, Misread misread) {
    return new Refusal("For " + option + ": " + misread.what() + ".", sentence(misread.mend()));
  }

  /**
   * A name that nobody knows.
   *
   * @param what what is wrong
   * @param near the one that may have been meant
   * @param otherwise how to mend it where none is near
   */
  static Refusal unknown(String what, Optional<String> near, String otherwise) {
    return new Refusal(what, near.map(each -> "Did you mean “" + each + "”?").orElse(otherwise));
  }

  /**
   * An id that no record of a kind has. Where it stands in what cannot be read, nothing near is
   * offered: that is another record.
   *
   * @param otherwise how to mend it where none is near
   */
  static Refusal unknown(Ledger ledger, Kind kind, String id, String otherwise) {
    return ledger.unread().stream()
        .filter(each -> each.mayBe(kind) && each.names(id))
        .findFirst()
        .map(each -> unread(kind, id, each.named()))
        .orElseGet(
            () ->
                unknown(
                    "There is no " + kind.word() + " “" + id + "”.",
                    Nearest.to(id, ledger.ids(kind)),
                    otherwise));
  }

  private static Refusal unread(Kind kind, String id, String where) {
    return new Refusal(
        where.equals(kind.word() + " " + id)
            ? "The " + kind.word() + " “" + id + "” cannot be read."
            : "No " + kind.word() + " “" + id + "” could be read; it may stand in " + where + ".",
        "“kitwright check” tells what is wrong there; mend it, then give the command again.");
  }

  private static String sentence(String text) {
    String start = Word.capital(text);
    return start.endsWith("?") ? start : start + ".";
  }

  /** What is wrong and how to mend it. */
  String said() {
    return String.valueOf(getMessage());
  }
}
