package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work that unpacks deliveries waits until they have come. Sample's today is 2 March 2026. */
class CratesTest {
  private static final String YARD =
      """
      deliveries:
        - {id: come, received: 2026-02-20, expected: 2026-03-30, from: kit-maker}
        - {id: soon, expected: 2026-03-10, from: kit-maker}
        - {id: later, expected: 2026-03-17, from: kit-maker}
        - {id: today, expected: 2026-03-02, from: kit-maker}
        - {id: overdue, expected: 2026-03-01, from: kit-maker}
        - {id: some-day, from: kit-maker}
      tasks:
        - {id: open, what: Open, takes: 1 d, unpacks: [%s]}
        - {id: other, what: Other, takes: 1 d, unpacks: [soon]}
        - {id: opened, what: Opened, takes: 1 d, finished: 2026-02-27, unpacks: [soon]}
      """;

  private static Facts yard(String unpacks) {
    return Facts.of(Sample.ledger(YARD.formatted(unpacks)), Sample.TODAY);
  }

  private static Task open(Facts now) {
    return now.ledger().tasks().get(0);
  }

  private static List<String> awaited(String unpacks) {
    Facts now = yard(unpacks);
    return Crates.awaited(open(now), now).stream()
        .map(each -> each.replace('\u00a0', ' '))
        .toList();
  }

  @Test
  void whatHasNotComeIsWaitedForWithItsDayWhereOneWasSaid() {
    assertThat(awaited("")).isEmpty();
    assertThat(awaited("come")).isEmpty();
    assertThat(awaited("come, soon, some-day"))
        .containsExactly(
            "delivery soon not here, expected on 10 March 2026",
            "delivery some-day not here, and nobody says when it comes");
  }

  @Test
  void aNameThatIsNoDeliverysIsWaitedForToo() {
    Facts now =
        Facts.of(
            Sample.read(YARD.formatted("crate-9"), new kitwright.finding.Findings()).orElseThrow(),
            Sample.TODAY);
    assertThat(Crates.awaited(open(now), now))
        .containsExactly("it unpacks “crate-9”, and no delivery has that id");
    assertThat(Crates.isForNoDay(open(now), now)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "soon, 2026-03-10",
    "'soon, later, come', 2026-03-17", // the last of those still to come
    "come, 2026-03-02",
    "some-day, 2026-03-02", // by work alone: that nobody knows the day is told elsewhere
    "overdue, 2026-03-02"
  })
  void workBeginsWhenTheLastOfItsCratesIsExpected(String unpacks, LocalDate begins) {
    assertThat(Plan.on(yard(unpacks)).workableOn("open")).isEqualTo(begins);
  }

  @ParameterizedTest
  @CsvSource({
    "'', false",
    "come, false",
    "soon, false",
    "today, false", // it may still come today
    "overdue, true",
    "some-day, true",
    "'soon, some-day', true"
  })
  void aDayThatHasPassedIsNoDay(String unpacks, boolean forNoDay) {
    Facts now = yard(unpacks);
    assertThat(Crates.isForNoDay(open(now), now)).isEqualTo(forNoDay);
  }

  @Test
  void whoUnpacksADeliveryIsTheOpenWorkThatNamesIt() {
    Facts now = yard("come, soon");
    assertThat(unpackedBy("soon", now)).containsExactly("open", "other");
    assertThat(unpackedBy("come", now)).containsExactly("open");
    assertThat(unpackedBy("later", now)).isEmpty();
  }

  private static List<String> unpackedBy(String id, Facts now) {
    Delivery delivery =
        now.ledger().deliveries().stream()
            .filter(each -> each.id().equals(id))
            .findFirst()
            .orElseThrow();
    return Crates.unpackedBy(delivery, now);
  }

  @Test
  void aCrateThatComesLaterHoldsItsWorkUntilThen() {
    Facts now = yard("soon, later");
    LocalDate soon = LocalDate.of(2026, 3, 10);
    LocalDate later = LocalDate.of(2026, 3, 17);
    assertThat(Crates.late(Map.of(), now)).isEmpty();
    assertThat(Crates.late(Map.of("soon", 3), now))
        .isEqualTo(
            Map.of(
                "open", soon.plusDays(3), "other", soon.plusDays(3), "opened", soon.plusDays(3)));
    assertThat(Crates.late(Map.of("soon", 9, "later", 1), now).get("open"))
        .as("the later of both")
        .isEqualTo(soon.plusDays(9));
    assertThat(Crates.late(Map.of("soon", 1, "later", 2), now).get("open"))
        .isEqualTo(later.plusDays(2));
    assertThat(Crates.late(Map.of("come", 5), yard("come"))).as("it has come").isEmpty();
    assertThat(Crates.late(Map.of("some-day", 5), yard("some-day"))).isEmpty();
  }
}
