package kitwright.claim;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.value.Place;
import kitwright.value.Ref;

/** Fires where a claim names spending whose cost it does not ask. */
public final class ClaimCostVoid implements RecordRule<Claim> {
  @Override
  public List<Claim> records(Facts day) {
    return day.ledger().claims();
  }

  @Override
  public void examine(Claim claim, Facts day, Findings out) {
    Set<String> asked = new HashSet<>();
    Asking.of(claim, day)
        .forEach(part -> part.costs().forEach(cost -> asked.add(cost.spend().id())));
    Asking.besides(claim, day).forEach(cost -> asked.add(cost.spend().id()));
    for (Ref ref : claim.spends()) {
      day.ledger()
          .spend(ref)
          .filter(spend -> !asked.contains(spend.id()))
          .ifPresent(
              spend ->
                  out.add(
                      Cost.isNone(spend, claim, day)
                          .map(why -> noCost(claim, ref, why))
                          .orElseGet(() -> otherwise(claim, ref))));
    }
  }

  private Finding noCost(Claim claim, Ref ref, String why) {
    return finding(
        claim,
        ref.at(),
        "The " + claim.named() + " names the spend " + ref.id() + ", " + why + ".",
        "Take it out of “costs”; what was paid for an order record with “state: paid” and “pays:"
            + " ORDER”, and of one that was given up name what was paid and kept.");
  }

  private Finding otherwise(Claim claim, Ref ref) {
    return finding(
        claim,
        ref.at(),
        "The "
            + claim.named()
            + " names the spend "
            + ref.id()
            + " for a line that asks for something else than its cost.",
        "Write “remedy: cost” on that line, or take the spend out of its “costs”.");
  }

  private Finding finding(Claim claim, Place at, String what, String mend) {
    return stop(
        at,
        what,
        "The letter asks nothing for it: you may believe that it does.",
        mend,
        List.of(claim.named()));
  }
}
