package kitwright.cli;

import java.util.List;
import kitwright.cutting.CutPlan;
import kitwright.cutting.Steps;
import kitwright.ledger.Cut;
import kitwright.value.Visible;

/** A cut plan for the bench, as text. */
final class CutText {
  private static final String CAUTION =
      """
      Before the first cut: measure each piece again, check that the blade suits the wood and the fence is
      square. Eye and ear protection on, dust extraction running; cedar, iroko and plywood glue harm the
      lungs. Push-stick for anything under 150 mm. The plan is paper; you are at the saw.
      """;

  private CutText() {}

  static String of(CutPlan plan) {
    Cut cut = plan.cut();
    StringBuilder out = new StringBuilder();
    out.append("Cut ")
        .append(cut.id())
        .append(cut.task().map(task -> ", for " + task.id()).orElse(""))
        .append('\n');
    out.append(plan.quality()).append('\n');
    if (!plan.missing().isEmpty()) {
      out.append("\nNot enough stock. Still wanted:\n");
      plan.missing()
          .forEach(
              each ->
                  out.append("  ")
                      .append(each.missing())
                      .append(" of ")
                      .append(each.mark())
                      .append('\n'));
    }
    plan.rack().withheld().forEach(each -> out.append("  ").append(each).append('\n'));
    out.append('\n').append(CAUTION).append('\n');
    List<String> fence = Steps.fence(plan);
    if (!fence.isEmpty()) {
      out.append("Set the fence once for each width, all strips of that width together:\n");
      fence.forEach(each -> out.append("  ").append(each).append('\n'));
      out.append('\n');
    } else {
      out.append("Kerf ")
          .append(cut.kerf())
          .append("; distances in mm from the end you measure from, trimmed first.\n\n");
    }
    for (Steps steps : Steps.of(plan)) {
      out.append(steps.heading()).append('\n');
      steps.lines().forEach(line -> out.append("  [ ] ").append(line).append('\n'));
      out.append('\n');
    }
    out.append(tally(plan));
    return Visible.lines(out.toString());
  }

  private static String tally(CutPlan plan) {
    Listing list = Listing.of("part", ">wanted", ">made");
    var made = Steps.made(plan);
    plan.cut()
        .parts()
        .forEach(
            part ->
                list.row(
                    part.mark(),
                    String.valueOf(part.qty()),
                    String.valueOf(made.getOrDefault(part.mark(), 0))));
    return list.text();
  }
}
