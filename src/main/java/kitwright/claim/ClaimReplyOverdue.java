package kitwright.claim;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where the day by which a claim asked for an answer has passed without one. */
public final class ClaimReplyOverdue implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    ClaimStandings.on(day).all().stream()
        .filter(ClaimStanding::isOverdue)
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(ClaimStanding standing) {
    long late = -standing.daysLeft().orElseThrow();
    String whom = standing.against().map(party -> party.name()).orElse("The supplier");
    String heard =
        standing.state() == ClaimStanding.State.ACKNOWLEDGED
            ? "acknowledged it, but gave no answer"
            : "gave no answer";
    return warn(
        standing.claim().at().of("reply-by"),
        whom
            + " "
            + heard
            + "; the day asked for was "
            + Days.named(standing.claim().replyBy().orElseThrow())
            + ", "
            + Days.told(late)
            + " ago.",
        "What it claims stays open, and an unanswered claim grows weaker with time.",
        "Remind them in writing, record it under “events”, and write under “reply-by” the day that"
            + " you ask for now; or choose another way than waiting.",
        List.of(standing.claim().named()));
  }
}
