package kitwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.daybook.Ahead;
import kitwright.daybook.Happenings;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Inline;
import kitwright.document.Slots;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.KitItem;
import kitwright.ledger.Loan;
import kitwright.ledger.LogDay;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.value.Ref;

/** The week for those who build. */
final class CrewWeek {
  private static final int HEADINGS_BELOW = 3;

  private final Week week;
  private final Situation now;
  private final WeekParts parts;
  private final Happenings happened;

  CrewWeek(Week week, Situation now) {
    this.week = week;
    this.now = now;
    this.parts =
        new WeekParts(
            week,
            WeekLog.of(week, now.ledger()),
            Ahead.on(week.last(), now.ledger(), now.ledger().log()),
            Optional::of);
    this.happened = Happenings.in(week, now.ledger());
  }

  Sheet sheet() {
    WeekMoney money = new WeekMoney(happened.money(), now);
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .sentence("span", WeekReport.span(week))
            .sentence("week", week.toString())
            .sentence("summary", summary(money))
            .sentence("phases", parts.hoursByPhase())
            .sentence("people", people())
            .block("progress", parts.progress().toArray(Block[]::new))
            .sentence("used", parts.used())
            .block("days", days().toArray(Block[]::new))
            .block("arrived", bullets(happened.arrived().stream().map(this::arrived).toList()))
            .block("missing", bullets(happened.found().stream().map(this::found).toList()))
            .block("decided", bullets(decisions()))
            .block("claims", bullets(claims()))
            .sentence("money-now", money.thisWeek())
            .sentence("money-in-all", money.inAll())
            .block("spends", money.table().toArray(Block[]::new))
            .block("waits", new Waits(now, week).table().toArray(Block[]::new))
            .block("tools", bullets(tools()))
            .block("photos", bullets(photos()))
            .block("next", bullets(next()));
    return new Sheet("week-" + week + ".md", "week", slots);
  }

  private static Block[] bullets(List<Inline> items) {
    return items.isEmpty() ? new Block[0] : new Block[] {Block.bullets(items)};
  }

  private String summary(WeekMoney money) {
    WeekLog log = parts.log();
    String work =
        log.days().isEmpty()
            ? "No day of this week is written up."
            : Say.hours(log.hours().total())
                + " hours of work on "
                + Say.days(log.days().size())
                + ".";
    return WeekReport.sentences(
        List.of(
            work,
            log.finished().isEmpty() ? "" : "Finished: " + parts.finished() + ".",
            events(),
            money.thisWeek()));
  }

  private String events() {
    List<String> parts = new ArrayList<>();
    if (!happened.arrived().isEmpty()) {
      parts.add(Say.count(happened.arrived().size(), "delivery came", "deliveries came"));
    }
    if (!happened.found().isEmpty()) {
      parts.add(Say.count(happened.found().size(), "thing was", "things were") + " found missing");
    }
    if (!happened.signed().isEmpty()) {
      parts.add(Say.count(happened.signed().size(), "signature", "signatures") + " came in");
    }
    return parts.isEmpty() ? "" : Say.capital(Say.list(parts)) + ".";
  }

  private String people() {
    return WeekParts.shares(parts.log().hours().byPerson(), id -> Optional.of(name(id)));
  }

  private String name(String id) {
    return now.ledger().parties().stream()
        .filter(party -> party.id().equals(id))
        .map(Party::name)
        .findFirst()
        .orElse(id);
  }

  private String name(Ref party) {
    return name(party.id());
  }

  private List<Block> days() {
    List<Block> blocks = new ArrayList<>();
    for (LogDay day : parts.log().days()) {
      if (!day.body().isBlank()) {
        blocks.add(Block.heading(3, Say.weekday(day.day()) + " " + Say.dayAndMonth(day.day())));
        blocks.add(Block.prose(day.body(), HEADINGS_BELOW));
      }
    }
    return blocks;
  }

  private Inline arrived(Delivery delivery) {
    String note = delivery.note().map(number -> ", note " + number).orElse("");
    String counted =
        delivery.counted().isEmpty()
            ? "not counted yet"
            : Say.count(delivery.counted().size(), "line", "lines") + " counted";
    return Inline.text(
        Say.weekday(delivery.received().orElse(week.last()))
            + ", from "
            + name(delivery.from())
            + note
            + ": "
            + counted
            + ".");
  }

  private String what(Shortage shortage) {
    return now.ledger().kitItem(shortage.item()).map(KitItem::what).orElse(shortage.item().id());
  }

