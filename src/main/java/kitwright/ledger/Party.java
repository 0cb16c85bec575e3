package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Somebody who has to do with the build.
 *
 * @param maySign the grades of substitution that this party is entitled to sign, each with its days
 * @param signingKey the line of an OpenSSH public key with which this party signs statements
 * @param notice how soon after receipt a supplier wants to be told of missing parts
 * @param lead how long a supplier usually takes to deliver
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
    static Right read(Fields f) {
      return new Right(
          f.choice("grade", Grade.class, Grade.FINISH),
          f.maybeDay("since"),
          f.maybeDay("until"),
          Evidence.list(f, "letter"),
          At.of(f));
    }

    /** Whether it holds on a day. */
    public boolean holdsOn(LocalDate day) {
      return since.filter(day::isBefore).isEmpty() && until.filter(day::isAfter).isEmpty();
    }
  }

  static Party read(Fields f) {
    return new Party(
        f.id(),
        f.text("name"),
        f.choice("role", Role.class, Role.HELPER),
        f.each("may-sign", Right::read, "grade"),
        f.maybeText("signing-key"),
        f.maybeText("contact"),
        f.maybeMeasure("notice", Unit.DAY, Dimension.TIME),
        f.maybeMeasure("lead", Unit.DAY, Dimension.TIME),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.PARTIES;
  }
}
