package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.mechanics.beam.BeamMaterial.Lay;

/**
 * A section whose materials scatter, prepared so that a sample costs a few multiplications: the
 * moments of each material are summed once. The shape stays, the moduli and strengths change. How
 * shear spreads over the height is kept as at the mean values, since it hardly depends on them.
 */
public final class Resampled {
  private final List<String> materials;
  private final double[] area;
  private final double[] first;
  private final double[] second;
  private final Edge[] edges;
  private final Edge[] sheared;
  private final boolean solid;

  /** A place that may fail: its material, its height or its shear per newton, and its limit. */
  private record Edge(int material, double modulus, double at, double pull, double push) {}

  private Resampled(Section section) {
    Map<String, Integer> index = new LinkedHashMap<>();
    section.regions().forEach(region -> index.putIfAbsent(region.material().name(), index.size()));
    materials = List.copyOf(index.keySet());
    area = new double[materials.size()];
    first = new double[materials.size()];
    second = new double[materials.size()];
    solid = section.solidTimber();
    List<Edge> list = new ArrayList<>();
    for (Region region : section.regions()) {
      int m = index.getOrDefault(region.material().name(), 0);
      Moments moments = region.moments();
      area[m] += moments.area() * region.material().axial();
      first[m] += moments.z() * region.material().axial();
      second[m] += moments.zz() * region.material().axial();
      if (region.material().lay() != Lay.CROSS_VENEER) {
        list.add(edge(region, m, region.bounds().minZ()));
        list.add(edge(region, m, region.bounds().maxZ()));
      }
    }
    for (Skin skin : section.skins()) {
      for (int ply : skin.plies()) {
        Region region = section.regions().get(ply);
        int m = index.getOrDefault(region.material().name(), 0);
        double limit = skin.buckling().orElse(Double.POSITIVE_INFINITY);
        double scaled = limit * region.material().axial() / skin.modulus();
        double e = region.material().axial();
        list.add(new Edge(m, e, region.bounds().minZ(), Double.POSITIVE_INFINITY, scaled));
        list.add(new Edge(m, e, region.bounds().maxZ(), Double.POSITIVE_INFINITY, scaled));
      }
    }
    edges = list.toArray(new Edge[0]);
    sheared = shears(section, index);
  }

  private Edge edge(Region region, int material, double z) {
    BeamMaterial stuff = region.material();
    double none = Double.POSITIVE_INFINITY;
    if (solid) {
      double bending = stuff.strength().bending().orElse(none);
      return new Edge(material, stuff.axial(), z, bending, bending);
    }
    return new Edge(
        material,
        stuff.axial(),
        z,
        stuff.tensionLimit().orElse(none),
        stuff.strength().compression().orElse(none));
  }

  private static Edge[] shears(Section section, Map<String, Integer> index) {
    List<Edge> list = new ArrayList<>();
    Map<String, Integer> byWhere = new LinkedHashMap<>();
    section
        .regions()
        .forEach(
            region ->
                byWhere.putIfAbsent(
                    region.where(), index.getOrDefault(region.material().name(), 0)));
    for (Limit limit : Bending.of(section).shear().limits()) {
      int m = byWhere.getOrDefault(limit.where(), 0);
      list.add(new Edge(m, 0, limit.perUnit(), limit.allowable(), limit.allowable()));
    }
    return list.toArray(new Edge[0]);
  }

  public static Resampled of(Section section) {
    return new Resampled(section);
  }

  /** The materials by name, in the order in which shares count them. */
  public List<String> materials() {
    return materials;
  }

  private double neutralAxis(double[] moduli, int from) {
    double a = 0;
    double z = 0;
    for (int m = 0; m < area.length; m++) {
      a += moduli[from + m] * area[m];
      z += moduli[from + m] * first[m];
    }
    return z / a;
  }

  private double stiffness(double[] moduli, int from, double axis) {
    double sum = 0;
    for (int m = 0; m < area.length; m++) {
      sum += moduli[from + m] * (second[m] - 2 * axis * first[m] + axis * axis * area[m]);
    }
    return sum;
  }

  /**
   * EA in N.
   *
   * @param moduli share of each material's modulus, from the index on
   */
  public double axial(double[] moduli, int from) {
    double sum = 0;
    for (int m = 0; m < area.length; m++) {
      sum += moduli[from + m] * area[m];
    }
    return sum;
  }

  /** The smaller of pull and push at first failure, N; shares as for {@link #moment}. */
  public double force(double[] shares, int from) {
    double ea = axial(shares, from);
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      double strain = shares[from + edge.material()] * edge.modulus() / ea;
      double limit =
          Math.min(edge.pull(), edge.push()) * shares[from + area.length + edge.material()];
      least = Math.min(least, limit / strain);
    }
    return least;
  }

  /**
   * EI in N·m².
   *
   * @param moduli share of each material's modulus, from the index on
   */
  public double stiffness(double[] moduli, int from) {
    return stiffness(moduli, from, neutralAxis(moduli, from));
  }

  /**
   * The smaller of both ways to bend, N·m; infinite where no strength is known.
   *
   * @param shares each material's share of its mean modulus, then each one's share of its mean
   *     strength, from the index on
   */
  public double moment(double[] shares, int from) {
    double axis = neutralAxis(shares, from);
    double ei = stiffness(shares, from, axis);
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      double slope = shares[from + edge.material()] * edge.modulus() / ei;
      double perUnit = Math.abs(slope * (edge.at() - axis));
      if (perUnit > 0) {
        double limit =
            Math.min(edge.pull(), edge.push()) * shares[from + area.length + edge.material()];
        least = Math.min(least, limit / perUnit);
      }
    }
    return least;
  }

  /** The shear force at first failure, N; shares as for {@link #moment}. */
  public double shear(double[] shares, int from) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : sheared) {
      double limit = edge.pull() * shares[from + area.length + edge.material()];
      least = Math.min(least, limit / edge.at());
    }
    return least;
  }
}
