package kitwright.claim;

import java.util.List;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.shortage.ShortageStanding;
import kitwright.value.Quantity;

/** Fires where a claim was settled by replacement, but no count shows that it came. */
public final class ReplacementUncounted implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (ClaimStanding standing : ClaimStandings.on(day).all()) {
      for (Line line : standing.lines()) {
        Stream<Claim.Settlement> ends =
            line.asking().settled().isEmpty()
                ? standing.settled().stream()
                : line.asking().settled().stream();
        ends.filter(end -> end.how() == Claim.Outcome.REPLACED)
            .filter(end -> line.shortage().isOpen() && !uncounted(end, line).isNone())
            .findFirst()
            .ifPresent(end -> out.add(finding(standing, end, line)));
      }
    }
  }

  /** What was to be replaced and did not come: of a part of a line no more than that part. */
  private static Quantity uncounted(Claim.Settlement end, Line line) {
    return end.qty()
        .filter(line.owed()::convertsTo)
        .map(qty -> qty.in(line.owed().unit()).less(line.sent()).min(line.owed()))
        .orElse(line.owed());
  }

  private Finding finding(ClaimStanding standing, Claim.Settlement end, Line line) {
    ShortageStanding shortage = line.shortage();
    return warn(
        end.at().of("how"),
        "The claim "
            + standing.claim().id()
            + " is settled as replaced, but no count since shows "
            + uncounted(end, line).min(shortage.open()).told(shortage.shortage().item().id())
            + ".",
        "They are still told as missing, and if they are, nobody is claiming them any more.",
        "Record and count the delivery that brought them, or take “settled” out of the claim, which"
            + " is open again then.",
        List.of(standing.claim().named(), shortage.shortage().named()));
  }
}