  private Inline found(Shortage shortage) {
    return Inline.together(
        Inline.text(
            Say.so(shortage.qty(), what(shortage)) + ", " + Say.word(shortage.cause()) + " "),
        Inline.code(shortage.id()));
  }

  private List<Inline> decisions() {
    Stream<String> decided =
        happened.decided().stream()
            .flatMap(each -> each.decided().stream().map(made -> decision(each, made)));
    Stream<String> proposed =
        happened.proposed().stream()
            .flatMap(each -> each.proposed().stream().map(made -> proposal(each, made)));
    Stream<String> signed =
        happened.signed().stream().map(each -> signature(each.substitution(), each.signOff()));
    return Stream.of(decided, proposed, signed).flatMap(all -> all).map(Inline::text).toList();
  }

  private String decision(Shortage shortage, Shortage.Decision made) {
    return name(made.by())
        + " chose for "
        + what(shortage)
        + ": "
        + made.option()
        + made.why().map(why -> ", since " + why).orElse("")
        + ".";
  }

  private String proposal(Substitution substitution, Substitution.Proposal made) {
    return name(made.by()) + " proposed " + substitution.id() + ": " + substitution.why() + ".";
  }

  private String signature(Substitution substitution, Substitution.SignOff signed) {
    boolean conditions = !signed.conditions().isEmpty();
    boolean counts =
        now.substitutions().all().stream()
            .flatMap(each -> each.signatures().stream())
            .anyMatch(each -> each.signOff().equals(signed) && each.counts());
    return name(signed.by())
        + " signed "
        + substitution.id()
        + (conditions ? ", on conditions" : "")
        + (counts ? "." : "; the signature does not count as things stand.");
  }

  private List<Inline> claims() {
    Stream<String> sent =
        happened.claimsSent().stream()
            .map(each -> each.id() + ": sent to " + name(each.against()) + ".");
    Stream<String> letters =
        happened.letters().stream()
            .map(
                each ->
                    each.claim().id()
                        + ": "
                        + Say.word(each.event().what())
                        + each.event().text().map(text -> ", " + text).orElse("")
                        + ".");
    Stream<String> ended =
        happened.claimsSettled().stream()
            .flatMap(each -> each.settled().stream().map(end -> ended(each, end)));
    return Stream.of(sent, letters, ended).flatMap(all -> all).map(Inline::text).toList();
  }

  private static String ended(Claim claim, Claim.Settlement end) {
    return claim.id()
        + ": closed, "
        + Say.word(end.how())
        + end.amount().map(amount -> " with " + Say.money(amount)).orElse("")
        + ".";
  }

  private List<Inline> tools() {
    Stream<String> came =
        happened.borrowed().stream()
            .map(loan -> "Came: " + loan.tool() + ", from " + name(loan.from()) + ".");
    Stream<String> went =
        happened.returned().stream()
            .map(loan -> "Went back: " + loan.tool() + ", to " + name(loan.from()) + ".");
    Stream<String> due =
        parts.ahead().tools().stream()
            .filter(loan -> loan.due().filter(parts::isSoon).isPresent())
            .map(this::due);
    return Stream.of(came, went, due).flatMap(all -> all).map(Inline::text).toList();
  }

  private String due(Loan loan) {
    boolean late = loan.due().filter(day -> day.isBefore(week.last())).isPresent();
    return (late ? "Overdue since " : "Due on ")
        + loan.due().map(Say::day).orElse("")
        + ": "
        + loan.tool()
        + ", to "
        + name(loan.from())
        + ".";
  }

  private List<Inline> photos() {
    return parts.log().photos().stream()
        .map(
            photo ->
                Inline.together(
                    Inline.code(photo.picture().file()),
                    Inline.text(photo.picture().says().map(text -> ", " + text).orElse(""))))
        .toList();
  }

  private List<Inline> next() {
    List<Inline> all = new ArrayList<>(parts.nextWork());
    Stream<Optional<String>> deliveries =
        parts.ahead().deliveries().stream()
            .map(
                each ->
                    each.expected()
                        .filter(parts::isSoon)
                        .map(day -> "Expected on " + Say.day(day) + ": " + delivery(each) + "."));
    Stream<Optional<String>> orders =
        parts.ahead().orders().stream()
            .map(
                each ->
                    each.expected()
                        .filter(parts::isSoon)
                        .map(day -> "Expected on " + Say.day(day) + ": " + each.what() + "."));
    Stream.concat(deliveries, orders).flatMap(Optional::stream).map(Inline::text).forEach(all::add);
    return all;
  }

  private String delivery(Delivery delivery) {
    return "delivery from "
        + name(delivery.from())
        + delivery.note().map(number -> ", note " + number).orElse("");
  }
}
