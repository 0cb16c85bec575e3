package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Best fit, widest first: each part goes to the strip where it leaves least length; a new strip is
 * begun only where none can take it, a new panel only where no strip can be begun. Runs in about n
 * log n.
 */
final class PanelFirstFit {
  private static final int MOST_LOOKED_AT = 64;

  private record Begun(int panel, int area, long used) {}

  private record Strip(int panel, long over, List<PanelType.Lie> pieces) {}

  private final List<PanelKind> kinds;
  private final PanelSaw saw;
  private final Run run;
  private final int[] stock;
  private final List<List<Optional<PanelType.Lie>>> lies;
  private final List<Integer> cheapest;
  private final TreeMap<Long, List<Begun>> openAreas = new TreeMap<>();
  private final TreeMap<Long, List<Strip>> openStrips = new TreeMap<>();
  private final List<PanelCut> cuts = new ArrayList<>();

  /**
   * For these kinds of panel.
   *
   * @param lies for each type and kind one way to lie; empty where it may not come from it
   */
  PanelFirstFit(
      List<PanelKind> kinds,
      PanelSaw saw,
      Run run,
      int[] stock,
      List<List<Optional<PanelType.Lie>>> lies) {
    this.kinds = kinds;
    this.saw = saw;
    this.run = run;
    this.stock = stock.clone();
    this.lies = lies;
    this.cheapest =
        IntStream.range(0, kinds.size())
            .boxed()
            .sorted(
                Comparator.comparingDouble(
                    s -> (double) kinds.get(s).value() / kinds.get(s).room(saw)))
            .toList();
  }

  /** Cuts so many of each. */
  List<PanelCut> plan(int[] demand) {
    for (int type : widestFirst()) {
      boolean room = true;
      for (int n = 0; room && n < demand[type]; n++) {
        room = place(type);
      }
    }
    return cuts;
  }

  private List<Integer> widestFirst() {
    return IntStream.range(0, lies.size())
        .boxed()
        .sorted(
            Comparator.comparingLong((Integer t) -> -most(t, true))
                .thenComparingLong(t -> -most(t, false)))
        .toList();
  }

  private long most(int type, boolean over) {
    return lies.get(type).stream()
        .flatMap(Optional::stream)
        .mapToLong(lie -> over ? lie.over() : lie.down())
        .max()
        .orElse(0);
  }

  private boolean place(int type) {
    return goesOn(type) || beginStrip(type) || (openPanel(type) && beginStrip(type));
  }

  /** Into a strip that is begun. */
  private boolean goesOn(int type) {
    int looked = 0;
    for (Map.Entry<Long, List<Strip>> entry : openStrips.entrySet()) {
      for (int i = entry.getValue().size() - 1; i >= 0; i--) {
        Strip strip = entry.getValue().get(i);
        Optional<PanelType.Lie> lie = lie(type, strip.panel()).filter(l -> belongs(l, strip));
        if (lie.isPresent() && taking(lie.get()) <= entry.getKey()) {
          put(lie.get(), entry.getKey(), entry.getValue().remove(i), entry.getValue().isEmpty());
          return true;
        }
        if (lie.isPresent() && ++looked > MOST_LOOKED_AT * MOST_LOOKED_AT) {
          return false;
        }
      }
    }
    return false;
  }

  private boolean belongs(PanelType.Lie lie, Strip strip) {
    return saw.stages() == Stages.TWO ? lie.over() == strip.over() : lie.over() <= strip.over();
  }

  private void put(PanelType.Lie lie, long room, Strip strip, boolean wasLast) {
    if (wasLast) {
      openStrips.remove(room);
    }
    strip.pieces().add(lie);
    openStrips.computeIfAbsent(room - taking(lie), k -> new ArrayList<>()).add(strip);
  }

  private boolean beginStrip(int type) {
    int looked = 0;
    for (var entry : openAreas.entrySet()) {
      for (Begun begun : entry.getValue()) {
        Optional<PanelType.Lie> lie = lie(type, begun.panel());
        if (lie.isPresent() && lie.get().over() <= entry.getKey()) {
          if (area(begun).down(run) >= lie.get().down()) {
            take(entry, begun, lie.get());
            return true;
          }
          if (++looked > MOST_LOOKED_AT) {
            return false;
          }
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
    leave(new Begun(begun.panel(), begun.area(), begun.used() + lie.over() + saw.between(run)));
    List<PanelType.Lie> pieces = new ArrayList<>(List.of(lie));
    cuts.get(begun.panel()).strips().add(new StripCut(begun.area(), 0, run, lie.over(), pieces));
    openStrips
        .computeIfAbsent(
            area(begun).down(run) + saw.within(run) - taking(lie), k -> new ArrayList<>())
        .add(new Strip(begun.panel(), lie.over(), pieces));
  }

  private boolean openPanel(int type) {
    for (int kind : cheapest) {
      List<Area> areas = kinds.get(kind).areas();
      Optional<PanelType.Lie> lie = lies.get(type).get(kind);
      if (stock[kind] > 0 && lie.isPresent()) {
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
    long room = area(begun).over(run) - begun.used();
    if (room > 0) {
      openAreas.computeIfAbsent(room, k -> new ArrayList<>()).add(begun);
    }
  }

  private Optional<PanelType.Lie> lie(int type, int panel) {
    return lies.get(type).get(cuts.get(panel).kind());
  }

  private long taking(PanelType.Lie lie) {
    return lie.down() + saw.within(run);
  }

  private Area area(Begun begun) {
    return kinds.get(cuts.get(begun.panel()).kind()).areas().get(begun.area());
  }
}
