package kitwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.cutting.CutPlan;
import kitwright.cutting.DoneCut;
import kitwright.cutting.Steps;
import kitwright.cutting.Tenths;
import kitwright.cutting.Yield;
import kitwright.ledger.Cut;
import kitwright.value.Visible;

/** A cut plan for the bench, as text. */
final class CutText {
  private static final String CAUTION =
      """
      Before the first cut: measure each piece again, check that the blade suits the wood and the fence is
      square. Eye and ear protection on, dust extraction running; cedar, iroko and plywood glue harm the
      lungs. Guard and riving knife on; push-stick for anything under 150 mm. The plan is paper; you are at the saw.
      """;

  private CutText() {}

  static String of(CutPlan plan) {
    StringBuilder out = new StringBuilder();
    head(plan, out);
    out.append('\n').append(CAUTION).append('\n');
    bench(plan, out);
    for (Steps steps : Steps.of(plan)) {
      out.append(steps.heading()).append('\n');
      steps.flaws().forEach(line -> out.append("      ").append(line).append('\n'));
      int number = 1;
      for (String line : steps.lines()) {
        out.append("  [ ] ").append(number++).append("  ").append(line).append('\n');
      }
      out.append('\n');
    }
    out.append(tally(plan));
    return Visible.lines(out.toString());
  }

  private static void head(CutPlan plan, StringBuilder out) {
    Cut cut = plan.cut();
    out.append(title(cut)).append('\n').append(plan.quality()).append('\n');
    if (!plan.pieces().isEmpty()) {
      out.append("Uses ")
          .append(
              plan.used().entrySet().stream()
                  .map(each -> each.getValue() + " of " + each.getKey())
                  .collect(Collectors.joining(", ")))
          .append(plan.worth().map(worth -> ", worth " + worth).orElse(""))
          .append(". ")
          .append(Yield.of(plan.pieces()).told())
          .append('\n');
    }
    if (!plan.missing().isEmpty()) {
      out.append("\nNot enough stock that suits. Still wanted:\n");
      plan.missing().forEach((mark, n) -> out.append("  " + n + " of " + mark + "\n"));
    }
    plan.refused().values().forEach(why -> out.append("  ").append(why).append('\n'));
    plan.rack().withheld().forEach(each -> out.append("  ").append(each).append('\n'));
    plan.notes().forEach(each -> out.append("  ").append(each).append('\n'));
  }

  private static String title(Cut cut) {
    return "Cut " + cut.id() + cut.task().map(task -> ", for " + task.id()).orElse("");
  }

  private static void bench(CutPlan plan, StringBuilder out) {
    if (plan.pieces().isEmpty()) {
      return;
    }
    Cut cut = plan.cut();
    out.append(
            "Mark one end of each piece A and one long edge B. Distances are measured on the whole"
                + " piece,\n")
        .append("before its first cut, to the line; the blade runs beyond the line. Kerf ")
        .append(cut.kerf())
        .append(cut.ripKerf().map(rip -> ", ripping " + rip).orElse(""))
        .append(".\n");
    List<String> fence = Steps.fence(plan);
    if (!fence.isEmpty()) {
      out.append("Fence: ").append(String.join("; ", fence)).append(".\n");
    }
    Steps.joints(plan).forEach(joint -> out.append(joint).append(".\n"));
    out.append("Left-overs from ")
        .append(Tenths.mm(plan.keep().longer()))
        .append(" x ")
        .append(Tenths.mm(plan.keep().shorter()))
        .append(" mm go back on the rack")
        .append(plan.keep().isStated() ? "" : ", as small as the parts of the build’s cuts")
        .append("; the rest is waste.\n\n");
  }

  private static String tally(CutPlan plan) {
    Listing list = Listing.of("part", ">wanted", ">made");
    var made = plan.made();
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

  /** What came of a cut that is done. */
  static String of(DoneCut done) {
    StringBuilder out = new StringBuilder();
    out.append(title(done.cut()))
        .append("\nDone on ")
        .append(done.cut().done().orElseThrow())
        .append(".\n");
    if (done.took().isEmpty()) {
      out.append("Nobody wrote which pieces it took; add “used” to its record.\n");
    } else {
      out.append("Took ")
          .append(
              done.took().get().isEmpty()
                  ? "nothing that still stands in the stock"
                  : done.took().get().entrySet().stream()
                      .map(each -> each.getValue() + " of " + each.getKey())
                      .collect(Collectors.joining(", ")))
          .append(".\n");
    }
    done.planned()
        .ifPresent(planned -> out.append("Planned: ").append(planned.told()).append('\n'));
    done.came()
        .ifPresent(
            came ->
                out.append("Came of it, if every part was made: parts ")
                    .append(came.parts())
                    .append(" %, left-overs on the rack ")
                    .append(came.left())
                    .append(" %, waste ")
                    .append(came.waste())
                    .append(" %.\n"));
    if (!done.left().isEmpty()) {
      out.append("Left-overs: ").append(String.join(", ", done.left())).append(".\n");
    }
    return Visible.lines(out.toString());
  }
}
