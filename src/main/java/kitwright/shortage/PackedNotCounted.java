package kitwright.shortage;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Fires where a delivery note says more than was counted in the delivery, the rest is still
 * missing, and nobody has written so to the sender.
 */
public final class PackedNotCounted implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Set<String> unrecorded = new HashSet<>();
    CountedShortUnrecorded.all(day).forEach(b -> unrecorded.add(b.position().item().id()));
    for (Delivery delivery : day.ledger().deliveries()) {
      Optional<LocalDate> came = delivery.received();
      if (came.isPresent() && !delivery.counted().isEmpty()) {
        Map<String, Ref> items = new LinkedHashMap<>();
        delivery.packed().forEach(line -> items.putIfAbsent(line.item().id(), line.item()));
        items.keySet().removeAll(unrecorded);
        items.values().forEach(item -> examine(delivery, item, came.get(), day, out));
      }
    }
  }

  private void examine(Delivery delivery, Ref item, LocalDate came, Facts day, Findings out) {
    Optional<Balance> balance = ShortageStandings.on(day).balance(item);
    List<Delivery.Counted> counted =
        delivery.counted().stream().filter(line -> line.item().id().equals(item.id())).toList();
    if (balance.isEmpty() || counted.isEmpty()) {
      return; // what is not counted yet is told as such
    }
    Quantity none = Quantity.none(balance.get().position().promised().unit());
    Quantity packed =
        sum(
            delivery.packed().stream()
                .filter(line -> line.item().id().equals(item.id()))
                .map(Delivery.Packed::qty),
            none);
    Quantity found = sum(counted.stream().map(Delivery.Counted::qty), none);
    Quantity lacks = packed.less(found).min(balance.get().open());
    if (!Tiny.is(lacks, packed) && !isSaid(balance.get(), came, lacks)) {
      out.add(finding(delivery, item, counted, new Lack(packed, found, lacks), balance.get(), day));
    }
  }

  private record Lack(Quantity packed, Quantity found, Quantity lacks) {}

  private static Quantity sum(Stream<Quantity> all, Quantity none) {
    return all.filter(none::convertsTo).reduce(none, Quantity::plus);
  }

  /** Whether it is recorded, claimed or written about since the delivery came. */
  private static boolean isSaid(Balance balance, LocalDate came, Quantity lacks) {
    Quantity recorded =
        sum(
            balance.shortages().stream()
                .map(ShortageStanding::shortage)
                .filter(each -> !each.found().isBefore(came))
                .map(each -> each.qty()),
            Quantity.none(lacks.unit()));
    return recorded.compareAmount(lacks) >= 0
        || balance.shortages().stream()
            .filter(ShortageStanding::isOpen)
            .flatMap(each -> each.claims().stream())
            .anyMatch(claim -> isWrittenSince(claim, came));
  }

  private static boolean isWrittenSince(Claim claim, LocalDate came) {
    boolean settled =
        claim.settled().isPresent()
            || claim.asked().stream().allMatch(line -> !line.settled().isEmpty());
    return !settled
        && (claim.sent().filter(on -> on.isBefore(came)).isEmpty()
            || claim.events().stream().anyMatch(event -> !event.on().isBefore(came)));
  }

  private Finding finding(
      Delivery delivery,
      Ref item,
      List<Delivery.Counted> counted,
      Lack lack,
      Balance balance,
      Facts day) {
    return warn(
        counted.get(0).at().of("qty"),
        "The note of delivery "
            + delivery.id()
            + " says "
            + lack.packed().told(item.id())
            + ", "
            + lack.found().told()
            + " came.",
        "The sender believes that it is all with you, and nobody has told them that "
            + lack.lacks().told()
            + (lack.lacks().amount().compareTo(java.math.BigDecimal.ONE) == 0 ? " is" : " are")
            + " missing.",
        "Count again. If it stands, " + write(balance, lack, delivery, day),
        List.of(delivery.named(), "kit item " + item.id()));
  }

  /** What to write, where the count stands. */
  private static String write(Balance balance, Lack lack, Delivery delivery, Facts day) {
    Optional<ShortageStanding> open =
        balance.shortages().stream().filter(ShortageStanding::isOpen).findFirst();
    String shortage = open.map(each -> each.shortage().id()).orElse("ID");
    Optional<Claim> live =
        open.stream()
            .flatMap(each -> each.claims().stream())
            .filter(claim -> claim.sent().isPresent() && claim.settled().isEmpty())
            .filter(claim -> claim.asked().stream().anyMatch(line -> line.settled().isEmpty()))
            .findFirst();
    return live.map(
            claim ->
                "write to them and record it under “events” of "
                    + claim.id()
                    + ": {on: "
                    + day.day()
                    + ", what: reminded, of: ["
                    + shortage
                    + "]}.")
        .orElse(
            "claim it under “claims:” {id: claim-"
                + day.day()
                + ", against: "
                + delivery.from().id()
                + ", shortages: [{shortage: "
                + shortage
                + ", qty: "
                + lack.lacks()
                + "}], remedy: replacement}.");
  }
}
