package kitwright.money;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Spend;
import kitwright.spending.Exchange;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.Ref;

/**
 * Why each line is forecast to end over or under its budget. The parts of a line add up to its
 * {@link LineState#over} to the minor unit.
 *
 * <p>Spends that a shortage, a substitution or a damaged tool caused, that were forgotten, or that
 * are flagged as more of something, were not planned: all of them is a part. Of others, what is
 * beyond the standard price is a part, and so is what was bought beyond the planned quantity, where
 * the records hold them ({@link Standard}). All this is at the rate that the budget was made with;
 * what rates have done since is a part of its own. What is left is the rest; where it is above
 * zero, spends flagged {@code price} that nothing could be compared with take from it, up to their
 * amounts.
 */
public final class Why {
  /**
   * One part.
   *
   * @param of the shortage, substitution or borrowed tool; empty for other causes, and where the
   *     spend names none
   * @param amount above zero where it makes the line dearer
   * @param recoverable of it, what an unanswered claim asks back
   */
  public record Part(
      String line, Cause cause, Optional<String> of, Money amount, Money recoverable) {}

  private record Key(Cause cause, Optional<String> of) {}

  private final Money zero;
  private final Account account;
  private final Standard standard;
  private final Recoverable recoverable;

  private Why(Ledger ledger, Account account) {
    this.account = account;
    zero = Money.zero(ledger.build().currency());
    standard =
        new Standard(
            ledger,
            Exchange.of(ledger),
            account.spends(),
            account.spends().stream().filter(Why::isPlanned).toList());
    recoverable = new Recoverable(account);
  }

  /** The parts of every line, in the order of {@link Account#all}; none of them is zero. */
  public static List<Part> of(Ledger ledger, Account account) {
    Why why = new Why(ledger, account);
    Map<String, List<Valued>> byLine = new HashMap<>();
    account
        .spends()
        .forEach(each -> byLine.computeIfAbsent(each.line(), line -> new ArrayList<>()).add(each));
    return account.all().stream()
        .flatMap(line -> why.parts(line, byLine.getOrDefault(line.line(), List.of())).stream())
        .toList();
  }

  private List<Part> parts(LineState line, List<Valued> spends) {
    Sums sums = new Sums();
    Map<String, List<Valued>> caused = new HashMap<>();
    for (Valued each : spends) {
      assign(each, sums);
      if (each.signed().signum() > 0) {
        each.because()
            .ifPresent(ref -> caused.computeIfAbsent(ref.id(), id -> new ArrayList<>(1)).add(each));
      }
    }
    account.ways().stream()
        .filter(open -> open.line().equals(line.line()))
        .forEach(
            open -> sums.add(Cause.SHORTAGE, Optional.of(open.shortage().id()), open.likely()));
    account.repairs().stream()
        .filter(repair -> repair.line().equals(line.line()))
        .forEach(
            repair ->
                repair
                    .likely()
                    .ifPresent(
                        cost -> sums.add(Cause.REPAIR, Optional.of(repair.loan().id()), cost)));
    sums.add(Cause.CURRENCY, Optional.empty(), line.byRate());
    Money rest = line.over().minus(sums.total());
    Money flagged = sums.uncompared.min(rest).max(zero);
    sums.add(Cause.PRICE, Optional.empty(), flagged);
    sums.add(Cause.REST, Optional.empty(), rest.minus(flagged));
    return sums.parts(line.line(), caused);
  }

  /** Whether no record names another reason for it than what was planned. */
  private static boolean isPlanned(Valued each) {
    return each.because().isEmpty()
        && each.substitution().isEmpty()
        && each.repairs().isEmpty()
        && each.cause().filter(cause -> cause != Spend.Cause.PRICE).isEmpty();
  }

