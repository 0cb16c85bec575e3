package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Days;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * Somebody who has to do with the build.
 *
 * @param maySign the grades of substitution that this party is entitled to sign, each with its days
 * @param signingKey the line of an OpenSSH public key with which this party signs statements
 * @param notice how soon after receipt a supplier wants to be told of missing parts
 * @param isPublic whether the public may read the name
 * @param lead how long a supplier usually takes to deliver
 * @param off days on which this person cannot come
 */
public record Party(
    String id,
    String name,
    Role role,
    List<Right> maySign,
    Optional<String> signingKey,
    Optional<String> contact,
    Optional<Quantity> notice,
    Optional<Quantity> lead,
    List<Days> off,
    boolean isPublic,
    At at)
    implements Entry {
  /** What a party does. */
  public enum Role {
    SUPPLIER,
    DESIGNER,
    ENGINEER,
    SURVEYOR,
    BUILDER,
    HELPER,
    LENDER
  }

  /**
   * A right to sign. Written as the grade alone, it holds on every day and nothing shows it.
   *
   * @param since the first day on which it holds
   * @param until the last day on which it holds
   * @param letter what shows it: an appointment, a licence
   */
  public record Right(
      Grade grade,
      Optional<LocalDate> since,
      Optional<LocalDate> until,
      List<Evidence> letter,
      At at) {
    static Right read(Keys k) {
      return new Right(
          k.key("grade", "the grade", "structural").choice(Grade.class, Grade.FINISH),
          k.key("since", "the first day on which the right holds", "2025-05-01")
              .ever()
              .maybePlanned(),
          k.key("until", "the last day on which it holds", "2027-04-30")
              .notBefore("since")
              .maybePlanned(),
          k.key("letter", "what shows it: an appointment, a licence", "[evidence/licence.txt]")
              .each("file", Evidence::read),
          k.at());
    }

    public boolean holdsOn(LocalDate day) {
      return since.filter(day::isBefore).isEmpty() && until.filter(day::isAfter).isEmpty();
    }
  }

  static Party read(Keys k) {
    return new Party(
        k.id("kit-maker"),
        k.key("name", "the name as it stands in a letter", "Your kit’s maker").text(),
        k.key("role", "what this party does for the build", "supplier")
            .begins("helper")
            .choice(Role.class, Role.HELPER),
        k.key(
                "may-sign",
                "the grades of substitution that this person is entitled to release",
                "[systems, finish]")
            .each("grade", Right::read),
        k.key(
                "signing-key",
                "the line of an OpenSSH public key with which this party signs statements",
                "ssh-ed25519 AAAA…")
            .maybeText(),
        k.key("contact", "where letters go", "letters@kit-maker.example").maybeText(),
        k.key(
                "notice",
                "how soon after receipt a supplier wants to be told of missing parts: read it in"
                    + " the contract",
                "14 d")
            .between("0 d", "104 w")
            .maybeMeasure(Unit.DAY, Dimension.TIME),
        k.key("lead", "how long a supplier usually takes to deliver", "6 w")
            .between("0 d", "156 w")
            .maybeMeasure(Unit.DAY, Dimension.TIME),
        k.key("off", "days on which this person cannot come", "[2026-04-20..2026-04-24]")
            .list(Sorts.DAYS),
        k.key("public", "yes lets the public read the name", "yes").flag(),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.PARTIES;
  }
}
