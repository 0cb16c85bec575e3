package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Somebody who has to do with the build.
 *
 * @param maySign the grades of substitution that this party is entitled to sign
 * @param notice how soon after receipt a supplier wants to be told of missing parts
 * @param lead how long a supplier usually takes to deliver
 */
public record Party(
    String id,
    String name,
    Role role,
    List<Grade> maySign,
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

  static Party read(Fields f) {
    return new Party(
        f.id(),
        f.text("name"),
        f.choice("role", Role.class, Role.HELPER),
        f.choices("may-sign", Grade.class),
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
