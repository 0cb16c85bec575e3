package kitwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.IntBinaryOperator;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;

/**
 * A figure as it was told on each day on which somebody committed.
 *
 * @param readings by day; the last commit of a day counts
 * @param leftOut days whose ledger has no readable build record, or whose figure cannot be told
 * @param thinned whether days were left out because there are too many
 */
public record Series(Figure figure, List<Reading> readings, int leftOut, boolean thinned) {
  public Series {
    readings = List.copyOf(readings);
  }

  /** What was told on the day of a commit. */
  public record Reading(Commit commit, Held held) {}

  /**
   * Follows a figure.
   *
   * @param most so many days at the most, evenly chosen, the first and the last among them
   * @param checked looks at the signatures that keys made
   * @param progress told how many days are read, and of how many
   */
  public static Series of(
      History history,
      Figure figure,
      int most,
      BiFunction<Optional<Ledger>, Tree, Optional<Ledger>> checked,
      IntBinaryOperator progress)
      throws NoHistory {
    Map<LocalDate, Commit> byDay = new TreeMap<>();
    history.commits().forEach(commit -> byDay.put(commit.day(), commit));
    List<Commit> days = List.copyOf(byDay.values());
    List<Commit> chosen = chosen(days, most);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      Commit commit = chosen.get(i);
      int unused = progress.applyAsInt(i, chosen.size());
      Tree tree = history.tree(commit);
      Optional<Ledger> ledger = checked.apply(tree.ledger(new Findings()), tree);
      if (ledger.isPresent()) {
        held(figure, Facts.of(ledger.get(), commit.day()))
            .ifPresent(held -> readings.add(new Reading(commit, held)));
      }
    }
    return new Series(
        figure, readings, chosen.size() - readings.size(), chosen.size() < days.size());
  }

  private static Optional<Held> held(Figure figure, Facts day) {
    try {
      return figure.on(day);
    } catch (Facts.Broken cannotTell) {
      return Optional.empty();
    }
  }

  private static List<Commit> chosen(List<Commit> days, int most) {
    if (days.size() <= most) {
      return days;
    }
    List<Commit> chosen = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      chosen.add(days.get((int) Math.round((double) i * (days.size() - 1) / (most - 1))));
    }
    return chosen;
  }
}
