package kitwright.network;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Needs set against what is at hand and under way, each item by itself. The first need is served
 * first, by day, then by task; what is kept for one task is not given to another; what is there in
 * time is taken before what comes late. What nothing covers is ordered by the item's rule.
 *
 * @see "Orlicky, Material Requirements Planning (1975): time-phased netting, lot sizing, offsetting
 *     by lead time (from memory; the worked tables of the tests were looked up)"
 */
public final class Netting {
  private final Map<String, ItemNetting> items;

  private Netting(Map<String, ItemNetting> items) {
    this.items = items;
  }

  /**
   * Nets the needs.
   *
   * @param leadDays calendar days from order to arrival, by item; one without them is never ordered
   * @param today orders are placed on this day at the earliest
   */
  public static Netting of(
      Collection<Need> needs,
      Collection<Supply> supplies,
      Map<String, Integer> leadDays,
      LocalDate today) {
    Map<String, List<Supply>> held =
        supplies.stream()
            .collect(Collectors.groupingBy(Supply::item, HashMap::new, Collectors.toList()));
    Map<String, ItemNetting> items = new TreeMap<>();
    needs.stream()
        .collect(Collectors.groupingBy(Need::item))
        .forEach(
            (item, all) ->
                items.put(
                    item,
                    new ItemNetting(
                        item,
                        all,
                        held.getOrDefault(item, List.of()),
                        Optional.ofNullable(leadDays.get(item)),
                        today)));
    return new Netting(items);
  }

  /** How each need is met: by item, then in the order of serving. */
  public List<Cover> covers() {
    return items.values().stream().flatMap(each -> each.covers().stream()).toList();
  }

  /** Orders that would cover what is missing, by the last day to order. */
  public List<PlannedOrder> orders() {
    return items.values().stream()
        .flatMap(each -> each.orders().stream())
        .sorted(Comparator.comparing(PlannedOrder::orderBy))
        .toList();
  }

  /**
   * The day on which each task's materials are all there, with orders placed in time or today. A
   * task of which something is missing and cannot be ordered is left out: see {@link #stopped}.
   */
  public Map<String, LocalDate> readyDays() {
    Map<String, LocalDate> days = new TreeMap<>();
    for (Cover cover : covers()) {
      cover.readyIfOrdered().ifPresent(day -> days.merge(cover.need().task(), day, Netting::later));
    }
    days.keySet().removeAll(stopped());
    return days;
  }

  /** Tasks that lack something which neither comes nor can be ordered, by id. */
  public List<String> stopped() {
    return covers().stream()
        .filter(cover -> cover.readyIfOrdered().isEmpty())
        .map(cover -> cover.need().task())
        .distinct()
        .sorted()
        .toList();
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }
}
