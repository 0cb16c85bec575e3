package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Grid.Cell;

/** Finds the thin faces of a stack: what lies outward of a core or of a gap between strips. */
final class GridSkins {
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
    } else if (cell.index() < 0) {
      flange(row, 1, cell);
      flange(row, -1, cell);
    }
  }

  /** A full layer beside a web stands out over a void at its side. */
  private void flange(int row, int step, Cell gap) {
    int r = row + step;
    if (r >= 0 && r < grid.rows().size() && grid.rows().get(r).size() == 1) {
      outward(row, step, gap, new Support.Outstanding(gap.box().width()));
    }
  }

  /** Collects the plies from a core or gap outward; a further core or the open air ends them. */
  private void outward(int row, int step, Cell from, Support support) {
    double middle = from.box().y() + from.box().width() / 2;
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
