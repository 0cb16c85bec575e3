package kitwright.claim;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Claim.Settlement;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Shortage;
import kitwright.value.Days;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * Fires where the end of a claim, or of a line of it, leaves out or contradicts what it rests on.
 */
public final class SettlementContradictory implements RecordRule<Claim> {
  @Override
  public List<Claim> records(Facts day) {
    return day.ledger().claims();
  }

  @Override
  public void examine(Claim claim, Facts day, Findings out) {
    List<Settlement> ends =
        Stream.concat(
                claim.asked().stream().flatMap(line -> line.settled().stream()),
                claim.settled().stream())
            .toList();
    ends.forEach(end -> money(claim, end, out));
    ends.stream()
        .filter(any -> claim.sent().isEmpty() && !isWithdrawn(ends))
        .findFirst()
        .ifPresent(end -> unsent(claim, end, out));
    claim.events().stream()
        .filter(event -> event.expect().isPresent())
        .forEach(event -> end(claim, event).ifPresent(end -> after(claim, event, end, out)));
    for (Claim.Asked line : claim.asked()) {
      day.ledger().shortage(line.shortage()).ifPresent(each -> beyond(claim, line, each, out));
    }
  }

  private static boolean isWithdrawn(List<Settlement> ends) {
    return ends.stream().allMatch(end -> end.how() == Claim.Outcome.WITHDRAWN);
  }

  private void money(Claim claim, Settlement end, Findings out) {
    boolean grants =
        switch (end.how()) {
          case CREDITED, REFUNDED -> true;
          case REPLACED, REFUSED, WITHDRAWN -> false;
        };
    boolean none =
        switch (end.how()) {
          case REFUSED, WITHDRAWN -> true;
          case REPLACED, CREDITED, REFUNDED -> false;
        };
    String how = Word.key(end.how());
    if (grants && end.amount().isEmpty()) {
      out.add(
          finding(
              claim,
              end.at().of("how"),
              "was " + how + " on " + Days.named(end.on()) + ", and nobody says how much",
              "Nothing of it counts as granted, and nobody sees whether all of it came.",
              "Write the money under “amount”, as their letter has it."));
    } else if (none && end.amount().filter(sum -> sum.signum() > 0).isPresent()) {
      out.add(
          finding(
              claim,
              end.at().of("amount"),
              "was " + how + " on " + Days.named(end.on()) + ", and yet grants money",
              "The money counts as granted, though nothing was.",
              "Correct how it ended, or take the amount out."));
    }
  }

  private void unsent(Claim claim, Settlement end, Findings out) {
    out.add(
        finding(
            claim,
            end.at().of("on"),
            "was settled on " + Days.named(end.on()) + ", and nobody says that it was sent",
            "What nobody was asked for nobody has settled: one of the two is not recorded.",
            "Write the day on which it went out under “sent”, or take the end out."));
  }

  /** The end, other than by goods, that came before what was promised of it. */
  private static Optional<Settlement> end(Claim claim, Claim.Event event) {
    return Stream.concat(
            claim.settled().stream(),
            claim.asked().stream()
                .filter(line -> event.of().stream().allMatch(of -> isOf(line, of)))
                .filter(line -> !event.of().isEmpty())
                .flatMap(line -> line.settled().stream())
                .filter(end -> end.qty().isEmpty()))
        .filter(end -> end.how() != Claim.Outcome.REPLACED && event.on().isAfter(end.on()))
        .findFirst();
  }

  private static boolean isOf(Claim.Asked line, Ref shortage) {
    return line.shortage().id().equals(shortage.id());
  }

  private void after(Claim claim, Claim.Event event, Settlement end, Findings out) {
    out.add(
        finding(
            claim,
            event.at().of("expect"),
            "has an end (“"
                + Word.spoken(end.how())
                + "” on "
                + Days.named(end.on())
                + "), and after it something is promised for "
                + Days.named(event.expect().orElseThrow()),
            "What is promised for what has ended counts as nothing: no plan waits for it.",
            "If the promise holds, take the end (“settled”) out; else take the promise out."));
  }

  /** Parts that come to more than the line. */
  private void beyond(Claim claim, Claim.Asked line, Shortage shortage, Findings out) {
    Quantity asked = Asking.qty(line, shortage, claim);
    Quantity sum = Quantity.none(asked.unit());
    for (Settlement end : line.settled()) {
      Quantity before = sum;
      sum = end.qty().filter(sum::convertsTo).map(sum::plus).orElse(sum);
      if (sum.compareAmount(asked) > 0 && before.compareAmount(asked) <= 0) {
        out.add(
            finding(
                claim,
                end.at().of("qty"),
                "has "
                    + sum.told(shortage.item().id())
                    + " settled, of "
                    + asked.told()
                    + " that it asks",
                "The same pieces ended in two ways; what is still owed is told wrongly.",
                "Correct the quantities: each piece was replaced, credited, refunded or refused."));
      }
    }
  }

  private Finding finding(Claim claim, Place at, String what, String follows, String mend) {
    return warn(
        at, "The " + claim.named() + " " + what + ".", follows, mend, List.of(claim.named()));
  }
}
