package kitwright.money;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a claim was settled with money that is not in the spending. */
public final class SettlementUnbooked implements Rule {
  private final Account account;

  public SettlementUnbooked(Account account) {
    this.account = account;
  }

  @Override
  public String name() {
    return "settlement-unbooked";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    account.claims().stream()
        .filter(back -> back.outstanding().signum() > 0)
        .forEach(back -> back.claim().settled().ifPresent(end -> out.add(unbooked(back, end))));
  }

  private Finding unbooked(Back back, Claim.Settlement end) {
    return new Finding(
        name(),
        Severity.NOTE,
        end.at().of("amount"),
        "The "
            + back.claim().named()
            + " was settled on "
            + end.on()
            + "; "
            + back.outstanding()
            + " of it are not in the spending.",
        "They count nowhere until they are, and nobody sees whether they came.",
        "When the money has come, record it with “state: refunded” and “because: SHORTAGE”.",
        List.of(back.claim().named()));
  }
}
