package kitwright.shortage;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Delivery;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.value.Ref;

/** Who owes each item of the kit. Only what comes from there answers what is claimed there. */
public final class Maker {
  private final Ledger ledger;
  private final Map<String, String> claimedFrom = new HashMap<>();
  private final Map<String, String> firstSent = new HashMap<>();

  private Maker(Ledger ledger) {
    this.ledger = ledger;
    ledger
        .claims()
        .forEach(
            claim ->
                claim.shortages().stream()
                    .flatMap(ref -> ledger.shortage(ref).stream())
                    .forEach(
                        shortage ->
                            claimedFrom.putIfAbsent(shortage.item().id(), claim.against().id())));
    ledger.deliveries().stream()
        .sorted(Comparator.comparing(Maker::day))
        .forEach(
            delivery ->
                items(delivery)
                    .forEach(item -> firstSent.putIfAbsent(item.id(), delivery.from().id())));
  }

  /** The makers of a ledger's kit. */
  public static Maker of(Ledger ledger) {
    return new Maker(ledger);
  }

  private static String day(Delivery delivery) {
    return delivery.received().or(delivery::expected).map(Object::toString).orElse("9999");
  }

  private static Stream<Ref> items(Delivery delivery) {
    return Stream.concat(
        delivery.counted().stream().map(Delivery.Counted::item),
        delivery.packed().stream().map(Delivery.Packed::item));
  }

  /**
   * The id of the party that owes an item: whom the item names; else whom a claim for it is
   * against; else who sent it first; else the only or first supplier.
   */
  public Optional<String> of(KitItem item) {
    return item.from()
        .map(Ref::id)
        .or(() -> Optional.ofNullable(claimedFrom.get(item.id())))
        .or(() -> Optional.ofNullable(firstSent.get(item.id())))
        .or(
            () ->
                ledger.parties().stream()
                    .filter(party -> party.role() == Party.Role.SUPPLIER)
                    .map(Party::id)
                    .findFirst());
  }

  /** Whether a delivery of an item comes from whom it is owed by. */
  public boolean sends(Delivery delivery, KitItem item) {
    return of(item).filter(delivery.from().id()::equals).isPresent();
  }
}
