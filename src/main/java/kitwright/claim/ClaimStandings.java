package kitwright.claim;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.spending.Books;
import kitwright.spending.Returned;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import org.jspecify.annotations.Nullable;

/**
 * How every claim stands on a day: judged when it is first asked for, by what is recorded up to the
 * end of the day. One sent later is a draft, and one for shortages that were all found later does
 * not stand there yet.
 */
public final class ClaimStandings {
  private static final Facts.Fact<ClaimStandings> FACT = ClaimStandings::new;

  private final Facts day;
  private final Map<String, Claim> there = new LinkedHashMap<>();
  private final Map<String, ClaimStanding> alone = new HashMap<>();
  private final Map<String, ClaimStanding> judged = new HashMap<>();
  private @Nullable Map<String, List<Returned>> came;

  private ClaimStandings(Facts day) {
    this.day = day;
    for (Claim claim : day.ledger().claims()) {
      if (!isOfLater(claim, day)) {
        there.putIfAbsent(claim.id(), claim);
      }
    }
  }

  /** How every claim stands at the end of the day. */
  public static ClaimStandings on(Facts day) {
    return FACT.on(day);
  }

  private ClaimStanding judged(Claim claim) {
    ClaimStanding known = judged.get(claim.id());
    if (known == null) {
      ClaimStanding alone = alone(claim);
      known = alone.receiving(CameBack.of(cameFor(claim), alone.due(), day));
      judged.put(claim.id(), known);
    }
    return known;
  }

  /** Before anything came back. */
  private ClaimStanding alone(Claim claim) {
    return alone.computeIfAbsent(
        claim.id(), any -> standing(claim, day.ledger(), ShortageStandings.on(day), day.day()));
  }

  private List<Returned> cameFor(Claim claim) {
    Map<String, List<Returned>> known = came;
    if (known == null) {
      known =
          Books.on(day).returned().isEmpty()
              ? Map.of()
              : Allotting.of(there.values().stream().map(this::alone).toList(), day);
      came = known;
    }
    return known.getOrDefault(claim.id(), List.of());
  }

  /** A claim has no day of its own before it is sent: it is there once one of its shortages is. */
  private static boolean isOfLater(Claim claim, Facts day) {
    List<Shortage> written =
        claim.shortages().stream().flatMap(ref -> day.written().shortage(ref).stream()).toList();
    return !written.isEmpty()
        && written.stream().allMatch(shortage -> shortage.found().isAfter(day.day()));
  }

  private ClaimStanding standing(
      Claim claim, Ledger ledger, ShortageStandings shortages, LocalDate today) {
    Optional<LocalDate> sent = claim.sent();
    List<Claim.Event> events =
        claim.events().stream().sorted(Comparator.comparing(Claim.Event::on)).toList();
    Optional<Claim.Settlement> settled = claim.settled();
    List<Line> lines = lines(claim, ledger, shortages, events);
    List<Cost> costs = Asking.besides(claim, day);
    boolean over = settled.isPresent() || isOver(lines);
    boolean inPart = lines.stream().anyMatch(line -> !line.asking().settled().isEmpty());
    ClaimStanding.State state = state(sent, events, over, inPart);
    boolean waits = state == ClaimStanding.State.SENT || state == ClaimStanding.State.ACKNOWLEDGED;
    return new ClaimStanding(
        claim,
        ledger.party(claim.against()),
        state,
        lines,
        costs,
        events,
        settled,
        CameBack.NONE,
        promised(events, settled).filter(on -> !on.isBefore(today)),
        promised(events, settled).filter(today::isAfter),
        sent.map(on -> ChronoUnit.DAYS.between(on, today)),
        claim.replyBy().filter(on -> waits).map(on -> ChronoUnit.DAYS.between(today, on)));
  }

  private static ClaimStanding.State state(
      Optional<LocalDate> sent, List<Claim.Event> events, boolean over, boolean inPart) {
    if (over) {
      return ClaimStanding.State.SETTLED;
    }
    if (sent.isEmpty() && !inPart) {
      return ClaimStanding.State.DRAFT;
    }
    ClaimStanding.State state = inPart ? ClaimStanding.State.ANSWERED : ClaimStanding.State.SENT;
    for (Claim.Event event : events) {
      state =
          switch (event.what()) {
            case ACKNOWLEDGED ->
                state == ClaimStanding.State.SENT ? ClaimStanding.State.ACKNOWLEDGED : state;
            case ANSWERED, PROMISED, GRANTED, DELIVERED, PAID -> ClaimStanding.State.ANSWERED;
            case DISPUTED -> ClaimStanding.State.DISPUTED;
            case REFUSED -> ClaimStanding.State.REFUSED;
            case SENT, REMINDED -> state;
          };
    }
    return state;
  }

