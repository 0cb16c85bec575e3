package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.network.Crates;
import kitwright.network.Plan;
import kitwright.network.WorkTime;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Notice;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.shortage.Thing;
import kitwright.shortage.Undelivered;
import kitwright.shortage.Wanted;
import kitwright.value.Days;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** What somebody owes an answer or goods for, and what nobody has counted. */
final class WaitingMatters {
  private final Facts now;
  private final Needed needed;

  WaitingMatters(Facts now, Needed needed) {
    this.now = now;
    this.needed = needed;
  }

  Stream<OpenMatter> claims() {
    return ClaimStandings.on(now).all().stream()
        .filter(standing -> standing.state() != ClaimStanding.State.SETTLED)
        .map(this::claim);
  }

  private OpenMatter claim(ClaimStanding standing) {
    Claim claim = standing.claim();
    List<Wanted> waiting =
        claim.shortages().stream()
            .flatMap(ref -> ShortageStandings.on(now).of(ref).stream())
            .filter(ShortageStanding::isOpen)
            .flatMap(each -> LookAhead.on(now).ofItem(each.shortage().item()).stream())
            .filter(wanted -> !wanted.missing().isNone() || !wanted.toCome().isEmpty())
            .toList();
    Optional<OpenMatter.Stop> stop = needed.of(waiting.stream().map(Wanted::task).toList());
    return new OpenMatter(
        OpenMatter.Sort.CLAIM,
        claim.named(),
        state(standing),
        stop,
        standing.isDraft() ? "you" : standing.against().map(Party::name).orElse("the supplier"),
        next(standing, Awaited.last(stop, waiting, now)),
        actBy(standing),
        standing.promisedFor());
  }

  /** A draft is to be sent while the notice runs; an answer is to be pressed for when it is due. */
  private Optional<LocalDate> actBy(ClaimStanding standing) {
    return switch (standing.state()) {
      case DRAFT ->
          standing.claim().shortages().stream()
              .flatMap(ref -> now.ledger().shortage(ref).stream())
              .flatMap(
                  shortage -> Notice.of(shortage, ShortageStandings.on(now), now.ledger()).stream())
              .map(Notice::last)
              .min(LocalDate::compareTo);
      case SENT, ACKNOWLEDGED -> standing.claim().replyBy();
      case ANSWERED, DISPUTED, REFUSED, SETTLED -> Optional.empty();
    };
  }

  private static String state(ClaimStanding standing) {
    return switch (standing.state()) {
      case DRAFT -> "drafted, not sent";
      case SENT -> "sent, no word since" + reply(standing);
      case ACKNOWLEDGED -> "received by them, not answered" + reply(standing);
      case ANSWERED -> "answered, not settled";
      case DISPUTED -> "disputed";
      case REFUSED -> "refused, not settled";
      case SETTLED -> "settled";
    };
  }

  private static String reply(ClaimStanding standing) {
    return standing
        .daysLeft()
        .map(
            days ->
                days < 0
                    ? "; reply " + Days.told(-days) + " overdue"
                    : "; reply due " + (days == 0 ? "today" : "in " + Days.told(days)))
        .orElse("");
  }

  private static String next(ClaimStanding standing, Optional<LocalDate> last) {
    return switch (standing.state()) {
      case DRAFT -> "send it";
      case SENT, ACKNOWLEDGED -> Awaited.of(standing, last);
      case ANSWERED ->
          standing
              .promisedFor()
              .map(day -> "see that it comes on " + Days.named(day))
              .or(
                  () ->
                      standing
                          .lapsed()
                          .map(day -> "ask again: they promised it for " + Days.named(day)))
              .orElse("settle it, or write again");
      case DISPUTED, REFUSED -> "answer them with the evidence";
      case SETTLED -> "nothing";
    };
  }

  Stream<OpenMatter> deliveries() {
    return now.ledger().deliveries().stream()
        .filter(each -> each.received().isEmpty())
        .map(this::delivery);
  }

  private OpenMatter delivery(Delivery delivery) {
    Optional<LocalDate> expected = delivery.expected();
    boolean late = expected.filter(now.day()::isAfter).isPresent();
    return new OpenMatter(
        OpenMatter.Sort.DELIVERY,
        delivery.named(),
        "on its way"
            + delivery.sent().map(day -> " since " + Days.named(day)).orElse("")
            + delivery.note().map(note -> " with note " + note).orElse("")
            + (expected.isEmpty() ? ", nobody says for when" : ""),
        needed.of(waitingFor(delivery)),
        party(delivery.from()),
        late || expected.isEmpty()
            ? "ask where it is, and write its new day under “expected:”"
            : "be there on " + Days.named(expected.get()) + ", and count it the same day",
        Optional.empty(),
        expected);
  }

  /** Deliveries that came and were not counted: what is missing in them nobody knows. */
  Stream<OpenMatter> unopened() {
    return now.ledger().deliveries().stream()
        .filter(each -> each.received().isPresent())
        .filter(each -> !each.isCounted())
        .map(this::unopened);
  }

