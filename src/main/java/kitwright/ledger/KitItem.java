package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * An item of the kit as the supplier promised it.
 *
 * @param qty promised
 * @param from the supplier, where there is more than one
 * @param lead how long it takes to get another
 * @param grade how much hangs on the part: what replaces it is of no lower grade
 * @param allow words in its name that look private and may be read by the public
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
    List<String> allow,
    At at)
    implements Entry {

  /** What so much of it costs; empty where it has no price, or none in such a unit. */
  public Optional<Money> cost(Quantity of) {
    return price
        .map(each -> each.forOneOf(qty.unit()))
        .filter(each -> each.prices(of))
        .map(each -> each.of(of));
  }

  static KitItem read(Keys k) {
    return new KitItem(
        k.id("keel-bolts"),
        k.key("what", "as the packing list calls it", "keel bolt M12 x 120").text(),
        k.key("qty", "how much is promised, with its unit", "26 m").quantity(),
        k.key("crate", "the crate it is packed in", "C1").maybeText(),
        k.key("drawing", "the drawing that shows it", "D-04").maybeText(),
        k.key("price", "the price of one, or of one of its unit", "11.40 NZD/m").maybePrice(),
        k.key("material", "its material, an id of the table of materials", "sitka-spruce")
            .maybeRef(Kind.MATERIALS),
        k.key("from", "who supplies it, where there is more than one supplier", "kit-maker")
            .maybeRef(Kind.PARTIES),
        k.key("lead", "how long another one takes to come", "6 w")
            .between("0 d", "156 w")
            .maybeMeasure(Unit.DAY, Dimension.TIME),
        k.key("size", "the size of one piece", "1850 x 310 x 25 mm").maybeSize(),
        k.key(
                "grade",
                "how much depends on the part: what replaces it is of no lower grade",
                "structural")
            .maybeChoice(Grade.class),
        k.key("allow", "words in its name that look private and may be public", "[Pell]").texts(),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.KIT;
  }
}
