package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import org.junit.jupiter.api.Test;

/** Goods that went back to the sender. */
class SentBackTest {
  private static Position position(String back, String today) {
    return Positions.on(
            Facts.of(
                Sample.ledger(
                    """
                    kit: [{id: bolt, what: bolt, qty: 10}]
                    deliveries:
                      - id: d
                        received: 2026-02-03
                        from: kit-maker
                        counted: [{item: bolt, qty: 10, damaged: 1, wrong: 2}]
                        sent-back: [%s]
                    """
                        .formatted(back)),
                java.time.LocalDate.parse(today)))
        .all()
        .get(0);
  }

  private static String back(int qty) {
    return "{on: 2026-02-10, item: bolt, qty: %d}".formatted(qty);
  }

  @Test
  void whatIsNoGoodGoesBackFirst() {
    assertThat(position(back(3), "2026-03-02").good()).hasToString("7 each");
    assertThat(position(back(3), "2026-03-02").sentBack()).hasToString("3 each");
    assertThat(position(back(3), "2026-03-02").back().get(0).how()).isEmpty();
    String by = back(3).replace("}", ", by: lorry}");
    assertThat(position(by, "2026-03-02").back().get(0).how()).isEqualTo(" by lorry");
  }

  @Test
  void goodPiecesThatWentBackAreNotHereAnyMore() {
    assertThat(position(back(5), "2026-03-02").good()).hasToString("5 each");
    assertThat(position(back(5), "2026-03-02").missing()).hasToString("5 each");
    assertThat(position(back(5), "2026-02-09").good()).as("the day before").hasToString("7 each");
  }

  @Test
  void moreThanEverCameCannotGoBack() {
    assertThat(
            Sample.findings(
                new CountContradictory(),
                Sample.ledger(
                    "kit: [{id: bolt, what: bolt, qty: 10}]\n"
                        + "deliveries: [{id: d, received: 2026-02-03, from: kit-maker, counted:"
                        + " [{item: bolt, qty: 4}], sent-back: [{on: 2026-02-10, item: bolt, qty:"
                        + " 5}]}]\n"),
                Sample.TODAY))
        .extracting(Finding::what)
        .singleElement()
        .asString()
        .startsWith("With this, 5 × bolt are said to have gone back, but only 4");
  }
}
