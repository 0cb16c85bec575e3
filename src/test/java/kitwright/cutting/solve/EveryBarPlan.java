package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries every way of handing parts to pieces, one part after the other; for a few parts only. */
final class EveryBarPlan {
  private record Stretch(int owner, long room) {}

  private final BarTask task;
  private final List<Long> lengths = new ArrayList<>();
  private final List<Long> values = new ArrayList<>();
  private final Map<String, Boolean> seen = new HashMap<>();
  private final List<List<Long>> stretches = new ArrayList<>();
  private long least = Long.MAX_VALUE;

  private final List<BarPart> parts = new ArrayList<>();
  private final List<String> names = new ArrayList<>();

  EveryBarPlan(BarTask task) {
    this.task = task;
    for (BarPart part : task.parts()) {
      for (int n = 0; n < part.qty(); n++) {
        lengths.add(part.length());
        parts.add(part);
      }
    }
    for (Bar bar : task.stock()) {
      for (int n = 0; n < bar.count(); n++) {
        stretches.add(clear(bar));
        names.add(bar.id());
        values.add(bar.value());
      }
    }
  }

  Optional<Long> leastValue() {
    List<Stretch> open = new ArrayList<>();
    for (int owner = 0; owner < stretches.size(); owner++) {
      for (long length : stretches.get(owner)) {
        open.add(new Stretch(owner, length + task.kerf()));
      }
    }
    place(0, open, new boolean[stretches.size()], 0);
    return least == Long.MAX_VALUE ? Optional.empty() : Optional.of(least);
  }

  private void place(int next, List<Stretch> open, boolean[] used, long value) {
    if (value >= least || seen.putIfAbsent(next + " " + open + value, true) != null) {
      return;
    }
    if (next == lengths.size()) {
      least = value;
      return;
    }
    long taking = lengths.get(next) + task.kerf();
    for (int i = 0; i < open.size(); i++) {
      Stretch stretch = open.get(i);
      boolean may = parts.get(next).mayComeFrom(names.get(stretch.owner()));
      if (may && stretch.room() >= taking) {
        open.set(i, new Stretch(stretch.owner(), stretch.room() - taking));
        boolean fresh = !used[stretch.owner()];
        used[stretch.owner()] = true;
        place(next + 1, open, used, value + (fresh ? values.get(stretch.owner()) : 0));
        if (fresh) {
          used[stretch.owner()] = false;
        }
        open.set(i, stretch);
      }
    }
  }

  /** Sound stretches, tenth by tenth: a defect spoils its own and at least a kerf's width. */
  private List<Long> clear(Bar bar) {
    boolean[] bad = new boolean[(int) bar.length()];
    for (Span defect : bar.defects()) {
      long to = Math.max(defect.to(), defect.from() + task.kerf());
      for (long at = defect.from(); at < Math.min(to, bar.length()); at++) {
        bad[(int) at] = true;
      }
    }
    List<Long> clear = new ArrayList<>();
    long run = 0;
    for (long at = task.trim(); at < bar.length() - task.trim(); at++) {
      if (bad[(int) at]) {
        clear.add(run);
        run = 0;
      } else {
        run++;
      }
    }
    clear.add(run);
    return clear.stream().filter(r -> r > 0).toList();
  }
}
