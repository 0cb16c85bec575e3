package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tries every way of sorting a few parts into strips and strips into sound rectangles of panels.
 * Knows the rules only from the task.
 */
final class EveryPanelPlan {
  private record Place(int panel, long along, long across) {}

  private record Piece(PanelPart part) {}

  private record Lying(long along, long across) {}

  /** A strip in a place; its way of running is that of all strips there. */
  private record Strip(int place, Run run, List<Lying> pieces) {}

  private final PanelTask task;
  private final List<Place> places = new ArrayList<>();
  private final List<Long> values = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private long least = Long.MAX_VALUE;

  private final List<String> names = new ArrayList<>();

  EveryPanelPlan(PanelTask task) {
    this.task = task;
    for (Panel panel : task.stock()) {
      for (int n = 0; n < panel.count(); n++) {
        for (long along : sound(panel.length(), panel, Run.ACROSS, task.saw().crossKerf())) {
          for (long across : sound(panel.width(), panel, Run.ALONG, task.saw().ripKerf())) {
            places.add(new Place(values.size(), along, across));
          }
        }
        values.add(panel.value());
        names.add(panel.id());
      }
    }
    for (PanelPart part : task.parts()) {
      for (int n = 0; n < part.qty(); n++) {
        pieces.add(new Piece(part));
      }
    }
  }

  Optional<Long> leastValue() {
    put(0, new ArrayList<>());
    return least == Long.MAX_VALUE ? Optional.empty() : Optional.of(least);
  }

  private void put(int next, List<Strip> strips) {
    if (!fits(strips) || value(strips) >= least) {
      return;
    }
    if (next == pieces.size()) {
      least = value(strips);
      return;
    }
    for (Strip strip : List.copyOf(strips)) {
      for (Lying lying : ways(pieces.get(next), strip.place())) {
        strip.pieces().add(lying);
        put(next + 1, strips);
        strip.pieces().remove(strip.pieces().size() - 1);
      }
    }
    for (int place = 0; place < places.size(); place++) {
      for (Lying lying : ways(pieces.get(next), place)) {
        for (Run run : task.saw().firstCut().runs()) {
          strips.add(new Strip(place, run, new ArrayList<>(List.of(lying))));
          put(next + 1, strips);
          strips.remove(strips.size() - 1);
        }
      }
    }
  }

  private List<Lying> ways(Piece piece, int place) {
    PanelPart part = piece.part();
    Lying along = new Lying(part.length(), part.width());
    Lying across = new Lying(part.width(), part.length());
    Optional<Grain> way = part.on(names.get(places.get(place).panel()));
    if (way.isEmpty()) {
      return List.of();
    }
    return switch (way.get()) {
      case ALONG -> List.of(along);
      case ACROSS -> List.of(across);
      case FREE -> List.of(along, across);
    };
  }

  private long value(List<Strip> strips) {
    return strips.stream()
        .map(s -> places.get(s.place()).panel())
        .distinct()
        .mapToLong(values::get)
        .sum();
  }

  private boolean fits(List<Strip> strips) {
    for (int p = 0; p < places.size(); p++) {
      int place = p;
      List<Strip> here = strips.stream().filter(s -> s.place() == place).toList();
      if (here.stream().map(Strip::run).distinct().count() > 1) {
        return false;
      }
      if (!here.isEmpty() && !fits(here, places.get(p), here.get(0).run() == Run.ALONG)) {
        return false;
      }
    }
    return true;
  }

  private boolean fits(List<Strip> strips, Place place, boolean along) {
    long between = along ? task.saw().ripKerf() : task.saw().crossKerf();
    long within = along ? task.saw().crossKerf() : task.saw().ripKerf();
    long over = -between;
    for (Strip strip : strips) {
      long down = -within;
      long widest = 0;
      for (Lying piece : strip.pieces()) {
        long wide = along ? piece.across() : piece.along();
        if (task.saw().stages() == Stages.TWO && widest > 0 && wide != widest) {
          return false;
        }
        widest = Math.max(widest, wide);
        down += within + (along ? piece.along() : piece.across());
      }
      over += between + widest;
      if (down > (along ? place.along() : place.across())) {
        return false;
      }
    }
    return over <= (along ? place.across() : place.along());
  }

  /** Sound runs, tenth by tenth: a spoilt strip takes its own and at least a kerf's width. */
  private List<Long> sound(long extent, Panel panel, Run spoiltRun, long kerf) {
    List<Long> sound = new ArrayList<>();
    long run = 0;
    for (long at = task.saw().trim(); at <= extent - task.saw().trim(); at++) {
      long here = at;
      boolean bad =
          here == extent - task.saw().trim()
              || panel.spoilt().stream()
                  .filter(s -> s.run() == spoiltRun)
                  .map(Spoilt::span)
                  .anyMatch(s -> here >= s.from() && here < Math.max(s.to(), s.from() + kerf));
      if (bad && run > 0) {
        sound.add(run);
      }
      run = bad ? 0 : run + 1;
    }
    return sound;
  }
}
