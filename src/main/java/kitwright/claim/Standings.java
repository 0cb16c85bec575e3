package kitwright.claim;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.value.Ref;

/** How every claim stands on a day. */
public final class Standings {
  private static final Facts.Fact<Standings> FACT = new Work();

  private final Map<String, Standing> byId;
  private final List<Standing> all;

  private Standings(Map<String, Standing> byId) {
    this.byId = byId;
    this.all = List.copyOf(byId.values());
  }

  /** How every claim stands at the end of the day. */
  public static Standings on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<Standings> {
    @Override
    protected Standings work(Facts day) {
      return of(day, kitwright.shortage.Standings.on(day));
    }
  }

  /**
   * Judges every claim by what is recorded up to the end of a day: one sent later is a draft, and
   * one for shortages that were all found later does not stand there yet.
   */
  private static Standings of(Facts day, kitwright.shortage.Standings shortages) {
    Map<String, Standing> all = new LinkedHashMap<>();
    for (Claim claim : day.ledger().claims()) {
      if (!isOfLater(claim, day)) {
        all.putIfAbsent(claim.id(), standing(claim, day.ledger(), shortages, day.day()));
      }
    }
    return new Standings(all);
  }

  /** A claim has no day of its own before it is sent: it is there once one of its shortages is. */
  private static boolean isOfLater(Claim claim, Facts day) {
    List<Shortage> written =
        claim.shortages().stream().flatMap(ref -> day.written().shortage(ref).stream()).toList();
    return !written.isEmpty()
        && written.stream().allMatch(shortage -> shortage.found().isAfter(day.day()));
  }

  private static Standing standing(
      Claim claim, Ledger ledger, kitwright.shortage.Standings shortages, LocalDate today) {
    Optional<LocalDate> sent = claim.sent().filter(day -> !day.isAfter(today));
    List<Claim.Event> events =
        claim.events().stream()
            .filter(event -> !event.on().isAfter(today))
            .sorted(Comparator.comparing(Claim.Event::on))
            .toList();
    Optional<Claim.Settlement> settled = claim.settled().filter(end -> !end.on().isAfter(today));
    Standing.State state = state(sent, events, settled);
    boolean waits = state == Standing.State.SENT || state == Standing.State.ACKNOWLEDGED;
    return new Standing(
        claim,
        ledger.party(claim.against()),
        state,
        lines(claim, shortages),
        costs(claim, ledger),
        events,
        settled,
        promisedFor(events, settled),
        sent.map(day -> ChronoUnit.DAYS.between(day, today)),
        claim.replyBy().filter(day -> waits).map(day -> ChronoUnit.DAYS.between(today, day)));
  }

  private static Standing.State state(
      Optional<LocalDate> sent, List<Claim.Event> events, Optional<Claim.Settlement> settled) {
    if (settled.isPresent()) {
      return Standing.State.SETTLED;
    }
    if (sent.isEmpty()) {
      return Standing.State.DRAFT;
    }
    Standing.State state = Standing.State.SENT;
    for (Claim.Event event : events) {
      state =
          switch (event.what()) {
            case ACKNOWLEDGED -> state == Standing.State.SENT ? Standing.State.ACKNOWLEDGED : state;
            case ANSWERED, PROMISED, GRANTED, DELIVERED, PAID -> Standing.State.ANSWERED;
            case DISPUTED, REFUSED -> Standing.State.DISPUTED;
            case SENT, REMINDED -> state;
          };
    }
    return state;
  }

  private static List<Line> lines(Claim claim, kitwright.shortage.Standings shortages) {
    return claim.shortages().stream()
        .flatMap(ref -> shortages.of(ref).stream())
        .map(shortage -> new Line(shortage, shortages.balance(shortage.shortage().item())))
        .toList();
  }

  private static List<Spend> costs(Claim claim, Ledger ledger) {
    return claim.costs().stream().flatMap(ref -> ledger.spend(ref).stream()).toList();
  }

  private static Optional<LocalDate> promisedFor(
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
  public List<Standing> all() {
    return all;
  }

  public Optional<Standing> of(Ref claim) {
    return Optional.ofNullable(byId.get(claim.id()));
  }

  /** The claim with an id. */
  public Optional<Standing> of(String id) {
    return Optional.ofNullable(byId.get(id));
  }
}
