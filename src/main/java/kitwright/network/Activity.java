package kitwright.network;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A task as the network sees it.
 *
 * @param id the task's id
 * @param what its name, for messages
 * @param takes working time for all of it
 * @param cure elapsed time after the work, day and night, before followers may begin
 * @param headway how far it has come
 * @param notBefore a day before which it cannot go on: material, signature, weather
 * @param away days on which somebody whom it needs cannot come, so that its work stands still
 */
public record Activity(
    String id,
    String what,
    Estimate takes,
    Duration cure,
    Headway headway,
    Optional<LocalDate> notBefore,
    List<DaysOff> away) {
  public Activity {
    away = List.copyOf(away);
    if (cure.isNegative() || cure.toMinutes() > Estimate.MOST) {
      throw new IllegalArgumentException("a cure wait is never negative: " + cure);
    }
  }

  /** The same, held at least until {@code day}. */
  public Activity heldUntil(LocalDate day) {
    Optional<LocalDate> later = notBefore.filter(day::isBefore).or(() -> Optional.of(day));
    return new Activity(id, what, takes, cure, headway, later, away);
  }

  /** The same, with so many working minutes more ahead; of a finished task nothing is ahead. */
  public Activity longerBy(long minutes) {
    Estimate longer = left().longerBy(minutes);
    Headway now =
        headway.match(waiting -> waiting, begun -> new Headway.Begun(begun.on(), 0), done -> done);
    return new Activity(id, what, longer, cure, now, notBefore, away);
  }

  /** The same, where somebody cannot come on some days. */
  public Activity without(List<DaysOff> days) {
    return new Activity(id, what, takes, cure, headway, notBefore, days);
  }

  /** When its work goes on: of a build's working time what everybody has whom it needs. */
  public WorkCalendar calendar(WorkCalendar build) {
    return isDone() ? build : build.without(away);
  }

  public boolean isDone() {
    return headway instanceof Headway.Done;
  }

  /** Work still ahead. */
  public Estimate left() {
    return headway.match(
        waiting -> takes, begun -> takes.left(1 - begun.progress()), done -> Estimate.NONE);
  }
}
