package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Laws of covering: nothing is covered twice, and time never opens what a count has closed. */
class CoveringProperties {
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 6);

  private static Ledger ledger(List<Integer> counts, List<Integer> shortages, int substituted) {
    String deliveries =
        IntStream.range(0, counts.size())
            .mapToObj(
                i ->
                    "  - {id: d%d, received: %s, from: kit-maker, counted: [{item: cleat, qty: %d}]}%n"
                        .formatted(i, FIRST.plusDays(4L * i), counts.get(i)))
            .collect(Collectors.joining());
    String found =
        IntStream.range(0, shortages.size())
            .mapToObj(
                i ->
                    "  - {id: s%d, item: cleat, qty: %d, found: %s, cause: not-packed}%n"
                        .formatted(i, shortages.get(i), FIRST.plusDays(3L * i)))
            .collect(Collectors.joining());
    return Sample.ledger(
        "kit: [{id: cleat, what: cleat, qty: 12}]\ndeliveries:\n%sshortages:\n%s"
                .formatted(deliveries, found)
            + "substitutions: [{id: sub, for: s0, instead-of: {item: cleat, qty: %d}, why: here, grade: finish, sign-offs: [{by: nora, on: 2026-01-10}]}]"
                .formatted(substituted));
  }

  private static ShortageStandings standings(Ledger ledger, LocalDate day) {
    return ShortageStandings.on(Facts.of(ledger, day));
  }

  @Property(tries = 80)
  void coversNeverPassTheShortageNorTheArrivals(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 8) Integer> counts,
      @ForAll @Size(min = 1, max = 4) List<@IntRange(min = 1, max = 6) Integer> shortages,
      @ForAll @IntRange(max = 6) int substituted) {
    ShortageStandings all = standings(ledger(counts, shortages, substituted), Sample.TODAY);
    all.all()
        .forEach(
            each -> assertThat(each.covered().plus(each.open())).isEqualTo(each.shortage().qty()));
    Balance balance = all.balances().get(0);
    assertThat(balance.delivered().amount())
        .isLessThanOrEqualTo(balance.position().good().amount())
        .isLessThanOrEqualTo(balance.recorded().amount());
  }

  @Property(tries = 80)
  void whatIsStillMissingStaysOpenWhereAllOfItWasRecorded(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 3) Integer> counts) {
    // All that the first count lacked is recorded at once; later crates close it and no more.
    int lacking = 12 - counts.get(0);
    ShortageStanding standing =
        standings(ledger(counts, List.of(lacking), 0), Sample.TODAY).all().get(0);
    int good = counts.stream().mapToInt(Integer::intValue).sum();
    assertThat(standing.open().amount()).isEqualByComparingTo(Integer.toString(12 - good));
  }

  @Property(tries = 80)
  void aCountThatClosedAShortageKeepsItClosed(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 8) Integer> counts,
      @ForAll @IntRange(min = 1, max = 6) int lacking,
      @ForAll @IntRange(max = 20) int day) {
    Ledger ledger = ledger(counts, List.of(lacking), 0);
    LocalDate date = FIRST.plusDays(day);
    assertThat(standings(ledger, date.plusDays(1)).all().get(0).open().amount())
        .isLessThanOrEqualTo(standings(ledger, date).all().get(0).open().amount());
  }
}
