package kitwright.cutting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.cutting.solve.CutBar;
import kitwright.cutting.solve.CutPanel;
import kitwright.ledger.Stock;
import kitwright.value.Decimal;

/** What the rack holds after a cut was made: the records to write into the ledger. */
public final class Remnants {
  private Remnants() {}

  /**
   * Stock records for the left-overs worth keeping, and what to set the used stock to; YAML to be
   * read over before it is pasted, since the bench may have gone otherwise than the plan.
   */
  public static String yaml(CutPlan plan, LocalDate today) {
    Map<String, Integer> used = new LinkedHashMap<>();
    List<String> records = new ArrayList<>();
    for (Cut cut : cuts(plan)) {
      used.merge(cut.stock().id(), 1, Integer::sum);
      for (String size : cut.remnants()) {
        records.add(record(plan, cut.stock(), records.size() + 1, size, today));
      }
    }
    StringBuilder out = new StringBuilder();
    out.append("# Cut ")
        .append(plan.cut().id())
        .append(": write “done: ")
        .append(today)
        .append("” in its record, and set\n");
    used.forEach(
        (id, count) -> {
          Stock from = plan.stock(id);
          int left = from.pieces().orElse(1) - count;
          out.append("#   ")
              .append(id)
              .append(": pieces: ")
              .append(left)
              .append(left == 0 ? ", or delete it\n" : "\n");
        });
    out.append(records.isEmpty() ? "# Nothing worth keeping is left.\n" : "stock:\n");
    records.forEach(out::append);
    return out.toString();
  }

  /** A piece that is cut, with length and width of what is left of it. */
  private record Cut(Stock stock, List<String> remnants) {}

  private static List<Cut> cuts(CutPlan plan) {
    List<Cut> cuts = new ArrayList<>();
    plan.lengths().ifPresent(bars -> bars.bars().forEach(bar -> cuts.add(cut(plan, bar))));
    plan.panels().ifPresent(all -> all.panels().forEach(panel -> cuts.add(cut(plan, panel))));
    return cuts;
  }

  private static Cut cut(CutPlan plan, CutBar bar) {
    Stock stock = plan.stock(bar.stock());
    String width = Decimal.print(Wanted.size(stock).width());
    return new Cut(
        stock,
        bar.remnants().stream().map(rest -> Tenths.mm(rest.length()) + " x " + width).toList());
  }

  private static Cut cut(CutPlan plan, CutPanel panel) {
    return new Cut(
        plan.stock(panel.stock()),
        panel.remnants().stream()
            .map(rest -> Tenths.mm(rest.length()) + " x " + Tenths.mm(rest.width()))
            .toList());
  }

  /** What each left-over is called, at the bench as in its record, in the order of the plan. */
  static List<String> ids(CutPlan plan) {
    List<String> ids = new ArrayList<>();
    for (Cut cut : cuts(plan)) {
      cut.remnants().forEach(size -> ids.add(id(plan, cut.stock(), ids.size() + 1)));
    }
    return ids;
  }

  private static String id(CutPlan plan, Stock from, int number) {
    return from.id() + "-" + plan.cut().id() + "-" + number;
  }

  private static String record(CutPlan plan, Stock from, int number, String size, LocalDate today) {
    return "  - id: "
        + id(plan, from, number)
        + "\n"
        + "    what: left of "
        + from.id()
        + " after "
        + plan.cut().id()
        + "\n"
        + from.material().map(material -> "    material: " + material.id() + "\n").orElse("")
        + "    size: "
        + size
        + Wanted.size(from).thickness().map(t -> " x " + Decimal.print(t)).orElse("")
        + " mm\n"
        + "    pieces: 1\n"
        + from.grain().map(grain -> "    grain: " + grain + "\n").orElse("")
        + "    since: "
        + today
        + "\n";
  }
}
