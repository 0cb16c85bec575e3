package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import kitwright.daybook.Ahead;
import kitwright.daybook.Week;
import kitwright.document.Inline;
import kitwright.ledger.Task;
import kitwright.report.words.Say;

/** What comes in the week after, by the titles that tasks have for the public. */
final class PublicNext {
  private final Week week;
  private final Ahead ahead;
  private final PublicNames names;

  PublicNext(Week week, Ahead ahead, PublicNames names) {
    this.week = week;
    this.ahead = ahead;
    this.names = names;
  }

  List<Inline> told() {
    List<Inline> all = new ArrayList<>();
    works("In progress", ahead.underWay(), all);
    works("May start", ahead.ready(), all);
    ahead.deliveries().stream()
        .flatMap(each -> each.expected().stream())
        .filter(day -> !day.isAfter(week.next().last()))
        .map(day -> Inline.text("A delivery is expected on " + Say.day(day) + "."))
        .forEach(all::add);
    return all;
  }

  private void works(String heading, List<Task> tasks, List<Inline> all) {
    List<String> titles =
        tasks.stream()
            .flatMap(task -> names.title(task).stream())
            .map(title -> "“" + title + "”")
            .toList();
    if (!titles.isEmpty()) {
      all.add(Inline.text(heading + ": " + Say.list(titles) + "."));
    }
  }
}
