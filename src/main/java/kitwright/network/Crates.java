package kitwright.network;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import kitwright.value.Days;
import kitwright.value.Ref;

/** The deliveries that a task unpacks: it cannot go on before they have come. */
public final class Crates {
  private Crates() {}

  /** What of its deliveries a task still waits for on the day, each a clause. */
  public static List<String> awaited(Task task, Facts now) {
    return task.unpacks().stream().flatMap(ref -> awaited(ref, now.ledger())).toList();
  }

  private static Stream<String> awaited(Ref ref, Ledger ledger) {
    Optional<Delivery> delivery = ledger.delivery(ref);
    if (delivery.isEmpty()) {
      return Stream.of("it unpacks “" + ref.id() + "”, and no delivery has that id");
    }
    return delivery.stream().filter(each -> !hasCome(each)).map(Crates::words);
  }

  private static String words(Delivery delivery) {
    return "delivery "
        + delivery.id()
        + delivery
            .expected()
            .map(day -> " not here, expected on " + Days.named(day))
            .orElse(" not here, and nobody says when it comes");
  }

  /** The day before which a task cannot go on, as far as somebody has said when its crates come. */
  static Optional<LocalDate> expected(Task task, Ledger ledger) {
    return task.unpacks().stream()
        .flatMap(ref -> ledger.delivery(ref).stream())
        .filter(delivery -> !hasCome(delivery))
        .flatMap(delivery -> delivery.expected().stream())
        .max(Comparator.naturalOrder());
  }

  /** The open tasks that unpack a delivery. */
  public static List<String> unpackedBy(Delivery delivery, Facts now) {
    return Plan.on(now).tasks().stream()
        .filter(task -> task.unpacks().stream().anyMatch(ref -> ref.id().equals(delivery.id())))
        .map(Task::id)
        .filter(Plan.on(now)::isOpen)
        .toList();
  }

  /** Whether a task waits for a delivery of which nobody knows a day that can still hold. */
  public static boolean isForNoDay(Task task, Facts now) {
    return task.unpacks().stream()
        .map(now.ledger()::delivery)
        .anyMatch(
            each ->
                each.isEmpty()
                    || (!hasCome(each.get())
                        && each.get()
                            .expected()
                            .filter(day -> !day.isBefore(now.day()))
                            .isEmpty()));
  }

  /**
   * Until when tasks are held if some deliveries come later than expected.
   *
   * @param days calendar days by id of the delivery
   */
  public static Map<String, LocalDate> late(Map<String, Integer> days, Facts now) {
    Map<String, LocalDate> held = new HashMap<>();
    for (Task task : Plan.on(now).tasks()) {
      for (Ref ref : task.unpacks()) {
        now.ledger()
            .delivery(ref)
            .filter(delivery -> days.containsKey(delivery.id()) && !hasCome(delivery))
            .flatMap(Delivery::expected)
            .map(day -> day.plusDays(days.getOrDefault(ref.id(), 0)))
            .ifPresent(day -> held.merge(task.id(), day, (a, b) -> a.isAfter(b) ? a : b));
      }
    }
    return held;
  }

  private static boolean hasCome(Delivery delivery) {
    return delivery.received().isPresent();
  }
}
