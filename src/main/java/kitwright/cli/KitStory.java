package kitwright.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitwright.kit.Awaited;
import kitwright.kit.Count;
import kitwright.kit.Position;
import kitwright.shortage.Balance;
import kitwright.shortage.Coming;
import kitwright.shortage.Cover;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Standing;
import kitwright.value.Quantity;

/** The story of every piece of an item, day by day, and what is wanted and comes after today. */
final class KitStory {
  private final TreeMap<LocalDate, List<String>> past = new TreeMap<>();
  private final TreeMap<LocalDate, List<String>> ahead = new TreeMap<>();
  private final List<String> noDay = new ArrayList<>();

  private KitStory() {}

  static String of(Balance balance, LookAhead lookAhead) {
    KitStory story = new KitStory();
    Position position = balance.position();
    position.counts().forEach(story::count);
    position
        .back()
        .forEach(
            each -> story.past(each.on(), each.qty() + " sent back, of " + each.delivery().id()));
    position
        .uses()
        .forEach(
            use ->
                story.past(
                    use.on(),
                    use.qty() + " used" + use.task().map(task -> " for " + task.id()).orElse("")));
    position.awaited().forEach(story::awaited);
    balance.shortages().forEach(story::shortage);
    balance.spare().forEach(cover -> story.cover(cover, "beyond every shortage"));
    balance.spareToCome().forEach(coming -> story.coming(coming, "beyond every shortage"));
    lookAhead
        .ofItem(new kitwright.value.Ref(position.item().id(), position.item().at().record()))
        .forEach(wanted -> story.ahead(wanted.on(), wanted.qty() + " wanted for " + wanted.task()));
    lookAhead
        .ordersOf(position.item())
        .forEach(
            order ->
                story.ahead(
                    order.order().orderBy(),
                    order.thing().qty(order.order().amount())
                        + " to order by this day, needed on "
                        + order.order().needed()));
    return story.text(balance, lookAhead);
  }

  private void past(LocalDate day, String what) {
    past.computeIfAbsent(day, any -> new ArrayList<>()).add(what);
  }

  private void ahead(LocalDate day, String what) {
    ahead.computeIfAbsent(day, any -> new ArrayList<>()).add(what);
  }

  private void count(Count count) {
    past(
        count.on(),
        count.good()
            + " good in "
            + count.delivery().id()
            + (count.damaged().isNone() ? "" : ", " + count.damaged() + " damaged")
            + (count.wrong().isNone() ? "" : ", " + count.wrong() + " wrong"));
  }

  private void awaited(Awaited awaited) {
    String what = awaited.qty() + " on its way in " + awaited.delivery().id();
    Optional<LocalDate> day = awaited.delivery().expected();
    day.ifPresentOrElse(on -> ahead(on, what), () -> noDay.add(what));
  }

  private void shortage(Standing standing) {
    String id = standing.shortage().id();
    past(
        standing.shortage().found(),
        standing.shortage().qty()
            + " recorded short: "
            + standing
                .shortage()
                .cause()
                .name()
                .toLowerCase(java.util.Locale.ROOT)
                .replace('_', ' ')
            + " ("
            + id
            + ")");
    standing.covers().forEach(cover -> cover(cover, "for " + id));
    standing.coming().stream()
        .filter(coming -> coming.how() != Coming.How.SENT)
        .forEach(coming -> coming(coming, "for " + id));
    Quantity nowhere = standing.unsupplied();
    if (!nowhere.isNone()) {
      noDay.add(nowhere + " of " + id + " neither here nor on its way for a day");
    }
  }

  private void cover(Cover cover, String what) {
    String how =
        switch (cover.how()) {
          case DELIVERED -> "of that delivery";
          case SUBSTITUTED -> "substituted by " + cover.by().id();
          case BOUGHT -> "bought with " + cover.by().id();
          case DONE_WITHOUT -> "done without";
        };
    past(cover.on(), cover.qty() + " " + how + ", " + what);
  }

  private void coming(Coming coming, String what) {
    String how =
        switch (coming.how()) {
          case SENT -> "on its way in ";
          case ORDERED -> "ordered with ";
          case PROMISED -> "promised in answer to ";
          case DECIDED -> "decided, neither ordered nor promised, in ";
        };
    String told = coming.qty() + " " + how + coming.by().id() + ", " + what;
    coming.on().ifPresentOrElse(on -> ahead(on, told), () -> noDay.add(told));
  }

  private String text(Balance balance, LookAhead lookAhead) {
    Position position = balance.position();
    StringBuilder out =
        new StringBuilder(position.item().id() + ": " + position.item().what() + "\n");
    out.append("  promised ").append(position.promised()).append('\n');
    lines(out, past);
    out.append("  now here ")
        .append(lookAhead.atHand(position.item()))
        .append(", wanted ")
        .append(lookAhead.wantedOf(position.item()))
        .append('\n');
    Quantity more = position.left().plus(balance.bought()).less(lookAhead.atHand(position.item()));
    if (!more.isNone() && position.isCounted()) {
      out.append("  finished work asks for ")
          .append(more)
          .append(" more than the log says was used: taken to be gone\n");
    }
    lines(out, ahead);
    noDay.forEach(what -> out.append("  on no day   ").append(what).append('\n'));
    return out.toString();
  }

  private static void lines(StringBuilder out, Map<LocalDate, List<String>> days) {
    days.forEach(
        (day, all) ->
            all.forEach(
                what -> out.append("  ").append(day).append("  ").append(what).append('\n')));
  }
}
