package kitwright.spending;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/** What was paid on each line by a day, less what had come back; asked day after day. */
final class SpentByDay {
  private final Deque<Valued> later;
  private final Map<String, Money> spent = new HashMap<>();
  private final Money zero;

  SpentByDay(List<Valued> all, Money zero) {
    later =
        new ArrayDeque<>(
            all.stream()
                .filter(each -> !Books.is(each.spend(), Spend.State.ORDERED))
                .sorted(Comparator.comparing(each -> each.spend().on()))
                .toList());
    this.zero = zero;
  }

  /** By the end of a day, which is none before one that was asked already. */
  Money on(String line, LocalDate day) {
    while (!later.isEmpty() && !later.getFirst().spend().on().isAfter(day)) {
      add(later.removeFirst());
    }
    return spent.getOrDefault(line, zero);
  }

  void add(Valued each) {
    spent.merge(each.line(), each.signed(), Money::plus);
  }
}
