package kitwright.mechanics.beam;

import java.util.Arrays;
import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * How a shear force along z spreads over the height: flow q = V·ΣES/EI across each level, shared by
 * the regions at that level in proportion to G·b (one shear strain for all at a level).
 *
 * @see "J. R. Vinson, The Behavior of Sandwich Structures, 1999; S. Timoshenko, Strength of
 *     Materials, Part I, 3rd ed., 1955, section 26"
 */
final class ShearFlow {
  /** Gauss–Legendre, three points: exact for the fifth power, so exact for rectangles. */
  private static final double[] PLACE = {0, 0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15), 1};

  private static final double[] WEIGHT = {0, 5 / 18.0, 8 / 18.0, 5 / 18.0, 0};

  /** The slabs that a section with slanting or round sides is cut into, at least. */
  private static final int FINE = 24;

  /** How far inside a slab its ends are looked at, as a share of its height. */
  private static final double JUST_INSIDE = 1e-10;

  private final Section section;
  private final double neutralAxis;
  private final double bendingStiffness;
  private final double[] levels;
  private final double[] perForce;
  private final double[][] widths;
  private final double[] shared;
  private final double stiffness;

  private ShearFlow(
      Section section, List<Bounds> boxes, double neutralAxis, double bendingStiffness) {
    this.section = section;
    this.neutralAxis = neutralAxis;
    this.bendingStiffness = bendingStiffness;
    double[] edges = edges(section, boxes, neutralAxis);
    levels = looked(edges);
    perForce = new double[levels.length];
    shared = new double[levels.length];
    widths = new double[section.regions().size()][];
    fill(section.regions());
    stiffness = 1 / compliance(edges);
  }

  /**
   * The flow in a section.
   *
   * @param boxes round each of its regions
   */
  static ShearFlow of(
      Section section, List<Bounds> boxes, double neutralAxis, double bendingStiffness) {
    return new ShearFlow(section, boxes, neutralAxis, bendingStiffness);
  }

  private void fill(List<Region> regions) {
    for (int r = 0; r < regions.size(); r++) {
      var cut = new Cut(levels);
      regions.get(r).cut(cut);
      var material = regions.get(r).material();
      for (int i = 0; i < levels.length; i++) {
        double above = cut.first[i] - neutralAxis * cut.area[i];
        perForce[i] += material.axial() * above / bendingStiffness;
        shared[i] += material.shearModulus() * Math.max(0, cut.width[i]);
      }
      widths[r] = cut.width;
    }
  }

  private double compliance(double[] edges) {
    double sum = 0;
    for (int slab = 0; slab + 1 < edges.length; slab++) {
      double height = edges[slab + 1] - edges[slab];
      for (int k = 1; k <= 3; k++) {
        int i = slab * PLACE.length + k;
        Refuse.unless(
            shared[i] > 0, () -> "a section holds together: nothing at " + levels[i] + " m");
        sum += WEIGHT[k] * height * perForce[i] * perForce[i] / shared[i];
      }
    }
    return sum;
  }

  double stiffness() {
    return stiffness;
  }

  /** The greatest shear stress in a region for one newton, Pa. */
  double peak(int region) {
    double most = 0;
    for (int i = 0; i < levels.length; i++) {
      if (widths[region][i] > 0) {
        most = Math.max(most, Math.abs(at(region, i)));
      }
    }
    return most;
  }

  /** The same with its place and what its formula takes. */
  ShearPeak peakOf(int region) {
    int most = 0;
    double stress = -1;
    for (int i = 0; i < levels.length; i++) {
      if (widths[region][i] > 0 && Math.abs(at(region, i)) > stress) {
        most = i;
        stress = Math.abs(at(region, i));
      }
    }
    var of = section.regions().get(region);
    return new ShearPeak(
        of.where(),
        levels[most],
        Math.abs(perForce[most]) * bendingStiffness,
        shared[most] / of.material().shearModulus(),
        Math.abs(at(region, most)));
  }

  private double at(int region, int i) {
    return perForce[i] * section.regions().get(region).material().shearModulus() / shared[i];
  }

  /**
   * Shear stress τ = ΣES/(EI·b) on a level glue line for one newton, Pa; shared with others at its
   * level.
   */
  double bond(Bond bond) {
    double level = bond.from().z();
    double sum = 0;
    for (var other : section.bonds()) {
      if (other.level() && other.from().z() == level) {
        sum += other.shearModulus() * other.length();
      }
    }
    return flowAt(level) * bond.shearModulus() / sum;
  }

  private double flowAt(double level) {
    var cut = new Cut(new double[] {level});
    double sum = 0;
    for (var region : section.regions()) {
      Arrays.fill(cut.area, 0);
      Arrays.fill(cut.first, 0);
      region.cut(cut);
      sum += region.material().axial() * (cut.first[0] - neutralAxis * cut.area[0]);
    }
    return sum / bendingStiffness;
  }

  private static double[] edges(Section section, List<Bounds> boxes, double neutralAxis) {
    var box = boxes.get(0);
    for (var other : boxes) {
      box = box.with(other);
    }
    boolean plain = section.regions().stream().allMatch(Rectangle.class::isInstance);
    int extra = plain ? 0 : FINE;
    double[] all = new double[2 * section.regions().size() + 1 + extra];
    int n = 0;
    for (var one : boxes) {
      all[n++] = one.minZ();
      all[n++] = one.maxZ();
    }
    all[n++] = neutralAxis;
    for (int i = 0; i < extra; i++) {
      all[n++] = box.minZ() + box.height() * (1 - Math.cos(Math.PI * (i + 1) / (extra + 1))) / 2;
    }
    Arrays.sort(all);
    return distinct(all, 1e-9 * box.height());
  }

  private static double[] distinct(double[] sorted, double apart) {
    double[] kept = new double[sorted.length];
    int n = 0;
    for (double z : sorted) {
      if (n == 0 || z - kept[n - 1] > apart) {
        kept[n++] = z;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  private static double[] looked(double[] edges) {
    double[] levels = new double[(edges.length - 1) * PLACE.length];
    int n = 0;
    for (int slab = 0; slab + 1 < edges.length; slab++) {
      double height = edges[slab + 1] - edges[slab];
      for (double place : PLACE) {
        double inside = Math.max(JUST_INSIDE, Math.min(1 - JUST_INSIDE, place));
        levels[n++] = edges[slab] + inside * height;
      }
    }
    return levels;
  }
}
