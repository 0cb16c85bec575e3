package kitwright.mechanics.beam;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Layers of strips laid out in the plane. */
record Grid(List<List<Cell>> rows) {
  /** A strip in its place; index among the regions, or −1 for a void. */
  record Cell(int index, String where, Rectangle box, Optional<BeamMaterial> material) {}

  private static final double TOUCH = 1e-9;

  static Grid of(List<Layer> layers) {
    var rows = new ArrayList<List<Cell>>();
    double z = 0;
    int index = 0;
    for (var layer : layers) {
      var row = new ArrayList<Cell>();
      double y = 0;
      for (int s = 0; s < layer.strips().size(); s++) {
        var strip = layer.strips().get(s);
        var where =
            layer.strips().size() == 1 ? layer.where() : layer.where() + " strip " + (s + 1);
        var stuff = strip.material().orElse(VOID);
        var box = new Rectangle(where, stuff, y, z, strip.width(), layer.thickness());
        row.add(
            new Cell(strip.material().isPresent() ? index++ : -1, where, box, strip.material()));
        y += strip.width();
      }
      rows.add(List.copyOf(row));
      z += layer.thickness();
    }
    return new Grid(List.copyOf(rows));
  }

  /** Stands in a void's box, which is never counted. */
  private static final BeamMaterial VOID =
      BeamMaterial.of("void", BeamMaterial.Kind.CORE, 1, 1, 1, BeamMaterial.Strength.unknown());

  List<Region> regions() {
    var list = new ArrayList<Region>();
    for (var row : rows) {
      row.stream().filter(c -> c.index() >= 0).forEach(c -> list.add(c.box()));
    }
    return list;
  }

  /** Whether every part is joined to every other by faces that touch. */
  boolean joined() {
    var parts = new ArrayList<Rectangle>();
    for (var row : rows) {
      for (var cell : row) {
        if (cell.index() >= 0) {
          parts.add(cell.box());
        }
      }
    }
    return reachedFromTheFirst(parts) == parts.size();
  }

  /**
   * Whether parts that do not touch stand side by side and are built alike from bottom to top, as
   * the wood left and right of an upright bolt hole: they bend alike, each on its own or joined.
   */
  boolean abreast() {
    var first = rows.get(0);
    for (var row : rows) {
      if (row.size() != first.size()) {
        return false;
      }
      Optional<BeamMaterial> material = Optional.empty();
      for (int i = 0; i < row.size(); i++) {
        var cell = row.get(i);
        boolean fits =
            (cell.index() < 0) == (first.get(i).index() < 0)
                && Math.abs(cell.box().width() - first.get(i).box().width()) < TOUCH;
        boolean alike = cell.index() < 0 || material.isEmpty() || material.equals(cell.material());
        if (!fits || !alike) {
          return false;
        }
        material = cell.index() < 0 ? material : cell.material();
      }
    }
    return true;
  }

  /** Whether these regions are rectangles that do not all hang together. */
  static boolean parted(List<Region> regions) {
    var boxes = new ArrayList<Rectangle>();
    for (var region : regions) {
      if (region instanceof Rectangle box) {
        boxes.add(box);
      }
    }
    return boxes.size() == regions.size() && reachedFromTheFirst(boxes) < boxes.size();
  }

  /** How many parts hang together with the first, itself counted. */
  private static int reachedFromTheFirst(List<Rectangle> parts) {
    boolean[] reached = new boolean[parts.size()];
    reached[0] = true;
    var left = new ArrayDeque<Integer>(List.of(0));
    int count = 0;
    while (!left.isEmpty()) {
      var from = parts.get(left.remove());
      count++;
      for (int i = 0; i < parts.size(); i++) {
        if (!reached[i] && touch(from, parts.get(i))) {
          reached[i] = true;
          left.add(i);
        }
      }
    }
    return count;
  }

  private static boolean touch(Rectangle a, Rectangle b) {
    double across = overlap(a.y(), a.y() + a.width(), b.y(), b.y() + b.width());
    double up = overlap(a.z(), a.z() + a.height(), b.z(), b.z() + b.height());
    double slack = TOUCH * (a.width() + a.height());
    return (across > slack && up > -slack) || (up > slack && across > -slack);
  }

  private static double overlap(double from, double to, double otherFrom, double otherTo) {
    return Math.min(to, otherTo) - Math.max(from, otherFrom);
  }

  List<Bond> bonds(OptionalDouble glue) {
    var list = new ArrayList<Bond>();
    for (int r = 0; r + 1 < rows.size(); r++) {
      for (var below : rows.get(r)) {
        for (var above : rows.get(r + 1)) {
          between(below, above, glue, list);
        }
      }
    }
    for (var row : rows) {
      for (int s = 0; s + 1 < row.size(); s++) {
        beside(row.get(s), row.get(s + 1), glue, list);
      }
    }
    return list;
  }

  private static void between(Cell below, Cell above, OptionalDouble glue, List<Bond> list) {
    var a = below.box();
    var b = above.box();
    double left = Math.max(a.y(), b.y());
    double right = Math.min(a.y() + a.width(), b.y() + b.width());
    if (below.index() >= 0 && above.index() >= 0 && right - left > TOUCH * a.width()) {
      bond(below, above, new Point(left, b.z()), new Point(right, b.z()), glue, list);
    }
  }

  private static void beside(Cell left, Cell right, OptionalDouble glue, List<Bond> list) {
    var b = right.box();
    if (left.index() >= 0 && right.index() >= 0) {
      bond(left, right, new Point(b.y(), b.z()), new Point(b.y(), b.z() + b.height()), glue, list);
    }
  }

  private static void bond(
      Cell one, Cell other, Point from, Point to, OptionalDouble glue, List<Bond> list) {
    var where = "between " + one.where() + " and " + other.where();
    list.add(new Bond(where, from, to, one.box().material(), other.box().material(), glue));
  }

  /** The cell of a row that holds y, if it is not void. */
  Optional<Cell> at(int row, double y) {
    return rows.get(row).stream()
        .filter(c -> c.index() >= 0)
        .filter(c -> c.box().y() <= y && y <= c.box().y() + c.box().width())
        .findFirst();
  }
}
