package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Cuts the same parts from the same panels so that the largest left-over is larger: it is wanted
 * like a part, ever smaller until there is room for it.
 */
final class PanelRests {
  /** No part is called so. */
  private static final String REST = "\u0000rest";

  private static final int STEPS = 48;
  private static final int MOST_TRIED = 40;
  private static final int MOST_WIDTHS = 4;
  private static final int MOST_PANELS = 12;
  private static final int MOST_PARTS = 120;

  private record Rest(long length, long width) {
    long area() {
      return length * width;
    }
  }

  private final PanelTask task;
  private final PanelPlan plan;
  private final Effort each;
  private PanelPlan best;
  private long largest;
  private int tried;
  private long steps;

  private PanelRests(PanelTask task, PanelPlan plan, Effort effort) {
    this.task = task;
    this.plan = plan;
    this.best = plan;
    this.each = effort.of(effort.steps() / MOST_TRIED);
  }

  /** The plan, or one of the same parts from the same panels that leaves more in one piece. */
  static PanelPlan larger(PanelTask task, PanelPlan plan, Effort effort) {
    long parts =
        plan.panels().stream()
            .flatMap(p -> p.strips().stream())
            .mapToLong(s -> s.pieces().size())
            .sum();
    boolean few = plan.panels().size() <= MOST_PANELS && parts <= MOST_PARTS && parts > 0;
    return few && task.remnantLong() > 0 ? new PanelRests(task, plan, effort).larger() : plan;
  }

  /** Rests of one width along a panel, or of one length across it. */
  private record Family(Area area, long fixed, boolean lengthVaries) {
    Rest rest(int step) {
      long full = lengthVaries ? area.length() : area.width();
      long varies = full * step / STEPS;
      return lengthVaries ? new Rest(varies, fixed) : new Rest(fixed, varies);
    }
  }

  private PanelPlan larger() {
    best = plan;
    largest = largest(plan);
    for (Family family : families()) {
      grow(family);
    }
    return withoutRest(best);
  }

  /** The largest rest of a family that there is room for, if it beats those before it. */
  private void grow(Family family) {
    int low = 1;
    while (low < STEPS && !isOfInterest(family.rest(low))) {
      low++;
    }
    if (low >= STEPS || !fits(family.rest(low))) {
      return;
    }
    int high = STEPS;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (fits(family.rest(middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
  }

  private boolean isOfInterest(Rest rest) {
    return rest.area() > largest + largest / 50
        && Math.max(rest.length(), rest.width()) >= task.remnantLong()
        && Math.min(rest.length(), rest.width()) >= Math.max(1, task.remnantShort());
  }

  private boolean fits(Rest rest) {
    if (tried++ >= MOST_TRIED || each.enough().getAsBoolean()) {
      return false;
    }
    PanelPlan found = with(rest);
    if (!found.missing().isEmpty()) {
      return false;
    }
    best = found;
    largest = Math.max(largest, rest.area());
    return true;
  }

  /** On each sort of panel: over its whole width, along its whole length, as wide as a strip. */
  private List<Family> families() {
    Map<String, Integer> used = used();
    Set<Long> widths = new LinkedHashSet<>();
    for (CutPanel panel : plan.panels()) {
      for (CutStrip strip : panel.strips()) {
        widths.add(strip.run() == Run.ALONG ? strip.area().width() : strip.area().length());
      }
    }
    Set<Family> all = new LinkedHashSet<>();
    for (PanelKind kind : PanelKind.of(task)) {
      boolean cut =
          kind.members().stream().anyMatch(m -> used.containsKey(task.stock().get(m).id()));
      for (Area area : cut ? kind.areas() : List.<Area>of()) {
        Area shape = new Area(0, 0, area.length(), area.width());
        all.add(new Family(shape, area.width(), true));
        all.add(new Family(shape, area.length(), false));
        widths.stream()
            .filter(width -> width < area.width())
            .limit(MOST_WIDTHS)
            .forEach(width -> all.add(new Family(shape, width, true)));
      }
    }
    return List.copyOf(all);
  }

  private Map<String, Integer> used() {
    Map<String, Integer> used = new HashMap<>();
    plan.panels().forEach(panel -> used.merge(panel.stock(), 1, Integer::sum));
    return used;
  }

  private static long largest(PanelPlan plan) {
    return plan.panels().stream()
        .flatMap(panel -> panel.remnants().stream())
        .mapToLong(area -> area.length() * area.width())
        .max()
        .orElse(0);
  }

  /** The same parts and one large rest from the panels that are cut anyway. */
  private PanelPlan with(Rest rest) {
    Map<String, Integer> used = used();
    Map<String, Integer> missing = new HashMap<>();
    plan.missing().forEach(each -> missing.put(each.mark(), each.missing()));
    List<PanelPart> parts = new ArrayList<>();
    for (PanelPart part : task.parts()) {
      int made = part.qty() - missing.getOrDefault(part.mark(), 0);
      if (made > 0) {
        parts.add(
            new PanelPart(
                part.mark(),
                part.length(),
                part.width(),
                made,
                part.priority(),
                part.grain(),
                part.on()));
      }
    }
    parts.add(new PanelPart(REST, rest.length(), rest.width(), 1, 1, Grain.ALONG));
    List<Panel> stock =
        task.stock().stream()
            .filter(panel -> used.containsKey(panel.id()))
            .map(
                panel ->
                    new Panel(
                        panel.id(),
                        panel.length(),
                        panel.width(),
                        used.getOrDefault(panel.id(), 0),
                        panel.value(),
                        panel.spoilt()))
            .toList();
    PanelTask other =
        new PanelTask(parts, stock, task.saw(), task.remnantLong(), task.remnantShort());
    PanelPlan found = PanelCutter.quick(other, each);
    steps += found.outcome().steps();
    return found;
  }

  /** The parts only, with what is known of the plan that it came from. */
  private PanelPlan withoutRest(PanelPlan found) {
    List<CutPanel> panels = new ArrayList<>();
    long value = 0;
    for (CutPanel panel : found.panels()) {
      List<CutStrip> strips = new ArrayList<>();
      List<Area> rests = new ArrayList<>(panel.remnants());
      for (CutStrip strip : panel.strips()) {
        List<PanelPiece> kept = new ArrayList<>();
        for (PanelPiece piece : strip.pieces()) {
          if (piece.mark().equals(REST)) {
            rests.add(piece.area());
          } else {
            kept.add(piece);
          }
        }
        if (!kept.isEmpty()) {
          strips.add(new CutStrip(strip.run(), strip.area(), kept));
        }
      }
      if (!strips.isEmpty()) {
        panels.add(new CutPanel(panel.stock(), panel.number(), strips, rests));
        value +=
            task.stock().stream()
                .filter(each -> each.id().equals(panel.stock()))
                .mapToLong(Panel::value)
                .sum();
      }
    }
    Outcome was = plan.outcome();
    Outcome outcome =
        new Outcome(value, Math.min(was.bound(), value), was.mostParts(), was.steps() + steps);
    return new PanelPlan(panels, plan.missing(), found.settings(), outcome, plan.bestInStrips());
  }
}
