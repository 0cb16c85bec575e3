package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.kit.Awaited;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.KitItem;
import kitwright.ledger.Spend;
import kitwright.network.Supply;
import kitwright.value.Quantity;

/** What is on its way: for a day, or for none that holds. */
final class OnItsWay {
  private final LocalDate today;
  private final Things things;
  private final Late late;
  private final Purchases purchases;
  private final Map<String, List<ShortageStanding>> open;
  private final List<Supply> supplies;
  private final Map<String, List<Dayless>> dayless = new HashMap<>();

  /**
   * @param open shortages by their items
   * @param supplies where it is put
   */
  OnItsWay(
      LocalDate today,
      Things things,
      Late late,
      Purchases purchases,
      Map<String, List<ShortageStanding>> open,
      List<Supply> supplies) {
    this.today = today;
    this.things = things;
    this.late = late;
    this.purchases = purchases;
    this.open = open;
    this.supplies = supplies;
  }

  /** What a delivery brings for shortages may be late with them; the rest with itself alone. */
  void add(KitItem item, Awaited awaited) {
    Delivery delivery = awaited.delivery();
    Quantity rest = awaited.qty();
    for (ShortageStanding standing : open.getOrDefault(item.id(), List.of())) {
      for (Coming coming : standing.coming()) {
        if (coming.by().at().equals(delivery.at()) && coming.qty().convertsTo(rest)) {
          Quantity part = rest.min(coming.qty());
          rest = rest.less(part);
          int days = Math.max(late.of(delivery.id()), lateBy(standing));
          awaited(delivery, item, part, coming.on(), days);
        }
      }
    }
    awaited(delivery, item, rest, awaited.on(today), late.of(delivery.id()));
  }

  private void awaited(
      Delivery delivery, KitItem item, Quantity qty, Optional<LocalDate> said, int days) {
    said.ifPresentOrElse(
        day -> comes(delivery.named(), item, qty, coming(day, days)),
        () -> dayless(things.of(item, qty), delivery.named(), delivery.expected()));
  }

  private void dayless(Optional<Things.Amount> amount, String by, Optional<LocalDate> said) {
    amount
        .filter(each -> each.amount().signum() > 0)
        .ifPresent(
            each ->
                dayless
                    .computeIfAbsent(each.thing().key(), any -> new ArrayList<>())
                    .add(new Dayless(by, each.thing().qty(each.amount()), said)));
  }

  /** What is on its way for no day that holds, by the key of the thing. */
  Map<String, List<Dayless>> dayless() {
    return dayless;
  }

  private void comes(String id, KitItem item, Quantity qty, LocalDate day) {
    comes(id, things.of(item, qty), day);
  }

  /** What is said for today, and is not here, comes tomorrow at the earliest. */
  private LocalDate coming(LocalDate said, int days) {
    LocalDate day = said.isAfter(today) ? said : today.plusDays(1);
    return day.plusDays(days);
  }

  int lateOfShortage(KitItem item) {
    return open.getOrDefault(item.id(), List.of()).stream().mapToInt(this::lateBy).max().orElse(0);
  }

  int lateBy(ShortageStanding standing) {
    int most = late.of(standing.shortage().id());
    for (Claim claim : standing.claims()) {
      most = Math.max(most, late.of(claim.id()));
    }
    return most;
  }

  /** A delivery on its way has its supply already. */
  void add(KitItem item, Coming coming, int lateWithIt) {
    Optional<LocalDate> day = coming.from(today);
    if (coming.how() != Coming.How.SENT && day.isPresent()) {
      int own = coming.how() == Coming.How.ORDERED ? late.of(coming.by().id()) : 0;
      comes(coming.by().named(), item, coming.qty(), day.get().plusDays(Math.max(own, lateWithIt)));
    } else if (coming.how() != Coming.How.SENT) {
      dayless(things.of(item, coming.qty()), coming.by().named(), coming.lapsed());
    }
  }

  /**
   * An order of material under way; one of an item, or of what a shortage lacks, is a purchase of
   * that item.
   */
  void add(Spend spend) {
    boolean coming =
        spend.state() != Spend.State.REFUNDED
            && spend.replaces().isEmpty()
            && spend.item().isEmpty()
            && spend.withdrawn().isEmpty()
            && spend.pays().isEmpty();
    if (coming) {
      spend.qty().stream()
          .flatMap(whole -> purchases.parts(spend, whole))
          .filter(part -> part.here().isEmpty())
          .forEach(part -> comes(spend, part));
    }
  }

  /** A part of an order may come by itself, on the day that its payment names. */
  private void comes(Spend order, Purchases.Part part) {
    Optional<Things.Amount> amount = things.of(order, part.qty());
    String by = part.spend().named();
    int days = Math.max(late.of(order.id()), late.of(part.spend().id()));
    part.expected()
        .filter(day -> !day.isBefore(today)) // one that has passed is no day any more
        .ifPresentOrElse(
            day -> comes(by, amount, coming(day, days)),
            () -> dayless(amount, by, part.expected()));
  }

  private void comes(String id, Optional<Things.Amount> amount, LocalDate day) {
    amount
        .filter(each -> each.amount().signum() > 0)
        .ifPresent(
            each ->
                supplies.add(
                    new Supply(
                        id,
                        each.thing().key(),
                        each.amount(),
                        Optional.of(day),
                        Set.of(),
                        Supply.Sureness.EXPECTED)));
  }
}
