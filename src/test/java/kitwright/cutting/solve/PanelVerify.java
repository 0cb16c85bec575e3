package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;

/**
 * Looks over a plan of panels as a distrustful second person would: from the task and the plan
 * alone, with nothing of the solver's.
 */
public final class PanelVerify {
  private final PanelTask task;
  private final PanelPlan plan;
  private final PanelSaw saw;
  private final Map<String, Panel> stock = new HashMap<>();
  private final Map<String, PanelPart> wanted = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private PanelVerify(PanelTask task, PanelPlan plan) {
    this.task = task;
    this.plan = plan;
    this.saw = task.saw();
    task.stock().forEach(panel -> stock.put(panel.id(), panel));
    task.parts().forEach(part -> wanted.put(part.mark(), part));
  }

  /** Everything wrong with the plan, in plain words; empty where it can be cut as it stands. */
  public static List<String> faults(PanelTask task, PanelPlan plan) {
    PanelVerify verify = new PanelVerify(task, plan);
    verify.stock();
    verify.parts();
    plan.panels().forEach(verify::panel);
    return List.copyOf(verify.faults);
  }

  private void stock() {
    Set<String> used = new HashSet<>();
    long value = 0;
    for (CutPanel panel : plan.panels()) {
      Panel from = named(stock, panel.stock());
      value += from.value();
      if (panel.number() < 1 || panel.number() > from.count()) {
        faults.add("there is no panel " + panel.number() + " of " + panel.stock());
      }
      if (!used.add(panel.stock() + " " + panel.number())) {
        faults.add(panel.stock() + " " + panel.number() + " is cut twice");
      }
    }
    if (value != plan.outcome().value() || plan.outcome().bound() > value) {
      faults.add("the stock is worth " + value + ", the plan says " + plan.outcome());
    }
  }

  private void parts() {
    Map<String, Integer> made = new HashMap<>();
    Set<String> copies = new HashSet<>();
    for (CutPanel panel : plan.panels()) {
      for (CutStrip strip : panel.strips()) {
        for (PanelPiece piece : strip.pieces()) {
          made.merge(piece.mark(), 1, Integer::sum);
          if (!copies.add(piece.mark() + " " + piece.copy())) {
            faults.add(piece.mark() + " " + piece.copy() + " is cut twice");
          }
          lie(piece, panel.stock());
        }
      }
    }
    plan.missing().forEach(s -> made.merge(s.mark(), s.missing(), Integer::sum));
    for (PanelPart part : task.parts()) {
      int accounted = made.getOrDefault(part.mark(), 0);
      if (accounted != part.qty()) {
        faults.add(part.mark() + ": wanted " + part.qty() + ", made or missing " + accounted);
      }
    }
  }

  private void lie(PanelPiece piece, String stock) {
    PanelPart part = named(wanted, piece.mark());
    Area area = piece.area();
    boolean along = area.length() == part.length() && area.width() == part.width();
    boolean across = area.length() == part.width() && area.width() == part.length();
    boolean right =
        (along && part.on(stock).filter(way -> way != Grain.ACROSS).isPresent())
            || (across && part.on(stock).filter(way -> way != Grain.ALONG).isPresent());
    if (!right) {
      faults.add(piece.mark() + ": wrong size, or wrong to the grain: " + area);
    }
  }

  private void panel(CutPanel cut) {
    Panel from = named(stock, cut.stock());
    List<Area> all = new ArrayList<>(cut.remnants());
    for (CutStrip strip : cut.strips()) {
      strip(cut.stock(), strip);
      strip.pieces().forEach(piece -> all.add(piece.area()));
    }
    for (Area area : all) {
      if (area.along() < saw.trim()
          || area.across() < saw.trim()
          || alongEnd(area) > from.length() - saw.trim()
          || acrossEnd(area) > from.width() - saw.trim()) {
        faults.add(cut.stock() + ": " + area + " lies beyond the trimmed edges");
      }
      for (Spoilt spoilt : from.spoilt()) {
        long start = spoilt.run() == Run.ALONG ? area.across() : area.along();
        long end = spoilt.run() == Run.ALONG ? acrossEnd(area) : alongEnd(area);
        if (start < spoilt.span().to() && spoilt.span().from() < end) {
          faults.add(cut.stock() + ": " + area + " holds " + spoilt);
        }
      }
    }
    if (!canBeParted(all)) {
      faults.add(cut.stock() + ": no straight cuts with room for the saw part " + all);
    }
  }

  /** Whether straight cuts from edge to edge, each a kerf wide, can part all of them. */
  private boolean canBeParted(List<Area> areas) {
    return areas.size() < 2
        || parted(areas, Area::along, PanelVerify::alongEnd, saw.crossKerf())
        || parted(areas, Area::across, PanelVerify::acrossEnd, saw.ripKerf());
  }

  /** Cuts wherever a kerf fits between all before and all after, then looks at each share. */
  private boolean parted(
      List<Area> areas, ToLongFunction<Area> start, ToLongFunction<Area> end, long kerf) {
    List<Area> sorted = new ArrayList<>(areas);
    sorted.sort(Comparator.comparingLong(start));
    List<List<Area>> shares = new ArrayList<>();
    long reach = Long.MIN_VALUE;
    for (Area area : sorted) {
      if (shares.isEmpty() || start.applyAsLong(area) >= reach + kerf) {
        shares.add(new ArrayList<>());
      }
      shares.get(shares.size() - 1).add(area);
      reach = Math.max(reach, end.applyAsLong(area));
    }
    return shares.size() > 1 && shares.stream().allMatch(this::canBeParted);
  }

  /** Strip rules: pieces begin at one edge of the strip, one behind the other; none is wider. */
  private void strip(String name, CutStrip strip) {
    boolean along = strip.run() == Run.ALONG;
    if (saw.stages() != Stages.THREE_AND_TRIM && !saw.firstCut().runs().contains(strip.run())) {
      faults.add(name + ": a strip runs " + strip.run());
    }
    Area whole = strip.area();
    for (PanelPiece piece : strip.pieces()) {
      Area area = piece.area();
      boolean begins = along ? area.across() == whole.across() : area.along() == whole.along();
      boolean inside =
          area.along() >= whole.along()
              && area.across() >= whole.across()
              && alongEnd(area) <= alongEnd(whole)
              && acrossEnd(area) <= acrossEnd(whole);
      long over = along ? area.width() : area.length();
      long wide = along ? whole.width() : whole.length();
      boolean asWide = saw.stages() != Stages.TWO || over == wide;
      if (!begins || !inside || !asWide) {
        faults.add(name + ": " + piece + " does not belong in " + whole);
      }
    }
  }

  private static <T> T named(Map<String, T> all, String name) {
    return Optional.ofNullable(all.get(name))
        .orElseThrow(() -> new IllegalArgumentException("the task knows no " + name));
  }

  private static long alongEnd(Area area) {
    return area.along() + area.length();
  }

  private static long acrossEnd(Area area) {
    return area.across() + area.width();
  }
}
