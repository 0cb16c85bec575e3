package kitwright.report.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.ledger.Facts;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.report.words.Names;
import kitwright.report.words.Say;
import kitwright.value.Word;

/** What waits for whom, most pressing first. */
public final class Waits {
  private static final int MOST = 15;

  private Waits() {}

  /** A table, and how many more there are; no block where nothing waits. */
  public static List<Block> table(Facts now) {
    List<OpenMatter> all = OpenMatters.on(now).all();
    if (all.isEmpty()) {
      return List.of();
    }
    Names names = new Names(now.ledger());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.table(
            Column.columns(
                Column.left("What waits"),
                Column.left("For whom"),
                Column.left("For what"),
                Column.left("Act by"),
                Column.right("Float, days")),
            all.stream().limit(MOST).map(matter -> row(matter, names)).toList()));
    if (all.size() > MOST) {
      blocks.add(
          Block.paragraph(
              Word.capital(
                  Say.count(all.size() - MOST, "more matter waits", "more matters wait")
                      + ", none of them as pressing; “kitwright open” lists them all.")));
    }
    return blocks;
  }

  private static Row row(OpenMatter matter, Names names) {
    Optional<OpenMatter.Stop> stop = matter.stop();
    return Row.row(
        Cell.text(stop.map(OpenMatter.Stop::what)),
        Cell.text(matter.waitsFor().equals("you") ? names.builder() : matter.waitsFor()),
        Cell.text(matter.sort().word() + ": " + matter.what()),
        matter.isDated() ? Cell.day(matter.lastDay()) : Cell.none(),
        stop.map(at -> Cell.number(at.floatDays())).orElseGet(Cell::none));
  }
}
