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
    static InsteadOf read(Keys k) {
      return new InsteadOf(
          k.key("item", "the item of the kit that it replaces", "plank").maybeRef(Kind.KIT),
          k.key("what", "what it replaces, where the kit has no such item", "the drawn rail")
              .maybeText(),
          k.key("qty", "how much of it", "2 each").quantity());
    }
  }

  /** What is taken instead: stock, another item of the kit, or something bought. */
  public record Take(
      Optional<Ref> stock, Optional<Ref> item, Optional<Ref> spend, Quantity qty, At at) {
    static Take read(Keys k) {
      return new Take(
          k.key("stock", "stock that it takes", "oak-plank")
              .unknown(Stock.TAKEN)
              .maybeRef(Kind.STOCK),
          k.key("item", "an item of the kit that it takes", "plank")
              .unknown(Stock.TAKEN)
              .maybeRef(Kind.KIT),
          k.key("spend", "a spend that bought what it takes", "spend-2026-02-12-screws")
              .maybeRef(Kind.SPENDING),
          k.key("qty", "how much of it", "2 each").quantity(),
          k.at());
    }
  }

  /** Who proposed it, and when. */
  public record Proposal(Ref by, LocalDate on, At at) {
    static Proposal read(Keys k) {
      return new Proposal(
          k.key("by", "who proposed it", "me").ref(Kind.PARTIES),
          k.key("on", "when", "2026-02-10").opens().happened(),
          k.at());
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
    private static final Sort<String> FINGERPRINT =
        Sort.of(
            "fingerprint",
            "^\\s*[0-9a-fA-F]{12,64}\\s*$",
            SignOff::digits,
            Sort.Trait.MAY_LOOK_LIKE_NUMBER);

    static SignOff read(Keys k) {
      return new SignOff(
          k.key("by", "who signed", "designer").ref(Kind.PARTIES),
          k.key("on", "when", "2026-02-16").notBefore("proposed.on").happened(),
          k.key("covers", "the fingerprint of what was signed", "81644cb3f5d3").maybe(FINGERPRINT),
          k.key(
                  "conditions",
                  "what the signer asks of the built sections",
                  "[\"through bolts, not screws\"]")
              .each("text", Condition::read),
          k.key(
                  "saw",
                  "what came out of the assessment when it was signed, by measure; verdict too",
                  "{verdict: passes, stiffness: 1.04}")
              .named(Sorts.WORD),
          k.key("statement", "the text that was signed, kept as a file", "[evidence/statement.txt]")
              .each("file", Evidence::read),
          k.key(
                  "signature",
                  "a file that the signer’s own key made over that text",
                  "[evidence/statement.txt.sig]")
              .each("file", Evidence::read),
          k.key("evidence", "the signer’s letter", "[evidence/letter.txt]")
              .each("file", Evidence::read),
          k.at());
    }

    /** The digits of what was signed. */
    private static String digits(String text, Keys keys) throws Misread {
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
    static Condition read(Keys k) {
      return new Condition(
          k.key("section", "the built section it is about", "sole-as-built")
              .maybeRef(Kind.SECTIONS),
          k.key(
                  "at-least",
                  "measures of the section with the least they may be",
                  "{thickness: 22 mm}")
              .named(Sorts.ANY),
          k.key("text", "the condition in words", "through bolts, not screws").maybeText(),
          k.at());
    }
  }

  static Substitution read(Keys k) {
    return new Substitution(
        k.id("sub-2026-02-10-oak"),
        k.key("for", "the shortage it answers", "short-2026-02-09-plank").maybeRef(Kind.SHORTAGES),
        k.key("instead-of", "what it replaces, and how much of it", "{item: plank, qty: 2 each}")
            .group(InsteadOf::read, NOTHING),
        k.key("use", "what it takes", "[{stock: oak-plank, qty: 2 each}]")
            .begins("[]")
            .each(Take::read),
        k.key("grade", "how much depends on it; when in doubt, structural", "finish")
            .choice(Grade.class, Grade.STRUCTURAL),
        k.key("why", "why, in a line", "oak boards lie ready and the sole carries nothing but feet")
            .text(),
        k.key("proposed", "who proposed it, and when", "{by: me, on: 2026-02-10}")
            .maybeGroup(Proposal::read),
        k.key("assessment", "its engineering check", "sole-board").maybeRef(Kind.ASSESSMENTS),
        k.key("sign-offs", "who released it; structural and systems need covers")
            .each(SignOff::read),
        k.key(
                "hold",
                "the task that closes the part up and must wait for the signature",
                "lay-sole")
            .unknown(
                "Nobody can tell which work it holds, so that it holds all work until this is put"
                    + " right or it is released.")
            .maybeRef(Kind.TASKS),
        k.key("withdrawn", "the day it was given up", "2026-03-01").maybeHappened(),
        k.written());
  }

  @Override
  public Kind kind() {
    return Kind.SUBSTITUTIONS;
  }
}