  private void assign(Valued each, Sums sums) {
    Money planned = each.signed(each.planned());
    Optional<Spend.Cause> cause = each.cause();
    if (each.because().isPresent() || cause.filter(Spend.Cause.SHORTAGE::equals).isPresent()) {
      sums.add(Cause.SHORTAGE, each.because().map(Ref::id), planned);
    } else if (each.substitution().isPresent()
        || cause.filter(Spend.Cause.SUBSTITUTION::equals).isPresent()) {
      sums.add(Cause.SUBSTITUTION, each.substitution().map(Ref::id), planned);
    } else if (each.repairs().isPresent()) {
      sums.add(Cause.REPAIR, each.repairs().map(Ref::id), planned);
    } else if (cause.filter(Spend.Cause.FORGOTTEN::equals).isPresent()) {
      sums.add(Cause.FORGOTTEN, Optional.empty(), planned);
    } else {
      compare(each, cause, planned, sums);
    }
  }

  /** Splits a purchase by the price and the quantity that were planned, where they are known. */
  private void compare(Valued each, Optional<Spend.Cause> cause, Money planned, Sums sums) {
    Optional<Money> atStandard = standard.cost(each).map(each::signed);
    Money cost = atStandard.orElse(planned);
    boolean more = cause.filter(Spend.Cause.QUANTITY::equals).isPresent();
    Money beyond = more ? cost : standard.beyond(each, cost);
    sums.add(Cause.QUANTITY, Optional.empty(), beyond);
    if (atStandard.isPresent()) {
      sums.add(Cause.PRICE, Optional.empty(), planned.minus(cost));
    } else if (cause.filter(Spend.Cause.PRICE::equals).isPresent()) {
      sums.uncompared = sums.uncompared.plus(planned.minus(beyond));
    }
  }

  /** The sums by cause of one line. */
  private final class Sums {
    private final Map<Key, Money> all = new LinkedHashMap<>();
    private Money uncompared = zero;

    void add(Cause cause, Optional<String> of, Money amount) {
      all.merge(new Key(cause, of), amount, Money::plus);
    }

    Money total() {
      return all.values().stream().reduce(zero, Money::plus);
    }

    List<Part> parts(String line, Map<String, List<Valued>> caused) {
      List<Part> parts = new ArrayList<>();
      all.forEach(
          (key, amount) -> {
            if (amount.signum() != 0) {
              Money back =
                  key.cause() == Cause.SHORTAGE && key.of().isPresent()
                      ? recoverable.take(
                          key.of().get(), caused.getOrDefault(key.of().get(), List.of()), amount)
                      : zero;
              parts.add(new Part(line, key.cause(), key.of(), amount, back));
            }
          });
      parts.sort(
          java.util.Comparator.comparing(Part::cause).thenComparing(part -> part.of().orElse("")));
      return List.copyOf(parts);
    }
  }

  /** Shares what unanswered claims ask out to the parts, each cent once. */
  private static final class Recoverable {
    private final Map<String, Money> claimed = new HashMap<>();
    private final Map<String, Money> goods = new HashMap<>();
    private final Money zero;

    Recoverable(Account account) {
      zero = Money.zero(account.whole().budget().currency());
      account.claims().stream()
          .filter(back -> back.state() == Back.State.ASKED)
          .forEach(
              back -> {
                back.costsOf().forEach((id, cost) -> claimed.merge(id, cost, Money::plus));
                back.goodsOf().forEach((id, worth) -> goods.merge(id, worth, Money::plus));
              });
    }

    /** Of what a shortage adds to a line, by the spends that it caused there. */
    Money take(String shortage, List<Valued> spends, Money amount) {
      Money most = amount.max(zero);
      Money costs =
          spends.stream()
              .map(each -> claimed.getOrDefault(each.spend().id(), zero).min(each.counted()))
              .reduce(zero, Money::plus)
              .min(most);
      Money left = goods.getOrDefault(shortage, zero);
      Money worth = left.min(most.minus(costs));
      goods.put(shortage, left.minus(worth));
      return costs.plus(worth);
    }
  }
}
