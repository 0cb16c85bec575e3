package kitwright.assessment.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import kitwright.ledger.Kind;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The values that were leaned on, with what each rests on: stated, worked out by a rule, or
 * lacking. It only gathers.
 */
public final class Inputs {
  private final Sources sources;
  private final boolean demonstration;
  private final BiFunction<Kind, String, String> noSuch;
  private final Map<String, Input> inputs = new LinkedHashMap<>();
  private final Set<String> lacking = new LinkedHashSet<>();
  private final Set<String> notes = new LinkedHashSet<>();
  private final List<Supplier<Working>> cured = new ArrayList<>();

  /**
   * @param demonstration whether the build itself is invented, so that invented values are its own
   */
  public Inputs(Sources sources, boolean demonstration) {
    this(sources, demonstration, (kind, id) -> "there is no " + kind.word() + " “" + id + "”");
  }

  /**
   * @param noSuch why no record of a kind is found under an id
   */
  public Inputs(Sources sources, boolean demonstration, BiFunction<Kind, String, String> noSuch) {
    this.sources = sources;
    this.demonstration = demonstration;
    this.noSuch = noSuch;
  }

  /** Why no record of a kind is found where one is named, as a clause. */
  public String noSuch(Kind kind, Ref ref) {
    return noSuch.apply(kind, ref.id());
  }

  /** Nothing noted as yet. */
  public Inputs afresh() {
    return new Inputs(sources, demonstration, noSuch);
  }

  public void takeOver(Inputs other) {
    other.inputs.forEach(inputs::putIfAbsent);
    lacking.addAll(other.lacking);
    notes.addAll(other.notes);
    cured.addAll(other.cured);
  }

  public List<Input> all() {
    return List.copyOf(inputs.values());
  }

  /** What kept something from being worked out, each a clause. */
  public List<String> lacking() {
    return List.copyOf(lacking);
  }

  /** Assumptions made on the way. */
  public List<String> notes() {
    return List.copyOf(notes);
  }

  /** How each cloth came to be the ply that it is. */
  public List<Working> cured() {
    return cured.stream().map(Supplier::get).toList();
  }

  public void cured(Supplier<Working> ply) {
    cured.add(ply);
  }

  public void note(String assumption) {
    notes.add(assumption);
  }

  public void lacks(String what) {
    lacking.add(what);
  }

  /** A property in SI units, noted as leaned on; empty where the material does not state it. */
  public OptionalDouble value(Material material, MaterialProperty property) {
    Quantity stated = material.properties().get(property);
    if (stated == null) {
      return OptionalDouble.empty();
    }
    Band.of(material.sort(), property)
        .flatMap(band -> band.misses(material, property, stated))
        .ifPresent(this::lacks);
    note(
        material,
        property,
        stated.toString(),
        stated.amount(),
        stated.unit().symbol(),
        trust(material, property),
        source(material));
    return OptionalDouble.of(stated.base());
  }

  /** The same, and noted as lacking where it is not stated. */
  public OptionalDouble needed(Material material, MaterialProperty property) {
    OptionalDouble value = value(material, property);
    if (value.isEmpty()) {
      lacks(
          "material "
              + material.id()
              + " does not state its "
              + property.key()
              + "; write it there, with its source");
    } else if (!(value.getAsDouble() > 0)) {
      lacks("the " + property.key() + " of material " + material.id() + " is zero");
      return OptionalDouble.empty();
    }
    return value;
  }

  /** A property as stated, else by a rule that is published. */
  public double stated(Material material, MaterialProperty property, double derived, String rule) {
    return value(material, property)
        .orElseGet(() -> derived(material, property, derived, Trust.DERIVED, rule));
  }

  /** Notes a value that follows from others, in SI units, and gives it back. */
  public double derived(
      Material material, MaterialProperty property, double value, Trust trust, String rule) {
    boolean stress = property.dimension() == kitwright.value.Dimension.STRESS;
    double number = stress ? value / 1e6 : value;
    String unit = stress ? "MPa" : "";
    String told = (Print.number(number) + " " + unit).strip();
    note(material, property, told, BigDecimal.valueOf(number), unit, trust, rule);
    return value;
  }

  private void note(
      Material material,
      MaterialProperty property,
      String value,
      BigDecimal number,
      String unit,
      Trust trust,
      String source) {
    inputs.putIfAbsent(
        material.id() + ' ' + property.key(),
        new Input(
            material.id(),
            material.sort(),
            property,
            value,
            number,
            unit,
            material.basis(),
            trust,
            source));
  }

  private Trust trust(Material material, MaterialProperty property) {
    if (sources.about(material.id()).isPresent()) {
      return Trust.SOURCED;
    }
    if (material.invented()) {
      return demonstration ? Trust.DEMONSTRATED : Trust.INVENTED;
    }
    if (material.source().filter(Sources::isOne).isEmpty()) {
      return Trust.UNSOURCED;
    }
    List<String> open = material.unconfirmed();
    return open.contains("all") || open.contains(property.key())
        ? Trust.UNCONFIRMED
        : Trust.SOURCED;
  }

  private String source(Material material) {
    return sources.about(material.id()).or(material::source).orElse("no source");
  }
}
