package kitwright.shortage;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Spend;
import kitwright.value.Days;
import kitwright.value.Ref;

/**
 * Fires where a material was bought and is here, work lacks it, and no stock says what is left of
 * it. How much that is nobody can tell from the receipt, so that none of it counts.
 */
public final class BoughtNotInStock implements RecordRule<Spend> {
  @Override
  public List<Spend> records(Facts day) {
    Set<String> settled = new HashSet<>();
    day.ledger().stock().forEach(stock -> stock.bought().map(Ref::id).ifPresent(settled::add));
    day.ledger().spending().forEach(spend -> spend.refunds().map(Ref::id).ifPresent(settled::add));
    return day.ledger().spending().stream()
        .filter(spend -> spend.material().isPresent() && spend.because().isEmpty())
        .filter(spend -> spend.state() != Spend.State.REFUNDED && spend.withdrawn().isEmpty())
        .filter(spend -> !settled.contains(spend.id()))
        .filter(spend -> spend.pays().filter(order -> settled.contains(order.id())).isEmpty())
        .toList();
  }

  @Override
  public void examine(Spend spend, Facts day, Findings out) {
    LookAhead.on(day).shortOf(spend).stream()
        .findFirst()
        .ifPresent(
            wanted ->
                Receipts.on(day)
                    .since(spend)
                    .ifPresent(since -> out.add(finding(spend, since, wanted))));
  }

  private Finding finding(Spend spend, LocalDate since, Wanted wanted) {
    String material = spend.material().orElseThrow().id();
    return warn(
        spend.at().of("material"),
        spend.qty().orElseThrow().told(material)
            + " came with "
            + spend.id()
            + " on "
            + Days.named(since)
            + ", and no stock says how much of it is left.",
        "None of it counts: the task "
            + wanted.task()
            + " lacks "
            + wanted.shortOnTheDay().told(wanted.thing().what())
            + ", and it would be bought again.",
        "Record what is left with “kitwright new stock what="
            + material
            + " qty=AMOUNT material="
            + material
            + " bought="
            + spend.id()
            + "”; where a stock is that already, write “bought: "
            + spend.id()
            + "” into it.",
        List.of(spend.named(), "task " + wanted.task()));
  }
}