  private OpenMatter unopened(Delivery delivery) {
    return new OpenMatter(
        OpenMatter.Sort.COUNT,
        delivery.named(),
        "came on " + Days.named(delivery.received().orElseThrow()) + ", not counted",
        needed.of(hopingFor(delivery)),
        "you",
        "count it, and record what is missing while the notice runs",
        notice(delivery, now.ledger()),
        Optional.empty());
  }

  /** The tasks that lack what may lie in a delivery that nobody has counted. */
  private List<String> hopingFor(Delivery delivery) {
    List<String> tasks = new ArrayList<>(leaning(delivery.named()));
    delivery.packed().stream()
        .flatMap(line -> LookAhead.on(now).ofItem(line.item()).stream())
        .filter(wanted -> wanted.isShort() || !wanted.uncounted().isNone())
        .map(Wanted::task)
        .forEach(tasks::add);
    return tasks;
  }

  /** The last day to tell the sender of what is missing in a delivery, as far as anybody knows. */
  static Optional<LocalDate> notice(Delivery delivery, Ledger ledger) {
    return delivery
        .received()
        .flatMap(
            came ->
                ledger
                    .party(delivery.from())
                    .flatMap(Party::notice)
                    .map(time -> came.plusDays(WorkTime.calendarDays(time))));
  }

  /** The tasks that take what a record brings, or lack it since nobody knows when it comes. */
  private List<String> waitingFor(String record) {
    LookAhead ahead = LookAhead.on(now);
    return tasks(
        wanted ->
            wanted.leansOn(record)
                || (!wanted.missing().isNone()
                    && ahead.dayless(wanted.thing()).stream()
                        .anyMatch(each -> each.by().equals(record))));
  }

  /** The same of a delivery, with the tasks that unpack it. */
  private List<String> waitingFor(Delivery delivery) {
    return Stream.concat(
            waitingFor(delivery.named()).stream(), Crates.unpackedBy(delivery, now).stream())
        .toList();
  }

  private List<String> leaning(String record) {
    return tasks(wanted -> wanted.leansOn(record));
  }

  private List<String> tasks(Predicate<Wanted> which) {
    return LookAhead.on(now).all().stream().filter(which).map(Wanted::task).toList();
  }

  private String party(Ref ref) {
    return now.ledger().party(ref).map(Party::name).orElse(ref.id());
  }

  /** Orders and advance payments of which nothing shows that the goods came. */
  Stream<OpenMatter> orders() {
    return Undelivered.on(now).map(this::order);
  }

  private OpenMatter order(Undelivered undelivered) {
    Spend spend = undelivered.spend();
    Optional<LocalDate> expected = undelivered.expected();
    List<String> tasks = new ArrayList<>(waitingFor(spend.named()));
    spend.because().ifPresent(shortage -> tasks.addAll(leaning("shortage " + shortage.id())));
    return new OpenMatter(
        OpenMatter.Sort.ORDER,
        spend.named(),
        undelivered.rest().map(rest -> rest.told(spend.what())).orElse(spend.what())
            + ": "
            + (spend.state() == Spend.State.PAID ? "paid" : "ordered")
            + ", not here",
        needed.of(tasks),
        spend.to().map(now.ledger()::nameOf).orElse("the seller"),
        expected.map(this::nextOfOrder).orElse("ask when it comes, and write “expected:”"),
        Optional.empty(),
        expected);
  }

  private String nextOfOrder(LocalDate expected) {
    return expected.isBefore(now.day())
        ? "ask where it is, and write its new day under “expected:”, or “came:” once it is here"
        : "see that it comes on " + Days.named(expected);
  }

  Stream<OpenMatter> counts() {
    Map<Thing, List<Wanted>> byThing = new LinkedHashMap<>();
    LookAhead.on(now)
        .countBefore(Plan.on(now).horizon())
        .forEach(
            wanted -> byThing.computeIfAbsent(wanted.thing(), t -> new ArrayList<>()).add(wanted));
    return byThing.entrySet().stream().map(entry -> count(entry.getKey(), entry.getValue()));
  }

  private OpenMatter count(Thing thing, Collection<Wanted> wanted) {
    Quantity asked =
        wanted.stream().map(Wanted::uncounted).reduce(Quantity.none(thing.unit()), Quantity::plus);
    return new OpenMatter(
        OpenMatter.Sort.COUNT,
        thing.record(),
        thing.so(asked) + ": nobody has counted it",
        needed.of(wanted.stream().map(Wanted::task).toList()),
        "you",
        hasComeAtAll() ? "count it" : "record the delivery that brings it, and count it",
        Optional.empty(),
        Optional.empty());
  }

  private boolean hasComeAtAll() {
    return now.ledger().deliveries().stream().anyMatch(each -> each.received().isPresent());
  }
}
