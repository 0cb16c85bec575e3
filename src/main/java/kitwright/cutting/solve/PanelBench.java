package kitwright.cutting.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Lays a solution out on real panels: who gets which part, where each strip lies, what is left. */
final class PanelBench {
  private record Due(int part, int copy) {}

  private record Used(int kind, List<StripCut> strips) {}

  private final PanelTask task;
  private final List<PanelKind> kinds;
  private final int[] missing;
  private final List<Deque<Due>> queues = new ArrayList<>();
  private final Set<Setting> settings = new HashSet<>();
  private final List<Used> used = new ArrayList<>();

  PanelBench(PanelTask task, List<PanelKind> kinds) {
    this.task = task;
    this.kinds = kinds;
    this.missing = task.parts().stream().mapToInt(PanelPart::qty).toArray();
  }

  /** Takes on a solution's cuts, as long as each type is wanted. */
  void lay(PanelModel model, Solved<List<StripCut>> solution) {
    int[] left = model.demand();
    for (int type = 0; type < left.length; type++) {
      left[type] -= solution.unmade().get(type);
      Deque<Due> queue = new ArrayDeque<>();
      for (PanelOrder order : model.orders(type)) {
        for (int n = 1; n <= order.qty() && queue.size() < left[type]; n++) {
          queue.add(new Due(order.part(), n));
          missing[order.part()]--;
        }
      }
      queues.add(queue);
    }
    for (Column<List<StripCut>> column : solution.columns()) {
      List<StripCut> strips =
          column.layout.stream()
              .map(strip -> strip.keeping(left))
              .filter(strip -> !strip.pieces().isEmpty())
              .toList();
      if (!strips.isEmpty()) {
        used.add(new Used(column.kind, strips));
      }
    }
  }

  long value() {
    return used.stream().mapToLong(u -> kinds.get(u.kind()).value()).sum();
  }

  List<Shortfall> shortfalls() {
    List<Shortfall> shortfalls = new ArrayList<>();
    for (int p = 0; p < missing.length; p++) {
      if (missing[p] > 0) {
        shortfalls.add(new Shortfall(task.parts().get(p).mark(), missing[p]));
      }
    }
    return shortfalls;
  }

  /** Known after {@link #cut}. */
  int settings() {
    return settings.size();
  }

  /** The plan, in the order of the stock. */
  List<CutPanel> cut() {
    List<CutPanel> panels = new ArrayList<>();
    for (int k = 0; k < kinds.size(); k++) {
      int kind = k;
      List<Used> ofKind = used.stream().filter(u -> u.kind() == kind).toList();
      int next = 0;
      for (int member : kinds.get(k).members()) {
        Panel panel = task.stock().get(member);
        for (int n = 1; n <= panel.count() && next < ofKind.size(); n++) {
          panels.add(cut(panel.id(), n, ofKind.get(next++)));
        }
      }
    }
    return panels;
  }

  private CutPanel cut(String id, int number, Used panel) {
    List<CutStrip> strips = new ArrayList<>();
    List<Area> remnants = new ArrayList<>();
    List<Area> areas = kinds.get(panel.kind()).areas();
    for (int a = 0; a < areas.size(); a++) {
      int area = a;
      Comparator<StripCut> widest = Comparator.comparingLong(strip -> -over(strip));
      List<StripCut> here =
          panel.strips().stream().filter(s -> s.area() == area).sorted(widest).toList();
      cut(areas.get(a), here, strips, remnants);
    }
    remnants.removeIf(this::isTooSmall);
    return new CutPanel(id, number, strips, remnants);
  }

  private void cut(Area area, List<StripCut> cuts, List<CutStrip> strips, List<Area> remnants) {
    Run run = cuts.isEmpty() ? Run.ALONG : cuts.get(0).run();
    long kerf = task.saw().within(run);
    long at = 0;
    for (int block : cuts.stream().map(StripCut::block).distinct().toList()) {
      List<StripCut> here = cuts.stream().filter(cut -> cut.block() == block).toList();
      long down =
          block == 0
              ? area.down(run)
              : here.stream().mapToLong(cut -> cut.down(kerf)).max().orElse(0);
      strips(area.part(run, at, 0, down, area.over(run)), run, here, strips, remnants);
      at += down + kerf;
    }
    remnants.add(area.part(run, at, 0, area.down(run) - at, area.over(run)));
  }

  private void strips(
      Area area, Run run, List<StripCut> cuts, List<CutStrip> strips, List<Area> remnants) {
    long at = 0;
    for (StripCut cut : cuts) {
      long over = over(cut);
      Area strip = area.part(run, 0, at, area.down(run), over);
      long down = 0;
      List<PanelPiece> pieces = new ArrayList<>();
      for (PanelType.Lie lie : inOrder(cut.pieces())) {
        settings.add(new Setting(run, lie.over()));
        Due due = queues.get(lie.type()).remove();
        Area place = strip.part(run, down, 0, lie.down(), lie.over());
        pieces.add(new PanelPiece(task.parts().get(due.part()).mark(), due.copy(), place));
        down += lie.down() + task.saw().within(run);
      }
      strips.add(new CutStrip(run, strip, pieces));
      remnants.add(strip.part(run, down, 0, strip.down(run) - down, over));
      at += over + task.saw().between(run);
    }
    remnants.add(area.part(run, 0, at, area.down(run), area.over(run) - at));
  }

  /** No wider than its widest piece: another may have gone from it. */
  private static long over(StripCut cut) {
    return cut.pieces().stream().mapToLong(PanelType.Lie::over).max().orElse(0);
  }

  private static List<PanelType.Lie> inOrder(List<PanelType.Lie> pieces) {
    return pieces.stream()
        .sorted(
            Comparator.comparingLong((PanelType.Lie l) -> -l.over())
                .thenComparingLong(l -> -l.down())
                .thenComparingInt(PanelType.Lie::type))
        .toList();
  }

  private boolean isTooSmall(Area area) {
    long longer = Math.max(area.length(), area.width());
    long shorter = Math.min(area.length(), area.width());
    return shorter <= 0 || longer < task.remnantLong() || shorter < task.remnantShort();
  }
}
