package kitwright.report.stores;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import kitwright.kit.Awaited;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.ledger.Facts;
import kitwright.shortage.Balance;
import kitwright.shortage.Coming;
import kitwright.shortage.Cover;
import kitwright.shortage.LookAhead;
import kitwright.shortage.ShortageStanding;
import kitwright.value.Days;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Word;

/** The story of every piece of an item: what came of it, what is wanted and what comes. */
public final class KitStory {
  /**
   * So much of an item to which something happens.
   *
   * @param on the day; empty where nobody names one
   */
  public record Told(Optional<LocalDate> on, Quantity qty, String what) {}

  private static final String NOT_HERE = "; it was to come by this day, and is not here";

  private final LocalDate today;
  private final List<Told> all = new ArrayList<>();
  private final List<Told> noDay = new ArrayList<>();

  private KitStory(LocalDate today) {
    this.today = today;
  }

  /** By day, what has no day last. */
  static List<Told> of(Balance balance, Facts now) {
    KitStory story = new KitStory(now.day());
    LookAhead lookAhead = LookAhead.on(now);
    Position position = balance.position();
    position.counts().forEach(story::count);
    position
        .back()
        .forEach(
            each ->
                story.on(
                    each.on(),
                    each.qty(),
                    "sent back"
                        + each.how()
                        + ", of "
                        + each.delivery().id()
                        + said(each.line().remark())));
    position
        .uses()
        .forEach(
            use ->
                story.on(
                    use.on(),
                    use.qty(),
                    "used" + use.task().map(task -> " for " + task.id()).orElse("")));
    position.awaited().forEach(story::awaited);
    balance.shortages().forEach(story::shortage);
    balance.spare().forEach(cover -> story.cover(cover, "beyond every shortage"));
    balance.spareToCome().forEach(coming -> story.coming(coming, "beyond every shortage"));
    Quantity more = position.left().plus(balance.bought()).less(lookAhead.atHand(position.item()));
    if (position.isCounted() && !more.isNone()) {
      story.on(
          now.day(),
          more,
          "taken to be gone: finished work asks for so much more than the log says");
    }
    story.ahead(position, lookAhead);
    story.all.sort(Comparator.comparing(told -> told.on().orElse(LocalDate.MAX)));
    story.all.addAll(story.noDay);
    return story.all;
  }

  private void ahead(Position position, LookAhead lookAhead) {
    lookAhead
        .ofItem(new Ref(position.item().id(), position.item().at().record()))
        .forEach(wanted -> on(wanted.on(), wanted.qty(), "wanted for " + wanted.task()));
    lookAhead
        .ordersOf(position.item())
        .forEach(
            order ->
                on(
                    order.order().orderBy(),
                    order.thing().qty(order.order().amount()),
                    "to order by this day, needed on " + Days.named(order.order().needed())));
  }

  private static String said(Optional<String> remark) {
    return remark.map(words -> " (" + words + ")").orElse("");
  }

  private void on(LocalDate day, Quantity qty, String what) {
    all.add(new Told(Optional.of(day), qty, what));
  }

  private void maybeOn(Optional<LocalDate> day, Quantity qty, String what) {
    (day.isPresent() ? all : noDay).add(new Told(day, qty, what));
  }

  private void count(Count count) {
    on(count.on(), count.good(), "good in " + count.delivery().id() + said(count.remark()));
    if (!count.damaged().isNone()) {
      on(count.on(), count.damaged(), "damaged");
    }
    if (!count.wrong().isNone()) {
      on(count.on(), count.wrong(), "wrong");
    }
    if (!count.undersize().isNone()) {
      on(count.on(), count.undersize(), "undersize");
    }
  }

  private void awaited(Awaited awaited) {
    Optional<LocalDate> said = awaited.delivery().expected();
    maybeOn(
        said,
        awaited.qty(),
        "on its way in "
            + awaited.delivery().id()
            + (said.filter(today::isAfter).isPresent() ? NOT_HERE : ""));
  }

  private void shortage(ShortageStanding standing) {
    String id = standing.shortage().id();
    on(
        standing.shortage().found(),
        standing.shortage().qty(),
        "recorded short: "
            + Word.spoken(standing.shortage().cause())
            + ", "
            + id
            + said(standing.shortage().remark()));
    standing.covers().forEach(cover -> cover(cover, "for " + id));
    standing.coming().stream()
        .filter(coming -> coming.how() != Coming.How.SENT)
        .forEach(coming -> coming(coming, "for " + id));
    if (!standing.unsupplied().isNone()) {
      maybeOn(
          Optional.empty(),
          standing.unsupplied(),
          "neither here nor on its way for a day, of " + id);
    }
  }

  private void cover(Cover cover, String what) {
    String how =
        switch (cover.how()) {
          case DELIVERED -> "of " + cover.by().id();
          case SUBSTITUTED -> "substituted by " + cover.by().id();
          case BOUGHT -> "bought with " + cover.by().id();
          case DONE_WITHOUT -> "done without";
        };
    on(cover.on(), cover.qty(), how + ", " + what);
  }

  private void coming(Coming coming, String what) {
    String how =
        switch (coming.how()) {
          case SENT -> "on its way in ";
          case ORDERED -> "ordered with ";
          case PROMISED -> "promised in answer to ";
          case DECIDED -> "decided, neither ordered nor promised, in ";
        };
    maybeOn(
        coming.on().or(coming::lapsed),
        coming.qty(),
        how + coming.by().id() + ", " + what + (coming.lapsed().isPresent() ? NOT_HERE : ""));
  }
}
