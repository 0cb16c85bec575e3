package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Panels that are the same to the saw.
 *
 * @param areas sound rectangles between trimmed edges and spoilt strips
 * @param value of one panel
 * @param members places in the task's list of stock
 * @param count of all members together
 * @param ways how each part of the task may lie on it; empty where it may not come from it
 */
record PanelKind(
    List<Area> areas, long value, List<Integer> members, int count, List<Optional<Grain>> ways) {
  private record Likeness(List<Area> areas, long value, List<Optional<Grain>> ways) {}

  /** All panels with room for anything, in the order of the task. */
  static List<PanelKind> of(PanelTask task) {
    Map<Likeness, List<Integer>> alike = new LinkedHashMap<>();
    for (int p = 0; p < task.stock().size(); p++) {
      Panel panel = task.stock().get(p);
      List<Area> areas = sound(panel, task.saw());
      if (panel.count() > 0 && !areas.isEmpty()) {
        alike
            .computeIfAbsent(
                new Likeness(areas, panel.value(), ways(task, panel)), k -> new ArrayList<>())
            .add(p);
      }
    }
    List<PanelKind> kinds = new ArrayList<>();
    alike.forEach(
        (like, members) -> {
          long count = members.stream().mapToLong(p -> task.stock().get(p).count()).sum();
          int capped = (int) Math.min(Integer.MAX_VALUE, count);
          kinds.add(new PanelKind(like.areas(), like.value(), members, capped, like.ways()));
        });
    return List.copyOf(kinds);
  }

  private static List<Area> sound(Panel panel, PanelSaw saw) {
    List<Area> areas = new ArrayList<>();
    List<Span> down =
        Clear.stretches(panel.length(), saw.trim(), spoilt(panel, Run.ACROSS), saw.crossKerf());
    List<Span> over =
        Clear.stretches(panel.width(), saw.trim(), spoilt(panel, Run.ALONG), saw.ripKerf());
    for (Span x : down) {
      for (Span y : over) {
        areas.add(new Area(x.from(), y.from(), x.length(), y.length()));
      }
    }
    return List.copyOf(areas);
  }

  private static List<Optional<Grain>> ways(PanelTask task, Panel panel) {
    return task.parts().stream().map(part -> part.on(panel.id())).toList();
  }

  /** Whether a part, by its place in the task, may come from it and has room there. */
  boolean takes(int place, PanelPart part) {
    return ways.get(place).isPresent()
        && areas.stream()
            .anyMatch(
                area ->
                    (part.length() <= area.length() && part.width() <= area.width())
                        || (part.width() <= area.length() && part.length() <= area.width()));
  }

  /** How wide a part is that takes the whole width. */
  long fullWidth() {
    return areas.stream().mapToLong(Area::width).max().orElse(0);
  }

  private static List<Span> spoilt(Panel panel, Run run) {
    return panel.spoilt().stream().filter(s -> s.run() == run).map(Spoilt::span).toList();
  }

  /** What parts can take out of it at the most, kerfs included. */
  long room(PanelSaw saw) {
    return areas.stream()
        .mapToLong(a -> (a.length() + saw.crossKerf()) * (a.width() + saw.ripKerf()))
        .sum();
  }
}
