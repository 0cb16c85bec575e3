package kitwright.assessment.material;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Function;
import kitwright.assessment.sheet.Inputs;
import kitwright.assessment.sheet.Sources;
import kitwright.ledger.Assessment;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * The materials of one assessment as mechanics wants them, with the values that were leaned on.
 * What was made once lies on a shelf that branches share, also those of other threads. What a
 * material is across its grain is noted only where it is laid so.
 */
public final class Materials {
  /** Values this little apart are the same, rounded. */
  private static final double SAME = 0.005;

  private final Function<Ref, Optional<Material>> table;
  private final Function<String, Optional<Material>> builtIn;
  private final Twice twice;
  private final Inputs inputs;
  private final Map<String, Optional<Made>> known = new HashMap<>();
  private final ConcurrentMap<String, Optional<Made>> shelf;

  private Materials(
      Function<Ref, Optional<Material>> table,
      Function<String, Optional<Material>> builtIn,
      Twice twice,
      Inputs inputs,
      ConcurrentMap<String, Optional<Made>> shelf) {
    this.table = table;
    this.builtIn = builtIn;
    this.twice = twice;
    this.inputs = inputs;
    this.shelf = shelf;
  }

  /** Of no assessment: what the materials say alone. */
  public static Materials of(Ledger ledger) {
    return of(ledger, Sources.none());
  }

  public static Materials of(Assessment assessment, Ledger ledger) {
    return of(ledger, Sources.of(assessment));
  }

  /** The same assessment with one material in place of the ledger's of its id. */
  public static Materials with(Material other, Assessment assessment, Ledger ledger) {
    return of(
        ledger,
        Sources.of(assessment),
        ref -> ref.id().equals(other.id()) ? Optional.of(other) : ledger.material(ref));
  }

  private static Materials of(Ledger ledger, Sources sources) {
    return of(ledger, sources, ledger::material);
  }

  private static Materials of(
      Ledger ledger, Sources sources, Function<Ref, Optional<Material>> table) {
    return new Materials(
        table,
        ledger::builtInMaterial,
        Twice.of(ledger),
        new Inputs(sources, ledger.build().invented(), ledger::noSuch),
        new ConcurrentHashMap<>());
  }

  /**
   * A material made once.
   *
   * @param stuff empty where a value along is lacking
   * @param along what was noted of it
   * @param plate what was noted of it as a thin plate
   * @param flat what else was noted of it across its grain
   */
  public record Made(Optional<Stuff> stuff, Inputs along, Inputs plate, Inputs flat) {}

  /** The same, with all that was noted already: what follows is noted here only. */
  public Materials branch() {
    Inputs noted = inputs.afresh();
    noted.takeOver(inputs);
    Materials branch = new Materials(table, builtIn, twice, noted, shelf);
    branch.known.putAll(known);
    return branch;
  }

  /** Where a ledger puts values in place of built-in ones, both told. */
  public List<String> overrides(List<Material> used) {
    List<String> told = new ArrayList<>();
    for (Material own : used) {
      builtIn
          .apply(own.id())
          .filter(one -> !one.at().equals(own.at()))
          .flatMap(one -> differences(own, one))
          .ifPresent(told::add);
    }
    return told;
  }

  private static Optional<String> differences(Material own, Material builtIn) {
    List<String> apart = new ArrayList<>();
    builtIn
        .properties()
        .forEach(
            (property, table) -> {
              Quantity stated = own.properties().get(property);
              if (stated != null && Math.abs(stated.base() / table.base() - 1) > SAME) {
                apart.add(property.key() + " " + stated + " (built in: " + table + ")");
              }
            });
    return apart.isEmpty()
        ? Optional.empty()
        : Optional.of(
            own.id()
                + " of this ledger stands in place of the built-in one: "
                + String.join(", ", apart));
  }

  /** What two records of one id leave open. */
  public List<String> twice(Assessment assessment, List<Material> used) {
    return twice.lacking(assessment, used);
  }

  /** The same of a section. */
  public Optional<String> twice(Ref section) {
    return twice.section(section);
  }

  /** The values leaned on, and what is lacking. */
  public Inputs inputs() {
    return inputs;
  }

  public Optional<Material> material(Ref ref) {
    return table.apply(ref);
  }

  /** The stuff of a reference; empty where it is lacking something, which is noted. */
  public Optional<Stuff> of(Ref ref) {
    return made(ref).flatMap(Made::stuff);
  }

  /** The same, to be laid at an angle to its grain or flat: what it is across is leaned on too. */
  public Optional<Stuff> flat(Ref ref) {
    Optional<Made> made = made(ref);
    plate(ref);
    made.ifPresent(one -> inputs.takeOver(one.flat()));
    return made.flatMap(Made::stuff).filter(Stuff::isFlat);
  }

  /** Notes that what a material is as a thin plate is leaned on: its walls may buckle. */
  public void plate(Ref ref) {
    made(ref).ifPresent(one -> inputs.takeOver(one.plate()));
  }

  /** Where its angle asks for it also what it is across. */
  public Optional<Stuff> at(Ref ref, double angle) {
    return of(ref)
        .flatMap(stuff -> Stuff.isAlong(angle + stuff.turned()) ? Optional.of(stuff) : flat(ref));
  }

  private Optional<Made> made(Ref ref) {
    Optional<Made> made = known.get(ref.id());
    if (made == null) {
      made = shelf.get(ref.id());
      if (made == null) {
        made = make(ref);
        shelf.put(ref.id(), made);
      }
      known.put(ref.id(), made);
      made.ifPresent(one -> inputs.takeOver(one.along()));
    }
    return made;
  }

  private Optional<Made> make(Ref ref) {
    Inputs along = inputs.afresh();
    Inputs plate = inputs.afresh();
    Inputs flat = inputs.afresh();
    Optional<Material> material = table.apply(ref);
    if (material.isEmpty()) {
      along.lacks(
          inputs.noSuch(Kind.MATERIALS, ref) + "; “kitwright materials” lists the built-in ones");
      return Optional.of(new Made(Optional.empty(), along, plate, flat));
    }
    Optional<Stuff> stuff;
    try {
      stuff =
          material.get().sort() == Sort.CLOTH
              ? new Curing(table, along, plate, flat, material.get()).stuff()
              : new Solid(table, along, plate, flat, material.get()).stuff();
    } catch (IllegalArgumentException impossible) {
      along.lacks("material " + ref + ": " + impossible.getMessage());
      stuff = Optional.empty();
    }
    return Optional.of(new Made(stuff, along, plate, flat));
  }

  /** Coefficient of variation; nought where none is stated. */
  public static double scatter(Material material) {
    return Optional.ofNullable(material.properties().get(MaterialProperty.SCATTER))
        .map(Quantity::base)
        .orElse(0.0);
  }

  public OptionalDouble value(Material material, MaterialProperty property) {
    return inputs.value(material, property);
  }
}
