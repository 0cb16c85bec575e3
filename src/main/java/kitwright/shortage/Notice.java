package kitwright.shortage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import kitwright.kit.Count;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.value.Days;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * By when a supplier wants to be told of a shortage. What the law allows depends on contract and
 * country; this is only what the party's record says.
 *
 * @param last the last day of the notice period, counted from receipt, the day of receipt not
 *     included
 */
public record Notice(Party supplier, LocalDate last) {
  /** The notice of a shortage; empty where no supplier with a notice period is known for it. */
  public static Optional<Notice> of(Shortage shortage, ShortageStandings shortages, Ledger ledger) {
    Optional<Count> count =
        shortages.balance(shortage.item()).stream()
            .flatMap(balance -> balance.position().counts().stream())
            .filter(each -> !each.on().isAfter(shortage.found()))
            .reduce((earlier, later) -> later);
    LocalDate from = count.map(Count::on).orElse(shortage.found());
    return supplier(shortage.item(), count, ledger)
        .flatMap(
            party ->
                party
                    .notice()
                    .map(time -> time.in(Unit.DAY).amount().longValue())
                    .map(days -> new Notice(party, from.plusDays(days))));
  }

  private static Optional<Party> supplier(Ref item, Optional<Count> count, Ledger ledger) {
    return ledger
        .kitItem(item)
        .flatMap(KitItem::from)
        .or(() -> count.map(each -> each.delivery().from()))
        .flatMap(ledger::party)
        .or(
            () ->
                ledger.parties().stream()
                    .filter(party -> party.role() == Party.Role.SUPPLIER)
                    .reduce((one, two) -> one.notice().isPresent() ? one : two));
  }

  /** Days left on a day; below zero when it has run out. */
  public long daysLeft(LocalDate today) {
    return ChronoUnit.DAYS.between(today, last);
  }

  /** As a finding tells it, after a comma or alone. */
  public String told(LocalDate today) {
    String who = supplier.name() + " wants to be told by " + Days.named(last);
    long left = daysLeft(today);
    if (left < 0) {
      return who + ", which was " + Days.ago(-left);
    }
    return who + (left == 0 ? ", which is today" : ", in " + Days.told(left));
  }
}
