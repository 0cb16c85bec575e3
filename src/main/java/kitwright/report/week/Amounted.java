package kitwright.report.week;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.ThreePoint;

/** Every amount and price that a ledger states, as a bare number. */
public final class Amounted {
  private Amounted() {}

  public static Stream<BigDecimal> in(Ledger ledger) {
    List<BigDecimal> all = new ArrayList<>();
    ledger.all().forEach(entry -> entry.at().each((within, key, value) -> add(value, all)));
    return all.stream();
  }

  private static void add(Object value, List<BigDecimal> all) {
    if (value instanceof Money money) {
      all.add(money.amount());
    } else if (value instanceof Price price) {
      all.add(price.amount());
    } else if (value instanceof ThreePoint<?> guess) {
      Stream.of(guess.low(), guess.likely(), guess.high()).forEach(each -> add(each, all));
    }
  }
}
