package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A cantilever of rectangles as 20-node bricks of reduced integration (C3D20R), held at x = 0 and
 * pressed from above over its whole length.
 */
final class SolidMesh {
  private static final double POISSON = 0.3;

  private final List<Rectangle> regions;
  private final double length;
  private final double[] ys;
  private final double[] zs;
  private final int alongX;
  private final StringBuilder deck = new StringBuilder();
  private final TreeSet<Integer> used = new TreeSet<>();
  private final Map<BeamMaterial, List<Integer>> elements = new LinkedHashMap<>();
  private final List<Integer> top = new ArrayList<>();
  private final List<Integer> end = new ArrayList<>();

  SolidMesh(Section section, double length, int alongX, int acrossY, int throughZ) {
    regions = section.regions().stream().map(Rectangle.class::cast).toList();
    this.length = length;
    this.alongX = alongX;
    ys =
        lines(regions.stream().map(r -> new double[] {r.y(), r.y() + r.width()}).toList(), acrossY);
    zs =
        lines(
            regions.stream().map(r -> new double[] {r.z(), r.z() + r.height()}).toList(), throughZ);
  }

  /** The edges of all parts, each gap between them cut into pieces. */
  private static double[] lines(List<double[]> spans, int pieces) {
    var edges = new TreeSet<Double>();
    for (var span : spans) {
      edges.add(Math.rint(span[0] * 1e9) / 1e9);
      edges.add(Math.rint(span[1] * 1e9) / 1e9);
    }
    var list = new ArrayList<Double>();
    double before = edges.first();
    for (double edge : edges) {
      for (int i = 1; edge > before && i < pieces; i++) {
        list.add(before + (edge - before) * i / pieces);
      }
      list.add(edge);
      before = edge;
    }
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private int node(int i, int j, int k) {
    return 1 + i + (2 * alongX + 1) * (j + (2 * ys.length - 1) * k);
  }

  /** A node of the top, a share of the way along, in the middle of the width. */
  int topNode(int i) {
    return node(i, ys.length - 1, 2 * zs.length - 2);
  }

  double at(int i) {
    return length * i / (2 * alongX);
  }

  int steps() {
    return 2 * alongX;
  }

  /** Pressed from above, Pa; its movement is printed. */
  String deck(double pressure) {
    bricks();
    deck.append("*STEP\n*STATIC\n*BOUNDARY\nROOT, 1, 3\n*DLOAD\n");
    for (int e : top) {
      deck.append(e).append(String.format(Locale.ROOT, ", P2, %e%n", pressure));
    }
    deck.append("*NODE PRINT, NSET=TOP\nU\n*END STEP\n");
    return deck.toString();
  }

  /** Pushed along its length at its free end, Pa; the factors at which it buckles are printed. */
  String buckling(double pressure) {
    bricks();
    deck.append("*STEP\n*BUCKLE\n2\n*BOUNDARY\nROOT, 1, 3\n*DLOAD\n");
    for (int e : end) {
      deck.append(e).append(String.format(Locale.ROOT, ", P4, %e%n", pressure));
    }
    deck.append("*END STEP\n");
    return deck.toString();
  }

  private void bricks() {
    var bricks = new StringBuilder();
    int number = 0;
    for (int k = 0; k + 1 < zs.length; k++) {
      for (int j = 0; j + 1 < ys.length; j++) {
        var stuff = at((ys[j] + ys[j + 1]) / 2, (zs[k] + zs[k + 1]) / 2);
        for (int i = 0; stuff.isPresent() && i < alongX; i++) {
          number++;
          elements.computeIfAbsent(stuff.get(), s -> new ArrayList<>()).add(number);
          bricks.append(brick(number, 2 * i, 2 * j, 2 * k));
          if (k + 2 == zs.length) {
            top.add(number);
          }
          if (i + 1 == alongX) {
            end.add(number);
          }
        }
      }
    }
    deck.append("*NODE\n");
    for (int id : used) {
      deck.append(place(id));
    }
    deck.append("*ELEMENT, TYPE=C3D20R, ELSET=ALL\n").append(bricks);
    materials();
    sets();
  }

  private Optional<BeamMaterial> at(double y, double z) {
    for (var r : regions) {
      if (y > r.y() && y < r.y() + r.width() && z > r.z() && z < r.z() + r.height()) {
        return Optional.of(r.material());
      }
    }
    return Optional.empty();
  }

  private String brick(int number, int i, int j, int k) {
    int[][] corners = {
      {0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {0, 0, 2}, {2, 0, 2}, {2, 2, 2}, {0, 2, 2}
    };
    int[][] middles = {
      {1, 0, 0}, {2, 1, 0}, {1, 2, 0}, {0, 1, 0}, {1, 0, 2}, {2, 1, 2}, {1, 2, 2}, {0, 1, 2},
      {0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1}
    };
    var line = new StringBuilder().append(number);
    int n = 0;
    for (int[][] group : List.of(corners, middles)) {
      for (int[] c : group) {
        int id = node(i + c[0], j + c[1], k + c[2]);
        used.add(id);
        line.append(++n == 11 ? ",\n" : ",").append(id);
      }
    }
    return line.append('\n').toString();
  }

  private String place(int id) {
    int i = (id - 1) % (2 * alongX + 1);
    int rest = (id - 1) / (2 * alongX + 1);
    int j = rest % (2 * ys.length - 1);
    int k = rest / (2 * ys.length - 1);
    return String.format(
        Locale.ROOT, "%d, %.9e, %.9e, %.9e%n", id, at(i), between(ys, j), between(zs, k));
  }

  private static double between(double[] lines, int half) {
    return half % 2 == 0 ? lines[half / 2] : (lines[half / 2] + lines[half / 2 + 1]) / 2;
  }

  private void materials() {
    int n = 0;
    for (var entry : elements.entrySet()) {
      n++;
      var m = entry.getKey();
      deck.append("*ELSET, ELSET=S").append(n).append('\n');
      entry.getValue().forEach(e -> deck.append(e).append(",\n"));
      deck.append("*MATERIAL, NAME=M").append(n).append("\n*ELASTIC, TYPE=ENGINEERING CONSTANTS\n");
      double across = m.elastic().through().orElse(m.axial());
      double nu12 = POISSON;
      deck.append(
          String.format(
              Locale.ROOT,
              "%e, %e, %e, %e, %e, %e, %e, %e,%n%e, 293.%n",
              m.axial(),
              across,
              across,
              nu12,
              nu12,
              POISSON,
              m.shearModulus(),
              m.shearModulus(),
              across / 2 / (1 + POISSON)));
      deck.append("*SOLID SECTION, ELSET=S")
          .append(n)
          .append(", MATERIAL=M")
          .append(n)
          .append('\n');
    }
  }

  private void sets() {
    deck.append("*NSET, NSET=ROOT\n");
    used.stream()
        .filter(id -> (id - 1) % (2 * alongX + 1) == 0)
        .forEach(id -> deck.append(id).append(",\n"));
    deck.append("*NSET, NSET=TOP\n");
    for (int i = 0; i <= steps(); i++) {
      deck.append(topNode(i)).append(",\n");
    }
  }
}
