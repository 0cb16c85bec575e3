package kitwright.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * 20-node bricks of reduced integration (C3D20R) on a grid of three axes, which may be bent into
 * any form; cells may be of several stuffs or left out.
 */
public final class Bricks {
  private final double[][] axes;
  private final UnaryOperator<double[]> form;
  private final Function<double[], Optional<Stuff>> stuff;
  private final TreeSet<Integer> used = new TreeSet<>();
  private final Map<Integer, int[]> cells = new LinkedHashMap<>();
  private final StringBuilder deck = new StringBuilder();
  private final boolean ring;

  /**
   * What a brick is of.
   *
   * @param name letters
   * @param constants E1, E2, E3, ν12, ν13, ν23, G12, G13, G23 along x, y, z
   */
  public record Stuff(String name, List<Double> constants) {
    public Stuff(String name, double... constants) {
      this(name, Arrays.stream(constants).boxed().toList());
    }

    public static Stuff isotropic(double e, double nu) {
      double g = e / 2 / (1 + nu);
      return new Stuff("ISO", e, e, e, nu, nu, nu, g, g, g);
    }
  }

  /**
   * Of one grid.
   *
   * @param form where a place of the grid lies, m
   * @param stuff of the brick about a place of the grid
   */
  public Bricks(
      double[] x,
      double[] y,
      double[] z,
      UnaryOperator<double[]> form,
      Function<double[], Optional<Stuff>> stuff) {
    this(x, y, z, form, stuff, false);
  }

  private Bricks(
      double[] x,
      double[] y,
      double[] z,
      UnaryOperator<double[]> form,
      Function<double[], Optional<Stuff>> stuff,
      boolean ring) {
    this.ring = ring;
    axes = new double[][] {x, y, z};
    this.form = form;
    this.stuff = stuff;
    build();
  }

  /** Of one stuff, the last of y being the first again: y goes round. */
  public static Bricks ring(
      double[] x, double[] y, double[] z, UnaryOperator<double[]> form, Stuff stuff) {
    return new Bricks(x, y, z, form, at -> Optional.of(stuff), true);
  }

  /** From one place to another in so many equal steps. */
  public static double[] steps(double from, double to, int count) {
    double[] all = new double[count + 1];
    Arrays.setAll(all, i -> from + (to - from) * i / count);
    return all;
  }

  /** Rows of steps, each starting where the one before ends. */
  public static double[] joined(double[]... rows) {
    return Arrays.stream(rows)
        .flatMapToDouble(Arrays::stream)
        .map(at -> Math.rint(at * 1e9) / 1e9)
        .distinct()
        .sorted()
        .toArray();
  }

  private int node(int i, int j, int k) {
    int round = ring ? j % (2 * axes[1].length - 2) : j;
    return 1 + i + (2 * axes[0].length - 1) * (round + (2 * axes[1].length - 1) * k);
  }

  private double[] grid(int node) {
    int wide = 2 * axes[0].length - 1;
    int deep = 2 * axes[1].length - 1;
    int rest = (node - 1) / wide;
    return new double[] {half(0, (node - 1) % wide), half(1, rest % deep), half(2, rest / deep)};
  }

  private double half(int axis, int at) {
    double[] all = axes[axis];
    return at % 2 == 0 ? all[at / 2] : (all[at / 2] + all[at / 2 + 1]) / 2;
  }

  private static final int[][] CORNERS = {
    {0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {0, 0, 2}, {2, 0, 2}, {2, 2, 2}, {0, 2, 2},
    {1, 0, 0}, {2, 1, 0}, {1, 2, 0}, {0, 1, 0}, {1, 0, 2}, {2, 1, 2}, {1, 2, 2}, {0, 1, 2},
    {0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1}
  };

  private void build() {
    StringBuilder bricks = new StringBuilder("*ELEMENT, TYPE=C3D20R, ELSET=ALL\n");
    Map<Stuff, List<Integer>> of = new LinkedHashMap<>();
    int number = 0;
    for (int k = 0; k + 1 < axes[2].length; k++) {
      for (int j = 0; j + 1 < axes[1].length; j++) {
        for (int i = 0; i + 1 < axes[0].length; i++) {
          Optional<Stuff> here =
              stuff.apply(
                  new double[] {half(0, 2 * i + 1), half(1, 2 * j + 1), half(2, 2 * k + 1)});
          if (here.isPresent()) {
            number++;
            cells.put(number, new int[] {i, j, k});
            of.computeIfAbsent(here.get(), any -> new ArrayList<>()).add(number);
            bricks.append(brick(number, 2 * i, 2 * j, 2 * k));
          }
        }
      }
    }
    deck.append("*NODE, NSET=NALL\n");
    for (int id : used) {
      double[] at = form.apply(grid(id));
      deck.append(String.format(Locale.ROOT, "%d, %.9e, %.9e, %.9e%n", id, at[0], at[1], at[2]));
    }
    deck.append(bricks);
    int n = 0;
    for (Map.Entry<Stuff, List<Integer>> one : of.entrySet()) {
      set("ELSET", "S" + ++n, one.getValue());
      List<Double> c = one.getKey().constants();
      deck.append("*MATERIAL, NAME=M").append(n).append("\n*ELASTIC, TYPE=ENGINEERING CONSTANTS\n");
      for (int i = 0; i < c.size(); i++) {
        deck.append(String.format(Locale.ROOT, "%e%s", c.get(i), i == 7 ? ",\n" : ", "));
      }
      deck.append("293.\n*SOLID SECTION, ELSET=S" + n + ", MATERIAL=M" + n + "\n");
    }
  }

  private String brick(int number, int i, int j, int k) {
    StringBuilder line = new StringBuilder().append(number);
    for (int n = 0; n < CORNERS.length; n++) {
      int id = node(i + CORNERS[n][0], j + CORNERS[n][1], k + CORNERS[n][2]);
      used.add(id);
      line.append(n == 10 ? ",\n" : ",").append(id);
    }
    return line.append('\n').toString();
  }

  private void set(String kind, String name, List<Integer> members) {
    deck.append("*" + kind + ", " + kind + "=" + name + "\n");
    members.forEach(one -> deck.append(one).append(",\n"));
  }

  /** Nodes by where they lie in the grid. */
  public List<Integer> nodes(Predicate<double[]> where) {
    return used.stream().filter(id -> where.test(grid(id))).toList();
  }

  /** Names them. */
  public List<Integer> nodes(String name, Predicate<double[]> where) {
    List<Integer> found = nodes(where);
    set("NSET", name, found);
    return found;
  }

  /** Bricks by where their middle lies in the grid. */
  public List<Integer> bricks(String name, Predicate<double[]> where) {
    List<Integer> found =
        cells.entrySet().stream()
            .filter(
                one -> {
                  int[] c = one.getValue();
                  return where.test(
                      new double[] {
                        half(0, 2 * c[0] + 1), half(1, 2 * c[1] + 1), half(2, 2 * c[2] + 1)
                      });
                })
            .map(Map.Entry::getKey)
            .toList();
    set("ELSET", name, found);
    return found;
  }

  /** Where a node lies, m. */
  public double[] place(int node) {
    return form.apply(grid(node));
  }

  /** Adds lines. */
  public Bricks add(String lines) {
    deck.append(lines);
    return this;
  }

  public String deck() {
    return deck.toString();
  }
}
