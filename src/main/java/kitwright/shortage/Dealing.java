package kitwright.shortage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.kit.Positions;
import kitwright.ledger.Entry;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.substitution.LeavingOut;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.substitution.TakenWays;
import kitwright.value.Quantity;

/** Deals out what comes for the shortages of one item, in the order in which it comes. */
final class Dealing {
  /**
   * Something that is here.
   *
   * @param first ids of the shortages that it is for, if it names any
   * @param only whether it serves no other
   */
  private record Source(
      Cover.How how, Quantity qty, Entry by, LocalDate on, Set<String> first, boolean only) {}

  /**
   * Goods promised, and what the maker has sent of them since.
   *
   * @param since counted since the promise was given
   */
  private record Promise(Promised.Goods goods, Quantity since) {}

  private final LocalDate today;
  private final List<Rest> rests;
  private final List<Source> here = new ArrayList<>();
  private final List<Purchase> ordered = new ArrayList<>();
  private final List<Arrivals.ToCome> underWay = new ArrayList<>();
  private final Map<String, List<Promise>> promises = new LinkedHashMap<>();
  private final List<Cover> spare = new ArrayList<>();
  private final List<Coming> spareToCome = new ArrayList<>();

  Dealing(List<Shortage> oldestFirst, LocalDate today) {
    this.today = today;
    rests = oldestFirst.stream().map(Rest::new).toList();
  }

  /** What a count brought; from elsewhere than the kit's maker it was bought. */
  void arrived(Arrivals.Part part, boolean fromMaker) {
    here.add(
        new Source(
            fromMaker ? Cover.How.DELIVERED : Cover.How.BOUGHT,
            part.qty(),
            part.delivery(),
            part.on(),
            Set.of(part.shortage()),
            false));
  }

  /** Those of these shortages that a substitution is taken to get round. */
  Set<String> answeredBy(Substitution substitution, TakenWays taken) {
    return taken.of(substitution, rests.stream().map(rest -> rest.shortage().id()).toList());
  }

  void substituted(SubstitutionStanding standing, Quantity serves, Set<String> shortages) {
    if (standing.isApproved()) {
      here.add(
          new Source(
              Cover.How.SUBSTITUTED,
              serves,
              standing.substitution(),
              standing.signedOn().orElse(today),
              shortages,
              true));
    }
  }

  void bought(Purchase purchase) {
    if (purchase.here().isPresent()) {
      here.add(
          new Source(
              Cover.How.BOUGHT,
              purchase.qty(),
              purchase.spend(),
              purchase.here().get(),
              set(purchase.because()),
              false));
    } else {
      ordered.add(purchase);
    }
  }

  void sent(Arrivals.ToCome part) {
    underWay.add(part);
  }

  private static Set<String> set(Optional<String> id) {
    return id.map(Set::of).orElse(Set.of());
  }

  /** Deals out what is here, by day. */
  void deal(Ledger ledger) {
    here.stream().sorted(Comparator.comparing(Source::on)).forEach(this::deal);
    for (Rest rest : rests) {
      if (isDoneWithout(rest.shortage(), ledger)) {
        rest.take(
            Cover.How.DONE_WITHOUT,
            rest.left(),
            rest.shortage(),
            rest.shortage().decided().orElseThrow().on());
      }
    }
  }

  private boolean isDoneWithout(Shortage shortage, Ledger ledger) {
    return shortage.chosen().filter(option -> option.way() == Shortage.Way.DO_WITHOUT).isPresent()
        && LeavingOut.beyond(shortage, ledger).isEmpty();
  }

  private void deal(Source source) {
    Quantity left = source.qty();
    for (Rest rest : inOrder(source.first(), source.only())) {
      // What was bought before a shortage was found, and not because of it, was bought for else.
      boolean unasked = source.first().isEmpty() && source.on().isBefore(rest.shortage().found());
      if (!unasked) {
        left = left.less(rest.take(source.how(), left, source.by(), source.on()));
      }
    }
    boolean isGoods = source.by() instanceof kitwright.ledger.Spend;
    if (isGoods && !left.isNone()) {
      spare.add(new Cover(source.how(), left, source.by(), source.on()));
    }
  }

  /** The shortages that are named first, then the others, oldest first. */
  private List<Rest> inOrder(Set<String> first, boolean only) {
    List<Rest> order = new ArrayList<>();
    rests.stream().filter(rest -> first.contains(rest.shortage().id())).forEach(order::add);
    if (!only) {
      rests.stream().filter(rest -> !order.contains(rest)).forEach(order::add);
    }
    return order;
  }

  /**
   * Deals out what is on its way: what has a day to come, the first first; then what was promised
   * for such a day, goods sent without a day among it; then what has none, or had one that has
   * passed; then what is decided; and last promises whose day has passed, which bring nothing any
   * more but are told.
   */
  void expect(Ledger ledger, SubstitutionStandings substitutions, Positions positions) {
    underWay(true);
    underWay.replaceAll(this::asPromised);
    promises.forEach((shortage, all) -> promised(shortage, all, true));
    underWay(false);
    decide(ledger, substitutions, positions);
    promises.forEach((shortage, all) -> promised(shortage, all, false));
  }

