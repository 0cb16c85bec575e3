package kitwright.money;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rate;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where two rates stand for one pair of currencies on one day. */
public final class RateTwice implements Rule {
  private record Key(LocalDate on, Set<String> pair) {}

  @Override
  public void examine(Facts day, Findings out) {
    Map<Key, Rate> first = new HashMap<>();
    day.written().rates().stream()
        .filter(rate -> !rate.from().equals(rate.to()))
        .sorted(Comparator.comparing(rate -> rate.at().record()))
        .forEach(
            rate -> {
              Rate before = first.putIfAbsent(key(rate), rate);
              if (before != null) {
                out.add(twice(rate, before));
              }
            });
  }

  private static Key key(Rate rate) {
    return new Key(rate.on(), Set.of(rate.from().getCurrencyCode(), rate.to().getCurrencyCode()));
  }

  private Finding twice(Rate rate, Rate before) {
    return warn(
        rate.at().of("rate"),
        "There is a rate between "
            + rate.from()
            + " and "
            + rate.to()
            + " for "
            + Days.named(rate.on())
            + " already, at "
            + before.at().record()
            + ".",
        "Amounts of that day are worth one thing by the one and another by the other.",
        "Keep the one that was published or paid, and take the other out.",
        List.of(rate.named(), before.named()));
  }
}
