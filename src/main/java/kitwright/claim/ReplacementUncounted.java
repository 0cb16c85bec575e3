package kitwright.claim;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a claim was settled by replacement, but no count shows that it came. */
public final class ReplacementUncounted implements Rule {
  private final Standings claims;

  public ReplacementUncounted(Standings claims) {
    this.claims = claims;
  }

  @Override
  public String name() {
    return "replacement-uncounted";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    for (Standing standing : claims.all()) {
      standing
          .settled()
          .filter(end -> end.how() == Claim.Outcome.REPLACED)
          .ifPresent(
              end ->
                  standing.lines().stream()
                      .filter(line -> line.shortage().isOpen())
                      .forEach(line -> out.add(finding(standing, end, line))));
    }
  }

  private Finding finding(Standing standing, Claim.Settlement end, Line line) {
    kitwright.shortage.Standing shortage = line.shortage();
    return new Finding(
        name(),
        Severity.WARN,
        end.at().of("how"),
        "The claim "
            + standing.claim().id()
            + " is settled as replaced, but no count since shows "
            + shortage.open().told(shortage.shortage().item().id())
            + ".",
        "They are still told as missing, and if they are, nobody is claiming them any more.",
        "Record and count the delivery that brought them, or open the claim again.",
        List.of(standing.claim().named(), shortage.shortage().named()));
  }
}
