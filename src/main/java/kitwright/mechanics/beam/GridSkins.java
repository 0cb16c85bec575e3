package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Grid.Cell;

/** Finds the thin faces of a stack: what lies outward of a core or of a gap between strips. */
final class GridSkins {
  private static final double TOUCH = 1e-9;

  private final Grid grid;
  private final List<Skin> skins = new ArrayList<>();

  private GridSkins(Grid grid) {
    this.grid = grid;
  }

  static List<Skin> of(Grid grid) {
    var found = new GridSkins(grid);
    for (int row = 0; row < grid.rows().size(); row++) {
      var cells = grid.rows().get(row);
      for (int s = 0; s < cells.size(); s++) {
        found.around(row, s);
      }
      for (int step : new int[] {1, -1}) {
        found.outstanding(row, step);
        found.free(row, step);
      }
    }
    return found.skins.stream().distinct().toList();
  }

  private void around(int row, int strip) {
    var cells = grid.rows().get(row);
    var cell = cells.get(strip);
    boolean inner = strip > 0 && strip + 1 < cells.size();
    if (core(cell)) {
      var support = new Support.OnCore(cell.material().orElseThrow());
      outward(row, 1, cell, support);
      outward(row, -1, cell, support);
      side(cells, strip, support);
    } else if (cell.index() < 0 && inner) {
      var support = new Support.OverGap(cell.box().width());
      outward(row, 1, cell, support);
      outward(row, -1, cell, support);
    }
  }

  /** What of a layer stands out over voids beyond the webs that carry it. */
  private void outstanding(int row, int step) {
    int r = row + step;
    if (r < 0 || r >= grid.rows().size()) {
      return;
    }
    for (var flange : runs(grid.rows().get(r))) {
      var webs =
          grid.rows().get(row).stream().filter(c -> c.index() >= 0 && flange.over(c)).toList();
      if (!webs.isEmpty()) {
        double left = webs.get(0).box().y();
        var last = webs.get(webs.size() - 1).box();
        outstanding(row, step, flange.from(), left);
        outstanding(row, step, last.y() + last.width(), flange.to());
      }
    }
  }

  private void outstanding(int row, int step, double from, double to) {
    if (to - from > TOUCH) {
      outward(row, step, (from + to) / 2, new Support.Outstanding(to - from));
    }
  }

  /** Strips of a layer that touch, m. */
  private record Run(double from, double to) {
    boolean over(Cell cell) {
      var box = cell.box();
      return Math.min(to, box.y() + box.width()) - Math.max(from, box.y()) > TOUCH;
    }
  }

  private static List<Run> runs(List<Cell> cells) {
    var runs = new ArrayList<Run>();
    boolean on = false;
    for (var cell : cells) {
      var box = cell.box();
      if (cell.index() >= 0) {
        double from = on ? runs.remove(runs.size() - 1).from() : box.y();
        runs.add(new Run(from, box.y() + box.width()));
      }
      on = cell.index() >= 0;
    }
    return runs;
  }

  /** A web with nothing at its far edge, such as that of a T: it stands out like a flange. */
  private void free(int row, int step) {
    for (var tip : grid.rows().get(row)) {
      double middle = tip.box().y() + tip.box().width() / 2;
      int beyond = row + step;
      boolean open =
          beyond < 0 || beyond >= grid.rows().size() || grid.at(beyond, middle).isEmpty();
      if (open && isWeb(row, tip) && !isCap(row - step, tip, middle)) {
        free(row, -step, middle);
      }
    }
  }

  /** What is twice as wide as the web below it is a flange, which holds the edge of the web. */
  private boolean isCap(int below, Cell tip, double middle) {
    return below >= 0
        && below < grid.rows().size()
        && grid.at(below, middle)
            .filter(web -> tip.box().width() >= 2 * web.box().width())
            .isPresent();
  }

  private void free(int row, int inward, double middle) {
    var web = new ArrayList<Cell>();
    int r = row;
    while (r >= 0 && r < grid.rows().size()) {
      int at = r;
      var next = grid.at(r, middle).filter(cell -> isWeb(at, cell));
      if (next.isEmpty()) {
        break;
      }
      web.add(next.get());
      r += inward;
    }
    boolean held = r >= 0 && r < grid.rows().size() && grid.at(r, middle).isPresent();
    if (held) {
      double high = web.stream().mapToDouble(c -> c.box().height()).sum();
      double thick = web.stream().mapToDouble(c -> c.box().width()).min().orElseThrow();
      var leaves =
          web.stream()
              .map(c -> new Skin.Leaf(c.box().material(), thick * c.box().height() / high))
              .toList();
      var plies = web.stream().map(Cell::index).toList();
      skins.add(Skin.of(plies, leaves, new Support.Outstanding(high)));
    }
  }

  /** A strip with a void or the open air at either side. */
  private boolean isWeb(int row, Cell cell) {
    var cells = grid.rows().get(row);
    int at = 0;
    while (cells.get(at).box().y() < cell.box().y()) {
      at++;
    }
    return cell.index() >= 0
        && cells.size() > 1
        && !core(cell)
        && (at == 0 || cells.get(at - 1).index() < 0)
        && (at + 1 == cells.size() || cells.get(at + 1).index() < 0);
  }

  /** Collects the plies from a core or gap outward; a further core or the open air ends them. */
  private void outward(int row, int step, Cell from, Support support) {
    outward(row, step, from.box().y() + from.box().width() / 2, support);
  }

  private void outward(int row, int step, double middle, Support support) {
    var plies = new ArrayList<Cell>();
    for (int r = row + step; r >= 0 && r < grid.rows().size(); r += step) {
      var next = grid.at(r, middle);
      if (next.isEmpty() || core(next.get())) {
        break;
      }
      plies.add(next.get());
    }
    if (!plies.isEmpty()) {
      var leaves =
          plies.stream().map(c -> new Skin.Leaf(c.box().material(), c.box().height())).toList();
      skins.add(Skin.of(plies.stream().map(Cell::index).toList(), leaves, support));
    }
  }

  /** A side wall on a core: only the outermost strip, for an inner one is a web. */
  private void side(List<Cell> cells, int strip, Support support) {
    for (int outer : new int[] {0, cells.size() - 1}) {
      var wall = cells.get(outer);
      if (Math.abs(outer - strip) == 1 && wall.index() >= 0 && !core(wall)) {
        var leaf = new Skin.Leaf(wall.box().material(), wall.box().width());
        skins.add(Skin.of(List.of(wall.index()), List.of(leaf), support));
      }
    }
  }

  private static boolean core(Cell cell) {
    return cell.material().map(m -> m.kind() == Kind.CORE).orElse(false);
  }
}