  /** Whether each line has an end of its own. */
  private static boolean isOver(List<Line> lines) {
    return !lines.isEmpty() && lines.stream().allMatch(line -> line.asking().isSettled());
  }

  private List<Line> lines(
      Claim claim, Ledger ledger, ShortageStandings shortages, List<Claim.Event> events) {
    List<Asking> all = Asking.of(claim, day);
    Map<String, Quantity> sent = new HashMap<>();
    List<Line> lines = new ArrayList<>();
    for (Asking asking : all) {
      shortages
          .of(ref(asking))
          .ifPresent(
              shortage -> {
                Quantity came = sent.getOrDefault(asking.shortage().id(), shortage.sent());
                // What was sent answers first the goods that were asked.
                Quantity forOthers = asking.isForMoney() ? goodsAsked(all, asking) : none(asking);
                Quantity part = came.less(forOthers).min(asking.qty());
                sent.put(asking.shortage().id(), came.less(part));
                lines.add(line(asking, shortage, shortages, part, events, ledger));
              });
    }
    return lines;
  }

  private static Quantity none(Asking asking) {
    return Quantity.none(asking.qty().unit());
  }

  private static Quantity goodsAsked(List<Asking> all, Asking of) {
    return all.stream()
        .filter(each -> each.shortage().id().equals(of.shortage().id()) && !each.isForMoney())
        .map(Asking::qty)
        .reduce(none(of), Quantity::plus);
  }

  private static Ref ref(Asking asking) {
    return new Ref(asking.shortage().id(), asking.shortage().at().record());
  }

  private static Line line(
      Asking asking,
      ShortageStanding shortage,
      ShortageStandings shortages,
      Quantity sent,
      List<Claim.Event> events,
      Ledger ledger) {
    List<Money> settled = asking.settled().stream().flatMap(end -> end.amount().stream()).toList();
    return new Line(
        shortage,
        shortages.balance(shortage.shortage().item()),
        asking,
        sent,
        Sums.of(asking.money(asking.qty().less(sent), ledger).stream()),
        Sums.of(
            settled.isEmpty()
                ? granted(asking.shortage().id(), events).stream()
                : settled.stream()));
  }

  /** The last word on money for one shortage alone. */
  private static Optional<Money> granted(String shortage, List<Claim.Event> events) {
    return events.stream()
        .filter(event -> event.what() == Claim.What.GRANTED)
        .filter(event -> event.of().size() == 1 && event.of().get(0).id().equals(shortage))
        .flatMap(event -> event.amount().stream())
        .reduce((earlier, later) -> later);
  }

  private static Optional<LocalDate> promised(
      List<Claim.Event> events, Optional<Claim.Settlement> settled) {
    if (settled.filter(end -> end.how() != Claim.Outcome.REPLACED).isPresent()) {
      return Optional.empty();
    }
    return events.stream()
        .filter(event -> event.expect().isPresent())
        .reduce((earlier, later) -> later)
        .flatMap(Claim.Event::expect);
  }

  /** Every claim, in the ledger's order. */
  public List<ClaimStanding> all() {
    return there.values().stream().map(this::judged).toList();
  }

  /**
   * The claim with an id as its letter tells it: as it stood on the day it was sent, a draft as of
   * today.
   */
  public static Optional<ClaimStanding> asTold(String id, Facts now) {
    Optional<Facts> then =
        now.written().claims().stream()
            .filter(claim -> claim.id().equals(id))
            .findFirst()
            .flatMap(Claim::sent)
            .filter(day -> !day.isAfter(now.day()))
            .map(now::on);
    return then.flatMap(day -> on(day).of(id)).or(() -> on(now).of(id));
  }

  /** The claim with an id. */
  public Optional<ClaimStanding> of(String id) {
    return Optional.ofNullable(there.get(id)).map(this::judged);
  }
}