  private void underWay(boolean current) {
    record Due(LocalDate on, Runnable deal) {}
    List<Due> due = new ArrayList<>();
    underWay.forEach(part -> due.add(new Due(day(part.delivery().expected()), () -> expect(part))));
    ordered.forEach(each -> due.add(new Due(day(expected(each)), () -> expect(each))));
    due.stream()
        .filter(each -> isCurrent(each.on()) == current)
        .sorted(Comparator.comparing(Due::on))
        .forEach(each -> each.deal().run());
  }

  /** Goods sent for no day that holds come for the day that was promised of what they are for. */
  private Arrivals.ToCome asPromised(Arrivals.ToCome part) {
    Quantity left = part.qty();
    if (!isCurrent(day(part.delivery().expected()))) {
      for (Rest rest : rests) {
        Optional<LocalDate> said =
            promises.getOrDefault(rest.shortage().id(), List.of()).stream()
                .map(each -> each.goods().on())
                .filter(this::isCurrent)
                .findFirst();
        if (said.isPresent()) {
          left = left.less(rest.expect(Coming.How.SENT, left, part.delivery(), said, today));
        }
      }
    }
    return new Arrivals.ToCome(part.delivery(), left);
  }

  private boolean isCurrent(LocalDate day) {
    return !day.isBefore(today) && day.isBefore(LocalDate.MAX);
  }

  private static LocalDate day(Optional<LocalDate> said) {
    return said.orElse(LocalDate.MAX);
  }

  /** As the order says; else as the way out says that was chosen and carried out by it. */
  private Optional<LocalDate> expected(Purchase purchase) {
    return purchase
        .expected()
        .or(
            () ->
                rests.stream()
                    .map(Rest::shortage)
                    .filter(each -> purchase.because().filter(each.id()::equals).isPresent())
                    .flatMap(each -> each.chosen().stream())
                    .filter(option -> option.way() == Shortage.Way.BUY)
                    .flatMap(option -> option.arrives().stream())
                    .findFirst());
  }

  private void expect(Arrivals.ToCome part) {
    Quantity left = part.qty();
    for (Rest rest : rests) {
      Optional<LocalDate> said = part.delivery().expected();
      left = left.less(rest.expect(Coming.How.SENT, left, part.delivery(), said, today));
    }
  }

  private void expect(Purchase purchase) {
    Quantity left = purchase.qty();
    Optional<LocalDate> said = expected(purchase);
    for (Rest rest : inOrder(set(purchase.because()), false)) {
      left = left.less(rest.expect(Coming.How.ORDERED, left, purchase.spend(), said, today));
    }
    if (!left.isNone()) {
      spareToCome.add(Coming.said(Coming.How.ORDERED, left, purchase.spend(), said, today));
    }
  }

  void promised(Shortage shortage, List<Promised.Goods> goods, Arrivals sent) {
    List<Promise> all =
        goods.stream().map(each -> new Promise(each, sent.of(shortage, each.said()))).toList();
    promises.put(shortage.id(), all);
  }

  /** A promise is of what is still owed: what is counted or under way since is a part of it. */
  private void promised(String shortage, List<Promise> all, boolean current) {
    for (Rest rest : rests) {
      if (rest.shortage().id().equals(shortage)) {
        all.stream()
            .filter(each -> isCurrent(each.goods().on()) == current)
            .forEach(each -> promised(rest, each));
      }
    }
  }

  private void promised(Rest rest, Promise promise) {
    Promised.Goods goods = promise.goods();
    Quantity since = promise.since().plus(rest.comingBy(Coming.How.SENT));
    Quantity most =
        goods
            .qty()
            .map(qty -> qty.convertsTo(since) ? qty.less(since) : Quantity.none(since.unit()))
            .orElseGet(rest::left);
    rest.expect(Coming.How.PROMISED, most, goods.claim(), Optional.of(goods.on()), today);
  }

  /** What is decided and neither ordered nor promised comes on the day that the way out says. */
  private void decide(Ledger ledger, SubstitutionStandings substitutions, Positions positions) {
    for (Rest rest : rests) {
      rest.shortage()
          .chosen()
          .filter(option -> Arrival.mayServe(option, substitutions))
          .ifPresent(
              option ->
                  Arrival.of(option, positions, ledger, today)
                      .ifPresent(day -> decide(rest, option, day, ledger)));
    }
  }

  private void decide(Rest rest, Shortage.Option option, LocalDate day, Ledger ledger) {
    Quantity most =
        option
            .substitution()
            .flatMap(ledger::substitution)
            .map(substitution -> substitution.insteadOf().qty())
            .map(qty -> qty.convertsTo(rest.left()) ? qty : rest.left())
            .orElse(rest.left());
    boolean isUsed = rest.covers().stream().anyMatch(cover -> cover.how() == Cover.How.SUBSTITUTED);
    if (option.substitution().isEmpty() || !isUsed) {
      rest.expect(Coming.How.DECIDED, most, rest.shortage(), Optional.of(day), today);
    }
  }

  List<Rest> rests() {
    return rests;
  }

  /** What was bought beyond every shortage, and is here. */
  List<Cover> spare() {
    return spare;
  }

  /** What is ordered beyond every shortage. */
  List<Coming> spareToCome() {
    return spareToCome;
  }
}
