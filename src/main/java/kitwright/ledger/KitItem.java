package kitwright.ledger;

import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * An item of the kit as the supplier promised it.
 *
 * @param qty promised
 * @param from the supplier, where there is more than one
 * @param lead how long it takes to get another
 * @param grade how much hangs on the part: what replaces it is of no lower grade
 */
public record KitItem(
    String id,
    String what,
    Quantity qty,
    Optional<String> crate,
    Optional<String> drawing,
    Optional<Price> price,
    Optional<Ref> material,
    Optional<Ref> from,
    Optional<Quantity> lead,
    Optional<Size> size,
    Optional<Grade> grade,
    At at)
    implements Entry {

  static KitItem read(Fields f) {
    return new KitItem(
        f.id(),
        f.text("what"),
        f.quantity("qty", Unit.EACH),
        f.maybeText("crate"),
        f.maybeText("drawing"),
        f.maybePrice("price"),
        f.maybeRef("material"),
        f.maybeRef("from"),
        f.maybeMeasure("lead", Unit.DAY, Dimension.TIME),
        f.maybeSize("size"),
        f.maybeChoice("grade", Grade.class),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.KIT;
  }
}
