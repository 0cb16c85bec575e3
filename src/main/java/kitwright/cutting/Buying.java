package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.cutting.solve.Effort;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Stock;
import kitwright.value.Money;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * What it would take to make every part of a cut: the least to buy of what the cut names under
 * “buy”, beside the stock that is free, which costs nothing more.
 *
 * @param pieces how many of each offer
 * @param cost of them all, in the build's currency
 * @param lead the longest of their lead times, in days; empty where one does not state it
 * @param missing what cannot be made even so, by its mark
 * @param outcome how good that is known to be, in words
 * @param leftOut which offers are not compared and why, a sentence each
 */
public record Buying(
    Map<Cut.Offer, Integer> pieces,
    Money cost,
    Optional<Integer> lead,
    Map<String, Integer> missing,
    String outcome,
    List<String> leftOut) {

  /** Empty where nothing is missing, or nothing is offered. */
  public static Optional<Buying> of(CutPlan plan, Facts day, Effort effort) {
    return plan.missing().isEmpty() || plan.cut().buy().isEmpty()
        ? Optional.empty()
        : Optional.of(new Shopping(plan, day).buy(effort));
  }

  private static final class Shopping {
    private final CutPlan plan;
    private final Facts day;
    private final Map<String, Cut.Offer> offers = new LinkedHashMap<>();
    private final List<String> leftOut = new ArrayList<>();

    Shopping(CutPlan plan, Facts day) {
      this.plan = plan;
      this.day = day;
      for (Cut.Offer offer : plan.cut().buy()) {
        String id = "offer " + (offers.size() + 1);
        Optional<String> why = unusable(id, offer);
        why.ifPresentOrElse(leftOut::add, () -> offers.put(id, offer));
      }
    }

    private Optional<String> unusable(String id, Cut.Offer offer) {
      if (offer.size().isEmpty()) {
        return Optional.of("“" + offer.what() + "” is not compared: it has no size.");
      }
      if (offer.price().isEmpty()) {
        return Optional.of("“" + offer.what() + "” is not compared: it has no price.");
      }
      return Worths.unusable(stock(id, offer), day.ledger(), day.day())
          .map(why -> "“" + offer.what() + "” is not compared: its price" + why);
    }

    Buying buy(Effort effort) {
      List<Rack.Free> pieces = new ArrayList<>();
      plan.rack().pieces().forEach(free -> pieces.add(atHand(free)));
      int most = plan.cut().parts().stream().mapToInt(Cut.Part::qty).sum();
      List<Ref> from = new ArrayList<>(plan.cut().from());
      offers.forEach(
          (id, offer) -> {
            Ref ref = new Ref(id, offer.at().record());
            from.add(ref);
            pieces.add(new Rack.Free(stock(id, offer), most, 1, ref));
          });
      CutPlan all =
          CutPlan.from(drawing(plan.cut(), from), new Rack(pieces, List.of()), day, effort);
      Map<Cut.Offer, Integer> bought = new LinkedHashMap<>();
      all.used()
          .forEach(
              (id, n) ->
                  Optional.ofNullable(offers.get(id))
                      .ifPresent(offer -> bought.merge(offer, n, Integer::sum)));
      String outcome =
          !all.outcome().isProvedBest()
              ? "Perhaps not the least there could be."
              : (leftOut.isEmpty() ? "Proved least" : "Least of what is compared")
                  + ": no plan "
                  + all.manner().words()
                  + " buys for less.";
      return new Buying(
          bought,
          all.worth().orElse(Money.zero(day.ledger().build().currency())),
          lead(bought),
          all.missing(),
          outcome,
          leftOut);
    }

    private static Optional<Integer> lead(Map<Cut.Offer, Integer> bought) {
      List<Optional<Integer>> days =
          bought.keySet().stream()
              .map(
                  offer ->
                      offer
                          .lead()
                          .map(
                              lead ->
                                  lead.in(Unit.DAY)
                                      .amount()
                                      .setScale(0, java.math.RoundingMode.CEILING)
                                      .intValue()))
              .toList();
      return days.stream().allMatch(Optional::isPresent)
          ? days.stream().flatMap(Optional::stream).max(Integer::compare)
          : Optional.empty();
    }

    /** What lies on the rack costs nothing more. */
    private Rack.Free atHand(Rack.Free free) {
      Stock stock = free.stock();
      Price nothing = new Price(BigDecimal.ZERO, day.ledger().build().currency(), Optional.empty());
      Stock owned =
          new Stock(
              stock.id(),
              stock.what(),
              stock.qty(),
              stock.size(),
              stock.pieces(),
              stock.material(),
              stock.keepFor(),
              Optional.of(nothing),
              stock.grain(),
              stock.flaws(),
              stock.since(),
              stock.bought(),
              stock.at());
      return new Rack.Free(owned, free.count(), free.first(), free.at());
    }

    private static Stock stock(String id, Cut.Offer offer) {
      return new Stock(
          id,
          offer.what(),
          Optional.<Quantity>empty(),
          offer.size(),
          Optional.empty(),
          offer.material(),
          List.of(),
          offer.price(),
          offer.grain().map(grain -> grain.name().toLowerCase(java.util.Locale.ROOT)),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          offer.at());
    }

    private static Cut drawing(Cut cut, List<Ref> from) {
      return new Cut(
          cut.id(),
          cut.task(),
          cut.instead(),
          from,
          cut.kerf(),
          cut.ripKerf(),
          cut.trim(),
          cut.edgeTrim(),
          cut.keep(),
          cut.keepLength(),
          cut.first(),
          cut.stages(),
          cut.parts(),
          cut.buy(),
          cut.done(),
          cut.used(),
          cut.at());
    }
  }
}
