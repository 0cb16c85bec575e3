package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of counting. */
class PositionProperties {
  private static Position position(List<Integer> counts, int promised) {
    String deliveries =
        java.util.stream.IntStream.range(0, counts.size())
            .mapToObj(
                i ->
                    "  - {id: d%d, received: %s, from: kit-maker, counted: [{item: cleat, qty: %d}]}%n"
                        .formatted(i, LocalDate.of(2026, 1, 6).plusDays(i), counts.get(i)))
            .collect(Collectors.joining());
    return Positions.on(
            Facts.of(
                Sample.ledger(
                    "kit: [{id: cleat, what: cleat, qty: %d}]%ndeliveries:%n".formatted(promised)
                        + deliveries),
                Sample.TODAY))
        .all()
        .get(0);
  }

  @Property(tries = 60)
  void promisedAndSurplusBalanceGoodAndMissing(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(max = 9) Integer> counts,
      @ForAll @IntRange(min = 1, max = 30) int promised) {
    Position position = position(counts, promised);
    assertThat(position.good().plus(position.missing()))
        .isEqualTo(position.promised().plus(position.good().less(position.promised())));
  }

  @Property(tries = 60)
  void aLaterDayNeverKnowsLess(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(max = 9) Integer> counts,
      @ForAll @IntRange(max = 8) int day) {
    Position position = position(counts, 20);
    LocalDate date = LocalDate.of(2026, 1, 5).plusDays(day);
    assertThat(position.on(date).good().amount())
        .isLessThanOrEqualTo(position.on(date.plusDays(1)).good().amount());
    assertThat(position.on(Sample.TODAY)).isEqualTo(position);
  }

  @Property(tries = 60)
  void theOrderOfTheRecordsDoesNotMatter(
      @ForAll @Size(min = 2, max = 6) List<@IntRange(max = 9) Integer> counts) {
    int sum = counts.stream().mapToInt(Integer::intValue).sum();
    assertThat(position(counts, 20).good())
        .isEqualTo(new Quantity(BigDecimal.valueOf(sum), Unit.EACH));
  }
}
