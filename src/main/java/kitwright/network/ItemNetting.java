package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Serves the needs of one item in date order. */
final class ItemNetting {
  private static final Comparator<Need> FIRST_NEED =
      Comparator.comparing(Need::on).thenComparing(Need::task).thenComparing(Need::amount);
  private static final Comparator<Supply> FIRST_TO_COME =
      Comparator.comparing((Supply supply) -> supply.arrives().orElse(LocalDate.MIN))
          .thenComparing(Supply::sureness)
          .thenComparing(Supply::id);

  private final String item;
  private final List<Supply> supplies;
  private final long[] arrives;
  private final boolean anyKept;
  private final BigDecimal[] left;
  private final Optional<Integer> leadDays;
  private final LocalDate today;
  private final List<Cover> covers = new ArrayList<>();
  private final List<PlannedOrder> orders = new ArrayList<>();

  /** Everything before this supply is used up. */
  private int first;

  ItemNetting(
      String item,
      List<Need> needs,
      List<Supply> supplies,
      Optional<Integer> leadDays,
      LocalDate today) {
    this.item = item;
    this.supplies = supplies.stream().sorted(FIRST_TO_COME).toList();
    this.arrives =
        this.supplies.stream()
            .mapToLong(each -> each.arrives().map(LocalDate::toEpochDay).orElse(Long.MIN_VALUE))
            .toArray();
    this.anyKept = this.supplies.stream().anyMatch(each -> !each.keptFor().isEmpty());
    this.left = this.supplies.stream().map(Supply::amount).toArray(BigDecimal[]::new);
    this.leadDays = leadDays;
    this.today = today;
    needs.stream().sorted(FIRST_NEED).forEach(this::serve);
  }

  List<Cover> covers() {
    return covers;
  }

  List<PlannedOrder> orders() {
    return orders;
  }

  /** On time and kept for the task, on time and free, then whatever comes next. */
  private void serve(Need need) {
    while (first < left.length && left[first].signum() == 0) {
      first++;
    }
    List<Cover.Draw> draws = new ArrayList<>();
    BigDecimal open = need.amount();
    if (anyKept) {
      open = take(Turn.KEPT, need, open, draws);
    }
    open = take(Turn.FREE, need, open, draws);
    open = take(Turn.LATE, need, open, draws);
    Optional<LocalDate> ordered = open.signum() > 0 ? order(need, open) : Optional.empty();
    covers.add(new Cover(need, draws, open, ordered));
  }

  private enum Turn {
    KEPT,
    FREE,
    LATE
  }

  private BigDecimal take(Turn turn, Need need, BigDecimal wanted, List<Cover.Draw> draws) {
    long last = turn == Turn.LATE ? Long.MAX_VALUE : need.on().toEpochDay();
    BigDecimal open = wanted;
    for (int i = first; i < left.length && arrives[i] <= last && open.signum() > 0; i++) {
      open = open.subtract(draw(i, need, open, turn, draws));
    }
    return open;
  }

  private BigDecimal draw(int i, Need need, BigDecimal open, Turn turn, List<Cover.Draw> draws) {
    Supply supply = supplies.get(i);
    boolean kept = !supply.keptFor().isEmpty();
    boolean mine = !kept || supply.keptFor().contains(need.task());
    if (left[i].signum() == 0 || !mine || (turn == Turn.KEPT && !kept)) {
      return BigDecimal.ZERO;
    }
    BigDecimal taken = left[i].min(open);
    left[i] = left[i].subtract(taken);
    draws.add(new Cover.Draw(supply, taken));
    return taken;
  }

  /** Adds to the order for the same day if there is one. */
  private Optional<LocalDate> order(Need need, BigDecimal open) {
    if (leadDays.isEmpty()) {
      return Optional.empty();
    }
    LocalDate day = need.on();
    BigDecimal amount = open;
    int last = orders.size() - 1;
    if (last >= 0 && orders.get(last).needed().equals(day)) {
      amount = orders.remove(last).amount().add(open);
    }
    LocalDate soonest = today.plusDays(leadDays.get());
    LocalDate arrives = day.isBefore(soonest) ? soonest : day;
    orders.add(new PlannedOrder(item, amount, day, day.minusDays(leadDays.get()), arrives));
    return Optional.of(arrives);
  }
}
