package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Best fit, widest first: each part goes to the strip where it leaves least length; a new strip is
 * begun only where none can take it, a new panel only where no strip can be begun. Runs in about n
 * log n.
 */
final class PanelFirstFit {
  private static final int MOST_LOOKED_AT = 64;

  private record Begun(int panel, int area, long used) {}

  private record Strip(int panel, List<PanelType.Lie> pieces) {}

  private final List<PanelKind> kinds;
  private final PanelSaw saw;
  private final Run run;
  private final int[] stock;
  private final List<Integer> cheapest;
  private final TreeMap<Long, List<Begun>> openAreas = new TreeMap<>();
  private final TreeMap<Long, List<Strip>> openStrips = new TreeMap<>();
  private final List<PanelCut> cuts = new ArrayList<>();
  private long stripsAre;

  PanelFirstFit(List<PanelKind> kinds, PanelSaw saw, Run run, int[] stock) {
    this.kinds = kinds;
    this.saw = saw;
    this.run = run;
    this.stock = stock.clone();
    List<Integer> order = new ArrayList<>();
    for (int s = 0; s < kinds.size(); s++) {
      order.add(s);
    }
    order.sort(
        Comparator.comparingDouble(s -> (double) kinds.get(s).value() / kinds.get(s).room(saw)));
    this.cheapest = order;
  }

  /** Cuts so many of each; {@code lies} gives one way to lie for each type, widest first. */
  List<PanelCut> plan(List<PanelType.Lie> lies, int[] demand) {
    for (PanelType.Lie lie : lies) {
      if (saw.stages() == Stages.TWO && lie.over() != stripsAre) {
        openStrips.clear();
      }
      stripsAre = lie.over();
      boolean room = true;
      for (int n = 0; room && n < demand[lie.type()]; n++) {
        room = place(lie);
      }
    }
    return cuts;
  }

  private boolean place(PanelType.Lie lie) {
    long taking = lie.down() + saw.within(run);
    Map.Entry<Long, List<Strip>> fit = openStrips.ceilingEntry(taking);
    if (fit == null) {
      return (beginStrip(lie) || (openPanel(lie) && beginStrip(lie))) && place(lie);
    }
    Strip strip = last(openStrips, fit);
    strip.pieces().add(lie);
    openStrips.computeIfAbsent(fit.getKey() - taking, k -> new ArrayList<>()).add(strip);
    return true;
  }

  private boolean beginStrip(PanelType.Lie lie) {
    int looked = 0;
    for (var entry : openAreas.tailMap(lie.over()).entrySet()) {
      for (Begun begun : entry.getValue()) {
        if (down(begun) >= lie.down()) {
          take(entry, begun, lie);
          return true;
        }
        if (++looked > MOST_LOOKED_AT) {
          return false;
        }
      }
    }
    return false;
  }

  private void take(Map.Entry<Long, List<Begun>> entry, Begun begun, PanelType.Lie lie) {
    entry.getValue().remove(begun);
    if (entry.getValue().isEmpty()) {
      openAreas.remove(entry.getKey());
    }
    long used = lie.over() + saw.between(run);
    leave(new Begun(begun.panel(), begun.area(), begun.used() + used));
    List<PanelType.Lie> pieces = new ArrayList<>();
    cuts.get(begun.panel()).strips().add(new StripCut(begun.area(), run, lie.over(), pieces));
    openStrips
        .computeIfAbsent(down(begun) + saw.within(run), k -> new ArrayList<>())
        .add(new Strip(begun.panel(), pieces));
  }

  private boolean openPanel(PanelType.Lie lie) {
    for (int kind : cheapest) {
      List<Area> areas = kinds.get(kind).areas();
      boolean fits =
          areas.stream().anyMatch(a -> a.down(run) >= lie.down() && a.over(run) >= lie.over());
      if (stock[kind] > 0 && fits) {
        stock[kind]--;
        cuts.add(new PanelCut(kind, new ArrayList<>()));
        for (int a = 0; a < areas.size(); a++) {
          leave(new Begun(cuts.size() - 1, a, 0));
        }
        return true;
      }
    }
    return false;
  }

  private void leave(Begun begun) {
    Area area = area(begun);
    if (area.over(run) > begun.used()) {
      openAreas.computeIfAbsent(area.over(run) - begun.used(), k -> new ArrayList<>()).add(begun);
    }
  }

  private long down(Begun begun) {
    return area(begun).down(run);
  }

  private Area area(Begun begun) {
    return kinds.get(cuts.get(begun.panel()).kind()).areas().get(begun.area());
  }

  private static <T> T last(Map<Long, List<T>> open, Map.Entry<Long, List<T>> entry) {
    List<T> all = entry.getValue();
    T last = all.remove(all.size() - 1);
    if (all.isEmpty()) {
      open.remove(entry.getKey());
    }
    return last;
  }
}
