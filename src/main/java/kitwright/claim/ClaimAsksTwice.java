package kitwright.claim;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Quantity;

/** Fires where more of a shortage is asked than it lacks: the same pieces in two ways, or twice. */
public final class ClaimAsksTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Map<String, Quantity> asked = new HashMap<>();
    Map<String, Set<String>> by = new HashMap<>();
    for (Claim claim : day.ledger().claims()) {
      if (!isGivenUp(claim.settled().stream())) {
        examine(claim, day, asked, by, out);
      }
    }
  }

  /**
   * Whether the goods may be asked for anew: nobody gave anything for them. Of what was to be
   * replaced and did not come another rule tells.
   */
  private static boolean isGivenUp(Stream<Claim.Settlement> ends) {
    return ends.anyMatch(
        end ->
            switch (end.how()) {
              case REPLACED, REFUSED, WITHDRAWN -> true;
              case CREDITED, REFUNDED -> false;
            });
  }

  private void examine(
      Claim claim,
      Facts day,
      Map<String, Quantity> asked,
      Map<String, Set<String>> by,
      Findings out) {
    Map<String, Claim.Asked> lines = new LinkedHashMap<>();
    claim.asked().forEach(line -> lines.put(line.shortage().id(), line));
    for (Asking part : Asking.of(claim, day)) {
      if (isGivenUp(part.settled().stream())) {
        continue;
      }
      Shortage shortage = part.shortage();
      Quantity none = Quantity.none(shortage.qty().unit());
      Quantity qty = part.qty().convertsTo(none) ? none.plus(part.qty()) : none;
      Quantity sum = asked.merge(shortage.id(), qty, Quantity::plus);
      Set<String> claims = by.computeIfAbsent(shortage.id(), id -> new LinkedHashSet<>());
      boolean again = qty.isNone() && !sum.isNone();
      if (sum.compareAmount(shortage.qty()) > 0 || again) {
        Optional.ofNullable(lines.remove(shortage.id()))
            .ifPresent(line -> out.add(finding(claim, line, shortage, sum, claims)));
      }
      claims.add(claim.id());
    }
  }

  /**
   * @param claims that ask for some of it before
   */
  private Finding finding(
      Claim claim, Claim.Asked line, Shortage shortage, Quantity sum, Set<String> claims) {
    List<String> others = claims.stream().filter(each -> !each.equals(claim.id())).toList();
    return stop(
        line.shortage().at(),
        "With this, "
            + sum.told(shortage.item().id())
            + " are asked for the shortage "
            + shortage.id()
            + ", which lacks "
            + shortage.qty().told()
            + (others.isEmpty() ? "" : "; asked already by " + String.join(", ", others))
            + ".",
        "The same pieces are asked for twice, and the supplier can show it.",
        "Give each line its “qty”, or take the shortage out of one of the claims or lines.",
        List.of(claim.named(), shortage.named()));
  }
}
