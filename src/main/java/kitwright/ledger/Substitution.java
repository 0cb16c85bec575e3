package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Something built otherwise than drawn.
 *
 * @param shortage the shortage it answers
 * @param insteadOf what it replaces
 * @param use what it takes
 * @param grade how much hangs on it
 * @param hold the task that must not be started before it is signed: it closes the part up
 * @param withdrawn the day it was given up
 */
public record Substitution(
    String id,
    Optional<Ref> shortage,
    InsteadOf insteadOf,
    List<Take> use,
    Grade grade,
    String why,
    Optional<Proposal> proposed,
    Optional<Ref> assessment,
    List<SignOff> signOffs,
    Optional<Ref> hold,
    Optional<LocalDate> withdrawn,
    Written at)
    implements Entry {
  private static final InsteadOf NOTHING =
      new InsteadOf(Optional.empty(), Optional.empty(), Quantity.none(Unit.EACH));

  /** What is replaced: an item of the kit, or words where the kit has none. */
  public record InsteadOf(Optional<Ref> item, Optional<String> what, Quantity qty) {
    static InsteadOf read(Fields f) {
      return new InsteadOf(f.maybeRef("item"), f.maybeText("what"), f.quantity("qty", Unit.EACH));
    }
  }

  /** What is taken instead: stock, another item of the kit, or something bought. */
  public record Take(
      Optional<Ref> stock, Optional<Ref> item, Optional<Ref> spend, Quantity qty, At at) {
    static Take read(Fields f) {
      return new Take(
          f.maybeRef("stock"),
          f.maybeRef("item"),
          f.maybeRef("spend"),
          f.quantity("qty", Unit.EACH),
          At.of(f));
    }
  }

  /** Who proposed it, and when. */
  public record Proposal(Ref by, LocalDate on, At at) {
    static Proposal read(Fields f) {
      return new Proposal(f.ref("by"), f.day("on"), At.of(f));
    }
  }

  /**
   * A signature.
   *
   * @param covers the fingerprint of what was signed
   * @param conditions what the signer asks of the built sections
   * @param saw what came out of the assessment when it was signed, by measure; {@code verdict} too
   * @param statement the text that was signed, kept as a file
   * @param signature a file that the signer's own key made over that text
   * @param evidence the signer's letter, with its hash
   */
  public record SignOff(
      Ref by,
      LocalDate on,
      Optional<String> covers,
      List<Condition> conditions,
      Map<Ref, String> saw,
      List<Evidence> statement,
      List<Evidence> signature,
      List<Evidence> evidence,
      At at) {
    static SignOff read(Fields f) {
      return new SignOff(
          f.ref("by"),
          f.day("on"),
          f.maybe("covers", SignOff::fingerprint),
          f.each("conditions", Condition::read, "text"),
          f.map("saw", text -> text),
          Evidence.list(f, "statement"),
          Evidence.list(f, "signature"),
          Evidence.list(f, "evidence"),
          At.of(f));
    }

    private static String fingerprint(String text) throws Misread {
      String digits = text.strip().toLowerCase(Locale.ROOT);
      if (!digits.matches("[0-9a-f]{12,64}")) {
        throw new Misread(
            "a fingerprint has 12 to 64 hexadecimal digits",
            "copy the one that “kitwright fingerprint” shows for the record that was signed");
      }
      return digits;
    }
  }

  /**
   * A condition of a signature.
   *
   * @param section the built section it is about; empty where it is words only
   * @param atLeast measures of the section with the least they may be: {@code wall}, {@code
   *     thickness}, {@code plies} …
   */
  public record Condition(
      Optional<Ref> section, Map<Ref, Quantity> atLeast, Optional<String> text, At at) {
    static Condition read(Fields f) {
      return new Condition(
          f.maybeRef("section"),
          f.map("at-least", text -> Quantity.parse(text, Unit.ONE)),
          f.maybeText("text"),
          At.of(f));
    }
  }

  static Substitution read(Fields f) {
    return new Substitution(
        f.id(),
        f.maybeRef("for"),
        f.group("instead-of", InsteadOf::read, NOTHING),
        f.each("use", Take::read),
        f.choice("grade", Grade.class, Grade.STRUCTURAL),
        f.text("why"),
        f.maybeGroup("proposed", Proposal::read),
        f.maybeRef("assessment"),
        f.each("sign-offs", SignOff::read),
        f.maybeRef("hold"),
        f.maybeDay("withdrawn"),
        Written.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.SUBSTITUTIONS;
  }
}
