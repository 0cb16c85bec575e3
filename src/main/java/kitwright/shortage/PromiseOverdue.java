package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Days;
import kitwright.value.Place;

/**
 * Fires where the day for which something was promised, sent or ordered has passed and it is not
 * here. From then on nothing counts on it.
 */
public final class PromiseOverdue implements Rule {
  private static final String FOLLOWS =
      "Nothing counts on it any more: the work that needs it is planned as if it had to be ordered"
          + " today.";

  @Override
  public void examine(Facts day, Findings out) {
    for (ShortageStanding standing : ShortageStandings.on(day).open()) {
      standing.lapsed().stream()
          .filter(each -> each.how() == Coming.How.PROMISED)
          .forEach(each -> out.add(promised(standing, each, day.day())));
    }
    day.ledger().deliveries().stream()
        .filter(each -> each.received().isEmpty())
        .forEach(each -> sent(each, day.day()).ifPresent(out::add));
    Undelivered.on(day)
        .forEach(
            each ->
                each.expected()
                    .filter(day.day()::isAfter)
                    .ifPresent(said -> out.add(ordered(each.spend(), said, day.day()))));
  }

  private Finding promised(ShortageStanding standing, Coming part, LocalDate today) {
    LocalDate said = part.lapsed().orElseThrow();
    return finding(
        standing.shortage().at().record(),
        "Promised for "
            + ago(said, today)
            + ", and still missing: "
            + part.qty().told(standing.shortage().item().id())
            + ".",
        "Ask again and record the answer under the claim’s “events”: {on: "
            + today
            + ", what: promised, expect: DAY}; if it has come, count the delivery.",
        standing.shortage());
  }

  private Optional<Finding> sent(Delivery delivery, LocalDate today) {
    return delivery
        .expected()
        .filter(today::isAfter)
        .map(
            said ->
                finding(
                    delivery.at().of("expected"),
                    "The delivery "
                        + delivery.id()
                        + " was to come by "
                        + ago(said, today)
                        + ", and nothing says that it did.",
                    "Ask where it is and write the new day under “expected”; if it has come, write"
                        + " “received” and count it.",
                    delivery));
  }

  private Finding ordered(Spend spend, LocalDate said, LocalDate today) {
    return finding(
        spend.at().of("expected"),
        "What "
            + spend.id()
            + " bought was to come by "
            + ago(said, today)
            + ", and nothing says that it did.",
        "Ask where it is and write the new day under “expected”; if it has come, write “came: DAY”"
            + " into the spend.",
        spend);
  }

  private static String ago(LocalDate said, LocalDate today) {
    return Days.named(said) + ", " + Days.ago(ChronoUnit.DAYS.between(said, today));
  }

  private Finding finding(Place place, String wrong, String mend, Entry of) {
    return warn(place, wrong, FOLLOWS, mend, List.of(of.named()));
  }
}
