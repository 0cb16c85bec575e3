package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Makes a plan do with fewer widths of the fence, at the same value of stock: one width after the
 * other is barred, the rarest first, and the plan made anew.
 */
final class PanelSettings {
  private static final int MOST_TRIED = 16;

  private final PanelModel model;
  private final Effort each;
  private final Set<Setting> barred = new HashSet<>();
  private long steps;

  PanelSettings(PanelModel model, Effort effort) {
    this.model = model;
    this.each = effort.of(effort.steps() / MOST_TRIED);
  }

  /** The columns of the same parts with as few widths as were found. */
  List<Column<List<StripCut>>> fewer(Solved<List<StripCut>> solved) {
    int[] made = model.demand();
    for (int i = 0; i < made.length; i++) {
      made[i] -= solved.unmade().get(i);
    }
    List<Column<List<StripCut>>> columns = solved.columns();
    int tried = 0;
    for (Setting setting : rarestFirst(columns, made)) {
      barred.add(setting);
      if (tried < MOST_TRIED && isPossible(made)) {
        tried++;
        Search<List<StripCut>> search = again(made, solved.value());
        if (search.best().isDone() && search.best().spent <= solved.value()) {
          columns = search.best().columns();
          continue;
        }
      }
      barred.remove(setting);
    }
    return columns;
  }

  long steps() {
    return steps;
  }

  private Search<List<StripCut>> again(int[] made, long value) {
    Work work = new Work(each);
    long[] penalty = new long[made.length];
    Arrays.fill(penalty, value + 1);
    Cover cover = new Cover(made, model.counts(), model.values(), penalty);
    Search<List<StripCut>> search = new Search<>(cover, model.pricing(barred), work);
    search.aimFor(value);
    search.run(value);
    steps += work.spent();
    return search;
  }

  private boolean isPossible(int[] made) {
    PanelPricing pricing = model.pricing(barred);
    for (int i = 0; i < made.length; i++) {
      if (made[i] > 0 && !pricing.canLie(i)) {
        return false;
      }
    }
    return true;
  }

  private static List<Setting> rarestFirst(List<Column<List<StripCut>>> columns, int[] made) {
    int[] left = made.clone();
    Map<Setting, Integer> uses = new TreeMap<>(Setting.ORDER);
    for (Column<List<StripCut>> column : columns) {
      for (StripCut strip : column.layout) {
        for (PanelType.Lie piece : strip.keeping(left).pieces()) {
          uses.merge(new Setting(strip.run(), piece.over()), 1, Integer::sum);
        }
      }
    }
    List<Setting> order = new ArrayList<>(uses.keySet());
    order.sort((a, b) -> Integer.compare(uses.getOrDefault(a, 0), uses.getOrDefault(b, 0)));
    return order;
  }
}
