package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import kitwright.daybook.Happenings;
import kitwright.document.Inline;
import kitwright.kit.Count;
import kitwright.kit.Positions;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.report.words.Say;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Word;

/** What came, what came up missing and what was decided in a week, without who and how much. */
final class PublicEvents {
  private final Facts now;
  private final Happenings happened;
  private final PublicNames names;

  PublicEvents(Facts now, Happenings happened, PublicNames names) {
    this.now = now;
    this.happened = happened;
    this.names = names;
  }

  List<Inline> arrived() {
    return happened.arrived().stream().map(this::arrived).toList();
  }

  private Inline arrived(Delivery delivery) {
    long counted = delivery.counted().stream().map(line -> line.item().id()).distinct().count();
    long bad =
        Positions.on(now).all().stream()
            .flatMap(position -> position.counts().stream())
            .filter(count -> count.delivery().equals(delivery))
            .filter(count -> !count.noGood().isNone())
            .map(Count::at)
            .distinct()
            .count();
    return Inline.text(
        counted == 0
            ? "A delivery, not counted yet."
            : "A delivery of "
                + Say.count(counted, "kind of part", "kinds of part")
                + (bad == 0 ? ", all good." : ", " + bad + " of them not all good."));
  }

  List<Inline> missing() {
    return happened.found().stream()
        .map(each -> names.soMany(each.qty(), each.item(), ": " + Word.spoken(each.cause()) + "."))
        .toList();
  }

  List<Inline> decided() {
    List<Inline> all = new ArrayList<>();
    for (Shortage each : happened.decided()) {
      String item = names.kit(each.item());
      all.add(
          Inline.text("For the missing “" + item + "”, a way out is chosen: " + way(each) + "."));
    }
    happened.signed().stream()
        .filter(each -> SubstitutionStandings.on(now).counts(each.signOff()))
        .map(each -> "A change was signed by " + names.role(each.signOff().by()) + ".")
        .map(Inline::text)
        .forEach(all::add);
    return all;
  }

  private static String way(Shortage shortage) {
    return shortage
        .decided()
        .flatMap(
            decided ->
                shortage.options().stream()
                    .filter(option -> option.name().equals(decided.option()))
                    .findFirst())
        .map(option -> Word.spoken(option.way()))
        .orElse("one of those at hand");
  }
}
