package kitwright.money;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Fires where a claim was settled with money that is not in the spending. */
public final class SettlementUnbooked implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Account.on(day).claims().stream()
        .filter(back -> back.outstanding().signum() > 0)
        .forEach(back -> last(back).ifPresent(end -> out.add(unbooked(back, end))));
  }

  /** The last end of the claim or of a line that grants money. */
  private static Optional<Claim.Settlement> last(Back back) {
    return Stream.concat(
            back.claim().asked().stream().flatMap(line -> line.settled().stream()),
            back.claim().settled().stream())
        .filter(end -> end.amount().isPresent())
        .reduce((earlier, later) -> later);
  }

  private Finding unbooked(Back back, Claim.Settlement end) {
    return note(
        end.at().of("amount"),
        "The "
            + back.claim().named()
            + " was settled on "
            + Days.named(end.on())
            + "; "
            + back.outstanding()
            + " of it are not in the spending.",
        "They count nowhere until they are, and nobody sees whether they came.",
        "When the money has come, record it with “state: refunded”, “refunds: ID” with the payment,"
            + " and “because: "
            + back.claim().shortages().stream().map(Ref::id).collect(Collectors.joining("” or “"))
            + "”.",
        List.of(back.claim().named()));
  }
}
