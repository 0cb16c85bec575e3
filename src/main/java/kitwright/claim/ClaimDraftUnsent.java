package kitwright.claim;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.shortage.Notice;
import kitwright.value.Days;

/** Fires where a claim is written but not sent: weighs more once time has gone by. */
public final class ClaimDraftUnsent implements Rule {
  /** A week after the shortage was found, or three days before notice ends, it is urgent. */
  private static final long SOON = 3;

  private static final long WEEK = 7;

  private final Standings claims;
  private final kitwright.shortage.Standings shortages;

  public ClaimDraftUnsent(Standings claims, kitwright.shortage.Standings shortages) {
    this.claims = claims;
    this.shortages = shortages;
  }

  @Override
  public String name() {
    return "claim-draft-unsent";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    claims.all().stream()
        .filter(Standing::isDraft)
        .forEach(standing -> out.add(finding(standing, ledger, today)));
  }

  private Finding finding(Standing standing, Ledger ledger, LocalDate today) {
    Optional<Notice> notice =
        standing.lines().stream()
            .flatMap(line -> Notice.of(line.shortage().shortage(), shortages, ledger).stream())
            .reduce((one, two) -> two.last().isBefore(one.last()) ? two : one);
    OptionalLong oldest = standing.lines().stream().mapToLong(line -> line.shortage().age()).max();
    boolean urgent =
        notice.map(each -> each.daysLeft(today) <= SOON).orElse(oldest.orElse(0) >= WEEK);
    return new Finding(
        name(),
        urgent ? Severity.WARN : Severity.NOTE,
        standing.claim().at().record(),
        "The claim "
            + standing.claim().id()
            + " is written but not sent"
            + (oldest.isEmpty()
                ? ""
                : "; its oldest shortage was found " + Days.ago(oldest.getAsLong()))
            + ".",
        notice
            .map(each -> each.told(today) + ".")
            .orElse(
                "The supplier knows nothing yet; how long that may wait depends on contract and country."),
        "Send it, and write the day under “sent” and how under “by”.",
        List.of(standing.claim().named()));
  }
}
