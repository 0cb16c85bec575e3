package kitwright.openmatter;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.claim.ClaimStanding;
import kitwright.ledger.Facts;
import kitwright.shortage.Wanted;
import kitwright.value.Days;

/**
 * What to do about an answer that the supplier owes: the same word for a claim and for what it
 * claims. It may be waited for until the day asked for, where the work can wait so long.
 */
final class Awaited {
  private Awaited() {}

  /** The last day on which another way can still be taken in time. */
  static Optional<LocalDate> last(Optional<OpenMatter.Stop> stop, List<Wanted> waiting, Facts now) {
    return ShortageMatters.earlier(
        stop.map(OpenMatter.Stop::neededBy),
        waiting.stream()
            .flatMap(each -> ShortageMatters.lastDayToOrder(stop, List.of(each), now).stream())
            .min(Comparator.naturalOrder()));
  }

  /** Of a claim that is sent and not answered. */
  static String of(ClaimStanding claim, Optional<LocalDate> last) {
    return claim.isOverdue()
        ? "remind them, or do as the letter says"
        : due(List.of(claim))
            .map(
                day ->
                    isTooLate(day, last) ? "press for an answer" + now(day) : "wait" + until(day))
            .orElse("press for an answer: no day was asked for");
  }

  /** Of a shortage that such claims name. */
  static String of(List<ClaimStanding> claims, String names, Optional<LocalDate> last) {
    boolean pressing = claims.stream().anyMatch(ClaimStanding::isOverdue);
    return due(claims)
        .filter(any -> !pressing)
        .map(
            day ->
                isTooLate(day, last)
                    ? "press for an answer to " + names + now(day)
                    : "wait for the answer to " + names + until(day))
        .orElse("press for an answer to " + names);
  }

  private static Optional<LocalDate> due(List<ClaimStanding> claims) {
    return claims.stream()
        .flatMap(claim -> claim.claim().replyBy().stream())
        .max(Comparator.naturalOrder());
  }

  private static boolean isTooLate(LocalDate due, Optional<LocalDate> last) {
    return last.filter(day -> day.isBefore(due)).isPresent();
  }

  private static String now(LocalDate due) {
    return " now: on " + Days.named(due) + " it will be too late to get it otherwise";
  }

  private static String until(LocalDate due) {
    return " until " + Days.named(due);
  }
}
