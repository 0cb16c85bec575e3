package kitwright.claim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.shortage.Notice;
import kitwright.shortage.ShortageStandings;
import kitwright.value.Days;

/** Fires where a claim is written but not sent: weighs more once time has gone by. */
public final class ClaimDraftUnsent implements Rule {
  /** A week after the shortage was found, or three days before notice ends, it is urgent. */
  private static final long SOON = 3;

  private static final long WEEK = 7;

  @Override
  public void examine(Facts day, Findings out) {
    ClaimStandings.on(day).all().stream()
        .filter(ClaimStanding::isDraft)
        .forEach(standing -> out.add(finding(standing, day)));
  }

  private Finding finding(ClaimStanding standing, Facts day) {
    Optional<Notice> notice =
        standing.lines().stream()
            .flatMap(
                line ->
                    Notice.of(line.shortage().shortage(), ShortageStandings.on(day), day.ledger())
                        .stream())
            .reduce((one, two) -> two.last().isBefore(one.last()) ? two : one);
    OptionalLong oldest = standing.lines().stream().mapToLong(line -> line.shortage().age()).max();
    boolean urgent =
        notice.map(each -> each.daysLeft(day.day()) <= SOON).orElse(oldest.orElse(0) >= WEEK);
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
            .map(each -> each.told(day.day()) + ".")
            .orElse(
                "The supplier knows nothing yet; how long that may wait depends on contract and"
                    + " country."),
        "Send it, and write the day under “sent” and how under “by”.",
        List.of(standing.claim().named()));
  }
}
