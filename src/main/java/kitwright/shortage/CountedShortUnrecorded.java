package kitwright.shortage;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Quantity;

/** Fires where less was counted than promised and nobody has recorded the shortage. */
public final class CountedShortUnrecorded implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    all(day).forEach(balance -> out.add(finding(balance, balance.unrecorded())));
  }

  /** What was counted short beyond the shortages that are recorded. */
  public static List<Balance> all(Facts day) {
    return ShortageStandings.on(day).balances().stream()
        .filter(balance -> balance.position().isCounted())
        .filter(balance -> !Tiny.is(balance.unrecorded(), balance.position().promised()))
        .toList();
  }

  private Finding finding(Balance balance, Quantity unrecorded) {
    Position position = balance.position();
    Count last = position.counts().get(position.counts().size() - 1);
    String missing = unrecorded.told();
    String recorded =
        balance.recorded().isNone()
            ? "no shortage is recorded"
            : "the shortages recorded come to only " + balance.recorded().told();
    return warn(
        last.at(),
        "The kit promised "
            + position.promised().told(position.item().id())
            + ", "
            + position.good().told()
            + " came and can be used, but "
            + recorded
            + ".",
        "Nobody claims the missing " + missing + " or plans for it.",
        mend(balance, last),
        List.of(last.delivery().named(), position.item().named()));
  }

  private static String mend(Balance balance, Count last) {
    if (balance.position().counts().stream()
        .anyMatch(count -> count.noGood().compareAmount(count.found()) > 0)) {
      return "Correct the count first: more is said to be no good than was found.";
    }
    Quantity back = Causes.sentBackGood(balance);
    String records =
        Causes.of(balance).stream()
            .map(part -> part.record(balance.position().item(), last.on()))
            .collect(Collectors.joining(" and "));
    return (back.isNone()
            ? ""
            : "Counted good, and sent back all the same: "
                + back.told()
                + ". Say at the count what was wrong with it (“damaged”, “wrong” or “undersize”),"
                + " or correct “sent-back”"
                + (records.isEmpty() ? "." : "; then look again. "))
        + (records.isEmpty()
            ? ""
            : "Record under “shortages:” "
                + records
                + "; or correct the count, or name what a later delivery will bring under its"
                + " “packed”.");
  }
}
