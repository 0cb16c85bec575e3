package kitwright.assessment.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.mechanics.beam.BeamMaterial.Lay;
import kitwright.mechanics.beam.Capacity;
import kitwright.mechanics.beam.Limit;
import kitwright.mechanics.beam.Missing;

/** What was worked out of one part, and what could not be for want of a value. */
public final class Figures {
  private final Map<Measure, Figure> values = new EnumMap<>(Measure.class);
  private final Map<Measure, List<String>> lacking = new EnumMap<>(Measure.class);

  /** What may be more: its number is reached at least. */
  private final Set<Measure> atLeast = EnumSet.noneOf(Measure.class);

  /** Tells that a number may be more. */
  public Figures atLeast(Measure measure) {
    atLeast.add(measure);
    return this;
  }

  public boolean isAtLeast(Measure measure) {
    return atLeast.contains(measure);
  }

  public Figures put(Measure measure, double value) {
    values.put(measure, Figure.of(value));
    return this;
  }

  public Figures put(Measure measure, Figure figure) {
    values.put(measure, figure);
    return this;
  }

  /** A capacity; one that leans on a value that is missing is not told at all. */
  public Figures put(Measure measure, Capacity capacity) {
    if (capacity.atLeast()) {
      atLeast.add(measure);
    }
    capacity
        .governing()
        .filter(any -> capacity.missing().isEmpty())
        .ifPresent(limit -> values.put(measure, Figure.of(limit.capacity(), words(limit))));
    capacity.missing().forEach(missing -> lacks(measure, words(missing)));
    return this;
  }

  public Figures lacks(Measure measure, String what) {
    lacking.computeIfAbsent(measure, any -> new ArrayList<>()).add(what);
    return this;
  }

  public Optional<Figure> of(Measure measure) {
    return Optional.ofNullable(values.get(measure));
  }

  public List<String> lacking(Measure measure) {
    List<String> lacks = lacking.get(measure);
    return lacks == null ? List.of() : lacks.stream().distinct().toList();
  }

  public Set<Measure> known() {
    Set<Measure> known = EnumSet.noneOf(Measure.class);
    known.addAll(values.keySet());
    known.addAll(lacking.keySet());
    return known;
  }

  public static String words(Limit limit) {
    // A glue line lies between two pieces.
    String of = limit.where().startsWith("between") ? " " : " of ";
    return limit.mode().words() + of + limit.where();
  }

  /** Of a bias lay every strength counts, of one across those across. */
  public static String words(Missing missing) {
    if (missing.property() == Missing.Property.SHEARED_WALL) {
      return missing.material()
          + " ("
          + missing.where()
          + ") does not state its E-across, or its wall is thinner than 1/1500 of its radius: when"
          + " it buckles in shear is not known";
    }
    String across = missing.lay() == Lay.ALONG ? "" : "-across";
    String property =
        switch (missing.property()) {
          case TENSILE_STRENGTH -> "tensile-strength" + across;
          case COMPRESSIVE_STRENGTH -> "compressive-strength" + across;
          case BENDING_STRENGTH ->
              across.isEmpty() ? "bending-strength" : "tensile-strength-across";
          case SHEAR_STRENGTH -> "shear-strength" + across;
          case THROUGH_THICKNESS_MODULUS -> "E-through";
          case ACROSS_MODULUS -> "E-across";
          case SHEARED_WALL -> "";
          case WALL -> "E-across, or its wall is thinner than 1/1500 of its radius";
        };
    boolean strength =
        missing.property() == Missing.Property.TENSILE_STRENGTH
            || missing.property() == Missing.Property.COMPRESSIVE_STRENGTH
            || missing.property() == Missing.Property.BENDING_STRENGTH;
    String all =
        missing.lay() == Lay.BIAS && strength
            ? "strengths, which all count where it lies at an angle: tensile-strength,"
                + " compressive-strength, both of them -across, shear-strength"
            : property;
    return missing.material() + " (" + missing.where() + ") does not state its " + all;
  }
}
