package kitwright.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kitwright.ledger.Facts;
import kitwright.spending.Returned;
import kitwright.spending.Share;
import kitwright.value.Money;

/**
 * For which claim each refund came: it counts once. Where one shortage, or one cost, stands in
 * several claims, the refund is parted among those that had gone out by its day, the oldest first,
 * each as far as money was to come for it; what is beyond all of them belongs to the last.
 */
final class Allotting {
  private static final Comparator<ClaimStanding> BY_SENT =
      Comparator.comparing(claim -> claim.claim().sent().orElse(LocalDate.MAX));

  private static final Comparator<Returned> BY_DAY =
      Comparator.comparing((Returned each) -> each.refund().on())
          .thenComparing(each -> each.refund().id());

  private final Facts day;
  private final Map<String, List<ClaimStanding>> claims = new HashMap<>();
  private final Map<String, List<Returned>> came = new HashMap<>();

  private Allotting(Facts day) {
    this.day = day;
  }

  /**
   * What came for each claim, by its id, in the order of the days.
   *
   * @param all every claim, before anything came back
   */
  static Map<String, List<Returned>> of(List<ClaimStanding> all, Facts day) {
    Allotting allotting = new Allotting(day);
    Map<String, Returned> refunds = new TreeMap<>();
    for (ClaimStanding claim : all.stream().sorted(BY_SENT).toList()) {
      for (Returned each : CameBack.mayBeFor(claim.claim(), spends(claim), day)) {
        refunds.put(each.refund().id(), each);
        allotting.claims.computeIfAbsent(each.refund().id(), id -> new ArrayList<>(1)).add(claim);
      }
    }
    List<Returned> shared = new ArrayList<>();
    for (Returned each : refunds.values().stream().sorted(BY_DAY).toList()) {
      List<ClaimStanding> those = allotting.claims.getOrDefault(each.refund().id(), List.of());
      if (those.size() == 1) {
        allotting.give(those.get(0), each);
      } else {
        shared.add(each);
      }
    }
    shared.forEach(allotting::part);
    allotting.came.values().forEach(list -> list.sort(BY_DAY));
    return allotting.came;
  }

  /** The spending that it names or asks. */
  private static Set<String> spends(ClaimStanding claim) {
    Set<String> ids = new HashSet<>();
    claim.claim().spends().forEach(ref -> ids.add(ref.id()));
    claim
        .lines()
        .forEach(line -> line.asking().costs().forEach(cost -> ids.add(cost.spend().id())));
    return ids;
  }

  private void give(ClaimStanding claim, Returned part) {
    came.computeIfAbsent(claim.claim().id(), id -> new ArrayList<>(1)).add(part);
  }

  private void part(Returned whole) {
    List<ClaimStanding> all = claims.getOrDefault(whole.refund().id(), List.of());
    List<ClaimStanding> asking = all.stream().filter(claim -> hadGoneOut(claim, whole)).toList();
    List<ClaimStanding> those = asking.isEmpty() ? all : asking;
    Money rest = whole.came();
    for (int i = 0; i < those.size() && rest.signum() > 0; i++) {
      boolean last = i + 1 == those.size();
      Money part = last ? rest : stillDue(those.get(i), whole.part(rest));
      if (part.signum() > 0) {
        give(those.get(i), whole.part(part));
        rest = rest.minus(part);
      }
    }
  }

  private static boolean hadGoneOut(ClaimStanding claim, Returned refund) {
    return claim.claim().sent().filter(sent -> !sent.isAfter(refund.refund().on())).isPresent();
  }

  /** Of a refund so much as is still to come for a claim, in the refund’s currency. */
  private Money stillDue(ClaimStanding claim, Returned refund) {
    Money nothing = Money.zero(refund.came().currency());
    List<Money> before =
        CameBack.of(came.getOrDefault(claim.claim().id(), List.of()), claim.due(), day).takenOff();
    List<Money> left = Sums.less(claim.due(), before);
    if (left.isEmpty()) {
      return nothing;
    }
    Optional<Money> inDue = CameBack.inDue(refund, left, day);
    return inDue
        .flatMap(
            all ->
                left.stream()
                    .filter(sum -> sum.currency().equals(all.currency()))
                    .map(sum -> Share.of(refund.came(), all.min(sum), all))
                    .findFirst())
        .orElse(nothing);
  }
}
