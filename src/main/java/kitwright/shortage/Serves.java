package kitwright.shortage;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.kit.StockPosition;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.Take;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;

/**
 * How much of what a substitution replaces it really stands for: none where nobody says what takes
 * the place, and no more than what it takes is there. Pieces without a size take the place of as
 * many pieces; a piece with a size, or a length, may be cut into more.
 *
 * @param qty in the unit of what is replaced
 * @param why where that is less than all of it, as a clause
 */
public record Serves(Quantity qty, Optional<String> why) {
  /** What a substitution stands for, by what is recorded up to the day of the positions. */
  public static Serves of(Substitution substitution, Positions positions, Ledger ledger) {
    Quantity all = substitution.insteadOf().qty();
    if (substitution.use().isEmpty()) {
      return new Serves(
          Quantity.none(all.unit()), Optional.of("nothing says what it takes for them"));
    }
    Serves serves = pieces(substitution, all, ledger);
    for (Take take : together(substitution.use())) {
      Optional<Quantity> there =
          take.spend().isPresent() ? came(take, positions, ledger) : there(take, positions);
      if (there.filter(each -> !each.convertsTo(take.qty())).isPresent()) {
        return new Serves(
            Quantity.none(all.unit()),
            Optional.of(
                "it takes "
                    + take.qty().told(id(take))
                    + ", of which "
                    + there.get().told()
                    + " are there, in another unit"));
      }
      if (there.isPresent() && there.get().compareAmount(take.qty().in(there.get().unit())) < 0) {
        Quantity part = part(all, there.get(), take.qty());
        if (part.compareAmount(serves.qty()) < 0) {
          serves =
              new Serves(
                  part,
                  Optional.of(
                      "it takes " + take.qty().told(id(take)) + ", and " + there(there.get())));
        }
      }
    }
    return serves;
  }

  /** What is taken of one thing on several lines, summed up. */
  public static List<Take> together(List<Take> takes) {
    Map<String, Take> all = new LinkedHashMap<>();
    for (Take take : takes) {
      String dimension = take.qty().unit().dimension().name();
      all.merge(
          take.stock().map(Ref::id)
              + " "
              + take.item().map(Ref::id)
              + " "
              + take.spend().map(Ref::id)
              + " "
              + dimension,
          take,
          (one, two) ->
              new Take(one.stock(), one.item(), one.spend(), one.qty().plus(two.qty()), one.at()));
    }
    return List.copyOf(all.values());
  }

  private static String there(Quantity there) {
    return there.isNone() ? "none are there" : "only " + there.told() + " are there";
  }

  private static String id(Take take) {
    return take.stock().or(take::item).or(take::spend).map(ref -> ref.id()).orElse("something");
  }

  /** Where all it takes is pieces without a size, one serves for one. */
  private static Serves pieces(Substitution substitution, Quantity all, Ledger ledger) {
    List<Take> takes = substitution.use();
    boolean alike =
        isCount(all) && takes.stream().allMatch(t -> isCount(t.qty()) && isUncut(t, ledger));
    Quantity taken =
        alike
            ? takes.stream().map(Take::qty).reduce(Quantity.none(all.unit()), Quantity::plus)
            : all;
    Optional<Serves> sized = sized(substitution, all, ledger);
    if (sized.isPresent()) {
      return sized.get();
    }
    return taken.compareAmount(all) < 0
        ? new Serves(taken, Optional.of("it takes no more than " + taken.told()))
        : new Serves(all, Optional.empty());
  }

  /** As many as could be cut of it, were nothing lost, where both say their size. */
  private static Optional<Serves> sized(Substitution substitution, Quantity all, Ledger ledger) {
    Optional<BigDecimal> one =
        substitution
            .insteadOf()
            .item()
            .flatMap(ledger::kitItem)
            .flatMap(KitItem::size)
            .map(Serves::area);
    BigDecimal taken = BigDecimal.ZERO;
    for (Take take : substitution.use()) {
      Optional<BigDecimal> each = size(take, ledger).map(Serves::area);
      if (one.isEmpty() || each.isEmpty() || !isCount(take.qty()) || !isCount(all)) {
        return Optional.empty();
      }
      taken = taken.add(each.get().multiply(take.qty().amount()));
    }
    Quantity most = new Quantity(taken.divideToIntegralValue(one.orElseThrow()), all.unit());
    return most.compareAmount(all) < 0
        ? Optional.of(
            new Serves(
                most,
                Optional.of("no more than " + most.told() + " could be cut of what it takes")))
        : Optional.empty();
  }

  private static Optional<Size> size(Take take, Ledger ledger) {
    return take.stock()
        .flatMap(ledger::stock)
        .flatMap(Stock::size)
        .or(() -> take.item().flatMap(ledger::kitItem).flatMap(KitItem::size));
  }

  private static BigDecimal area(Size size) {
    return size.length().multiply(size.width());
  }

  private static boolean isCount(Quantity qty) {
    return qty.unit().dimension() == Dimension.COUNT;
  }

  private static boolean isUncut(Take take, Ledger ledger) {
    Optional<Stock> stock = take.stock().flatMap(ledger::stock);
    Optional<KitItem> item = take.item().flatMap(ledger::kitItem);
    return stock.filter(each -> each.size().isEmpty()).isPresent()
        || item.filter(each -> each.size().isEmpty()).isPresent();
  }

  /** What there was of it before any was used; empty where no record tells how much. */
  private static Optional<Quantity> there(Take take, Positions positions) {
    Optional<Quantity> stock = take.stock().flatMap(positions::ofStock).map(StockPosition::amount);
    Optional<Quantity> item =
        take.item().flatMap(positions::of).filter(Position::isCounted).map(Position::good);
    boolean isUnknown = take.stock().isPresent() && stock.isEmpty();
    return isUnknown ? Optional.of(Quantity.none(take.qty().unit())) : stock.or(() -> item);
  }

  /** What came of what was bought; none of what nobody bought. */
  private static Optional<Quantity> came(Take take, Positions positions, Ledger ledger) {
    Quantity none = Quantity.none(take.qty().unit());
    Optional<Spend> bought = take.spend().flatMap(ledger::spend);
    Optional<Spend> root = bought.map(each -> each.pays().flatMap(ledger::spend).orElse(each));
    if (root.isEmpty()) {
      return Optional.of(none);
    }
    Quantity whole = root.get().qty().or(() -> bought.get().qty()).orElse(take.qty());
    Quantity here =
        new Purchases(ledger, positions.day())
            .parts(root.get(), whole)
            .filter(part -> part.here().isPresent())
            .map(Purchases.Part::qty)
            .reduce(Quantity.none(whole.unit()), Quantity::plus);
    return Optional.of(here);
  }

  /** As great a share of it as is there of what it takes, in whole pieces where it is counted. */
  private static Quantity part(Quantity all, Quantity there, Quantity asked) {
    BigDecimal share =
        there
            .amount()
            .divide(asked.in(there.unit()).amount(), MathContext.DECIMAL64)
            .multiply(all.amount());
    return new Quantity(isCount(all) ? share.setScale(0, RoundingMode.DOWN) : share, all.unit());
  }
}
