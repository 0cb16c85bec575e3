package kitwright.mechanics.timber;

import java.util.List;
import kitwright.mechanics.Refuse;

/**
 * A board of veneers, bending worked out from its build: ΣE·I of veneers along and across.
 *
 * @param veneers from one face to the other
 * @param along Young's modulus along the grain, Pa
 * @param across Young's modulus across the grain, Pa; about a twentieth to a thirtieth of along
 * @see "Wood Handbook, 2010, chapter 12 (layered beam); common practice for marine plywood"
 */
public record Plywood(List<Veneer> veneers, double along, double across) {
  /** Which way the grain of a veneer runs. */
  public enum Grain {
    /** With the face. */
    WITH_FACE,
    /** Square to the face. */
    SQUARE
  }

  /** One veneer, its thickness in m. */
  public record Veneer(double thickness, Grain grain) {
    public Veneer {
      Refuse.unlessPositive("veneer thickness", thickness);
    }
  }

  public Plywood {
    veneers = List.copyOf(veneers);
    Refuse.unless(!veneers.isEmpty(), "plywood has a veneer");
    Refuse.unlessPositive("modulus along", along);
    Refuse.unlessPositive("modulus across", across);
  }

  /** Veneers of one thickness, faces with the grain and every second one square to it. */
  public static Plywood equal(int count, double thickness, double along, double across) {
    Refuse.unless(count >= 1 && count % 2 == 1, "plywood has an odd number of veneers");
    var list = new java.util.ArrayList<Veneer>();
    for (int i = 0; i < count; i++) {
      list.add(new Veneer(thickness / count, i % 2 == 0 ? Grain.WITH_FACE : Grain.SQUARE));
    }
    return new Plywood(list, along, across);
  }

  /** m. */
  public double thickness() {
    return veneers.stream().mapToDouble(Veneer::thickness).sum();
  }

  /** Modulus in bending, Pa, for a span that runs with or square to the face grain. */
  public double bendingModulus(Grain span) {
    return 12 * stiffness(span) / Math.pow(thickness(), 3);
  }

  /** Bending stiffness per width, N·m. */
  public double stiffness(Grain span) {
    double neutral = neutral(span);
    double low = -neutral;
    double sum = 0;
    for (var veneer : veneers) {
      double high = low + veneer.thickness();
      sum += modulus(veneer, span) * (high * high * high - low * low * low) / 3;
      low = high;
    }
    return sum;
  }

  /**
   * Bending strength as a mean over the whole thickness, Pa: the outermost veneer whose grain runs
   * with the span reaches the wood's strength; what lies outside it may crack.
   *
   * @param strength of the wood along the grain, Pa
   */
  public double bendingStrength(Grain span, double strength) {
    Refuse.unlessPositive("strength", strength);
    double neutral = neutral(span);
    double low = -neutral;
    double reach = 0;
    for (var veneer : veneers) {
      double high = low + veneer.thickness();
      if (veneer.grain() == span) {
        reach = Math.max(reach, Math.max(Math.abs(low), Math.abs(high)));
      }
      low = high;
    }
    Refuse.unless(reach > 0, "no veneer runs with the span");
    double moment = strength * stiffness(span) / (along * reach);
    return 6 * moment / (thickness() * thickness());
  }

  private double neutral(Grain span) {
    double low = 0;
    double stretch = 0;
    double first = 0;
    for (var veneer : veneers) {
      double et = modulus(veneer, span) * veneer.thickness();
      stretch += et;
      first += et * (low + veneer.thickness() / 2);
      low += veneer.thickness();
    }
    return first / stretch;
  }

  private double modulus(Veneer veneer, Grain span) {
    return veneer.grain() == span ? along : across;
  }
}
