package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * What was promised last for each claimed shortage. A later promise takes the place of an earlier
 * one; several of one day stand together. The end of the claim or of its line ends them, and a
 * promise of money promises no goods.
 */
final class Promised {
  /**
   * Goods promised for a shortage.
   *
   * @param qty how much; empty for all that is still owed
   * @param said the day on which it was promised
   * @param on the day for which
   */
  record Goods(Claim claim, Optional<Quantity> qty, LocalDate said, LocalDate on) {}

  private final Map<String, List<Claim>> claims = new HashMap<>();

  Promised(Ledger ledger) {
    for (Claim claim : ledger.claims()) {
      claim
          .shortages()
          .forEach(ref -> claims.computeIfAbsent(ref.id(), id -> new ArrayList<>()).add(claim));
    }
  }

  /** The claims that name a shortage, drafts among them. */
  List<Claim> claims(String shortage) {
    return claims.getOrDefault(shortage, List.of());
  }

  /** Whether goods are asked for a shortage, or nothing yet. */
  boolean asksGoods(Shortage shortage) {
    List<Claim> claimed = claims(shortage.id());
    return claimed.isEmpty() || claimed.stream().anyMatch(claim -> asksGoods(claim, shortage.id()));
  }

  private static boolean asksGoods(Claim claim, String shortage) {
    return claim.asked().stream()
        .filter(line -> line.shortage().id().equals(shortage))
        .map(line -> line.remedy().orElse(claim.remedy()))
        .anyMatch(remedy -> remedy == Claim.Remedy.REPLACEMENT);
  }

  /** The goods promised last for a shortage, by day. */
  List<Goods> goods(String shortage) {
    List<Goods> all = new ArrayList<>();
    for (Claim claim : claims(shortage)) {
      if (!isEnded(claim, shortage)) {
        last(claim, shortage)
            .forEach(
                event ->
                    all.add(
                        new Goods(claim, event.qty(), event.on(), event.expect().orElseThrow())));
      }
    }
    all.sort(Comparator.comparing(Goods::on));
    return all;
  }

  /** The promises of the last day on which any was given. */
  private List<Claim.Event> last(Claim claim, String shortage) {
    List<Claim.Event> promises =
        claim.events().stream()
            .filter(event -> event.expect().isPresent())
            .filter(event -> isOf(event, shortage) && isOfGoods(event, claim, shortage))
            .toList();
    Optional<LocalDate> day = promises.stream().map(Claim.Event::on).max(Comparator.naturalOrder());
    List<Claim.Event> ofDay =
        promises.stream().filter(event -> day.filter(event.on()::equals).isPresent()).toList();
    boolean parted = ofDay.stream().allMatch(event -> event.qty().isPresent());
    return parted || ofDay.isEmpty() ? ofDay : List.of(ofDay.get(ofDay.size() - 1));
  }

  private static boolean isOf(Claim.Event event, String shortage) {
    return event.of().isEmpty() || event.of().stream().map(Ref::id).anyMatch(shortage::equals);
  }

  /** Where money was asked, a promise is of goods only if it says how many. */
  private static boolean isOfGoods(Claim.Event event, Claim claim, String shortage) {
    return event.amount().isEmpty() && (asksGoods(claim, shortage) || event.qty().isPresent());
  }

  private boolean isEnded(Claim claim, String shortage) {
    boolean lines =
        claim.asked().stream()
            .filter(line -> line.shortage().id().equals(shortage))
            .flatMap(line -> line.settled().stream())
            .anyMatch(end -> end.qty().isEmpty() && ends(end));
    return lines || claim.settled().filter(this::ends).isPresent();
  }

  private boolean ends(Claim.Settlement end) {
    return end.how() != Claim.Outcome.REPLACED;
  }
}
