package kitwright.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Stock;
import kitwright.value.Decimal;

/** What the rack holds after a cut was made: the records to write into the ledger. */
public final class Remnants {
  private Remnants() {}

  /**
   * Stock records for the left-overs worth keeping, and what to set the used stock to; YAML to be
   * read over before it is pasted, since the bench may have gone otherwise than the plan.
   */
  public static String yaml(CutPlan plan, java.time.LocalDate today) {
    Map<String, Integer> used = new LinkedHashMap<>();
    List<String> records = new ArrayList<>();
    plan.lengths()
        .ifPresent(
            bars ->
                bars.bars()
                    .forEach(
                        bar -> {
                          used.merge(bar.stock(), 1, Integer::sum);
                          Stock from = stock(plan, bar.stock());
                          bar.remnants()
                              .forEach(
                                  rest ->
                                      records.add(
                                          record(
                                              plan,
                                              from,
                                              records.size() + 1,
                                              Tenths.mm(rest.length())
                                                  + " x "
                                                  + Decimal.print(Wanted.size(from).width()),
                                              today)));
                        }));
    plan.panels()
        .ifPresent(
            panels ->
                panels
                    .panels()
                    .forEach(
                        panel -> {
                          used.merge(panel.stock(), 1, Integer::sum);
                          Stock from = stock(plan, panel.stock());
                          panel
                              .remnants()
                              .forEach(
                                  rest ->
                                      records.add(
                                          record(
                                              plan,
                                              from,
                                              records.size() + 1,
                                              Tenths.mm(rest.length())
                                                  + " x "
                                                  + Tenths.mm(rest.width()),
                                              today)));
                        }));
    StringBuilder out = new StringBuilder();
    out.append("# Cut ")
        .append(plan.cut().id())
        .append(": write “done: ")
        .append(today)
        .append("” in its record, and set\n");
    used.forEach(
        (id, count) -> {
          Stock from = stock(plan, id);
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

  private static String record(
      CutPlan plan, Stock from, int number, String size, java.time.LocalDate today) {
    return "  - id: "
        + from.id()
        + "-"
        + plan.cut().id()
        + "-"
        + number
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

  private static Stock stock(CutPlan plan, String id) {
    return plan.rack().pieces().stream()
        .map(Rack.Free::stock)
        .filter(stock -> stock.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
