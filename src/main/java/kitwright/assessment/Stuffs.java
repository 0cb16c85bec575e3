package kitwright.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.Function;
import java.util.function.Supplier;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.ledger.MaterialProperty;
import kitwright.mechanics.timber.Plywood;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Turns materials of the ledger into what mechanics wants, noting each value that was leaned on.
 * Local to one assessment: it only gathers. What was made once lies on a shelf that branches share,
 * also those of other threads.
 */
final class Stuffs {
  /** EN 384 and EN 338: mean shear modulus of timber (from memory, not verified). */
  private static final double TIMBER_G = 16;

  private static final double TIMBER_ACROSS = 20;
  private static final double POISSON = 0.3;

  private final Function<Ref, Optional<Material>> table;
  private final Factors factors;
  private final List<String> sources;
  private final Map<String, Optional<Stuff>> known = new HashMap<>();
  private final Map<String, Input> inputs = new LinkedHashMap<>();
  private final Set<String> lacking = new LinkedHashSet<>();
  private final Set<String> notes = new LinkedHashSet<>();
  private final List<Supplier<Working>> cured = new ArrayList<>();
  private final ConcurrentMap<String, Made> shelf;

  Stuffs(Ledger ledger, Factors factors, List<String> sources) {
    this(ledger::material, factors, sources, new ConcurrentHashMap<>());
  }

  private Stuffs(
      Function<Ref, Optional<Material>> table,
      Factors factors,
      List<String> sources,
      ConcurrentMap<String, Made> shelf) {
    this.table = table;
    this.factors = factors;
    this.sources = sources;
    this.shelf = shelf;
  }

  static Stuffs of(Assessment assessment, Ledger ledger) {
    return new Stuffs(ledger, Factors.of(assessment), assessment.sources());
  }

  /** A material made once, and what was noted on the way. */
  private record Made(Optional<Stuff> stuff, Stuffs noted) {}

  /** Nothing noted as yet, but what was made before is taken from the shelf. */
  Stuffs afresh() {
    return new Stuffs(table, factors, sources, shelf);
  }

  /** The same, with all that was noted already: what follows is noted here only. */
  Stuffs branch() {
    Stuffs branch = afresh();
    branch.known.putAll(known);
    branch.takeOver(this);
    return branch;
  }

  private void takeOver(Stuffs other) {
    other.inputs.forEach(inputs::putIfAbsent);
    lacking.addAll(other.lacking);
    notes.addAll(other.notes);
    cured.addAll(other.cured);
  }

  List<Input> inputs() {
    return List.copyOf(inputs.values());
  }

  /** What kept a material from being made, each a clause. */
  List<String> lacking() {
    return List.copyOf(lacking);
  }

  /** Assumptions made on the way. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** How each cloth came to be the ply that it is. */
  List<Working> cured() {
    return cured.stream().map(Supplier::get).toList();
  }

  void cured(Supplier<Working> ply) {
    cured.add(ply);
  }

  Optional<Material> material(Ref ref) {
    return table.apply(ref);
  }

  /** The stuff of a reference; empty where it is lacking something, which is noted. */
  Optional<Stuff> of(Ref ref) {
    return known.computeIfAbsent(ref.id(), id -> taken(ref));
  }

  private Optional<Stuff> taken(Ref ref) {
    Made made = shelf.computeIfAbsent(ref.id(), id -> made(ref));
    takeOver(made.noted());
    return made.stuff();
  }

  private Made made(Ref ref) {
    Stuffs noting = afresh();
    return new Made(noting.make(ref), noting);
  }

  private Optional<Stuff> make(Ref ref) {
    Optional<Material> material = table.apply(ref);
    if (material.isEmpty()) {
      lacks("there is no material “" + ref + "”; “kitwright materials” lists the built-in ones");
      return Optional.empty();
    }
    try {
      return material.get().sort() == Sort.CLOTH
          ? new Curing(this, material.get()).stuff()
          : plain(material.get());
    } catch (IllegalArgumentException impossible) {
      lacks("material " + ref + ": " + impossible.getMessage());
      return Optional.empty();
    }
  }

  private Optional<Stuff> plain(Material material) {
    OptionalDouble density = needed(material, MaterialProperty.DENSITY);
    OptionalDouble given = needed(material, MaterialProperty.E);
    if (density.isEmpty() || given.isEmpty()) {
      return Optional.empty();
    }
    double e = given.getAsDouble() * factors.stiffness(material.sort());
    OptionalDouble shear = shear(material, e);
    if (shear.isEmpty()) {
      return Optional.empty();
    }
    double poisson = value(material, MaterialProperty.POISSON).orElse(POISSON);
    Stuff.Elastic elastic =
        new Stuff.Elastic(
            e, across(material, e), shear.getAsDouble(), poisson, through(material, e));
    Stuff stuff = stuff(material, density.getAsDouble(), elastic, limits(material));
    return Optional.of(material.sort() == Sort.PLYWOOD ? asVeneers(material, stuff) : stuff);
  }

  private Stuff stuff(Material material, double density, Stuff.Elastic elastic, Stuff.Limits lim) {
    return new Stuff(
        material.id(),
        material.sort(),
        density,
        elastic,
        lim.times(factors.strength(material.sort())),
        scatter(material),
        OptionalDouble.empty(),
        0);
  }

  double scatter(Material material) {
    return Optional.ofNullable(material.properties().get(MaterialProperty.SCATTER))
        .map(Quantity::base)
        .orElse(0.0);
  }

  double strengthFactor(Sort sort) {
    return factors.strength(sort);
  }

  private OptionalDouble shear(Material material, double e) {
    OptionalDouble stated = value(material, MaterialProperty.G);
    if (stated.isPresent()) {
      return stated;
    }
    return switch (material.sort()) {
      case TIMBER, PLYWOOD -> OptionalDouble.of(derivedShear(material, e));
      case CORE, CLOTH, FIBRE -> needed(material, MaterialProperty.G);
      case METAL, RESIN, LAMINATE, BOLT, GLUE, OTHER -> {
        double nu = value(material, MaterialProperty.POISSON).orElse(POISSON);
        note(material.id() + ": G = E/(2(1 + ν)) with ν = " + Print.number(nu));
        yield OptionalDouble.of(e / 2 / (1 + nu));
      }
    };
  }

  private double derivedShear(Material material, double e) {
    note(material.id() + ": G = E/16, the ratio of EN 338 (from memory, not verified)");
    return e / TIMBER_G;
  }

  private double across(Material material, double e) {
    OptionalDouble stated = value(material, MaterialProperty.E_ACROSS);
    if (stated.isPresent()) {
      return stated.getAsDouble() * factors.stiffness(material.sort());
    }
    return material.sort() == Sort.TIMBER || material.sort() == Sort.PLYWOOD
        ? e / TIMBER_ACROSS
        : e;
  }

  private OptionalDouble through(Material material, double e) {
    OptionalDouble stated = value(material, MaterialProperty.E_THROUGH);
    return stated.isPresent() || material.sort() != Sort.CORE ? stated : OptionalDouble.of(e);
  }

  private Stuff.Limits limits(Material material) {
    OptionalDouble yield = value(material, MaterialProperty.YIELD_STRENGTH);
    OptionalDouble pull = value(material, MaterialProperty.TENSILE_STRENGTH);
    OptionalDouble push = value(material, MaterialProperty.COMPRESSIVE_STRENGTH);
    OptionalDouble shear = value(material, MaterialProperty.SHEAR_STRENGTH);
    if (material.sort() == Sort.METAL && yield.isPresent()) {
      pull = yield;
      push = yield;
      if (shear.isEmpty()) {
        note(material.id() + ": shear strength = yield/√3 (von Mises)");
        shear = OptionalDouble.of(yield.getAsDouble() / Math.sqrt(3));
      }
    }
    OptionalDouble pullAcross = value(material, MaterialProperty.TENSILE_STRENGTH_ACROSS);
    OptionalDouble pushAcross = value(material, MaterialProperty.COMPRESSIVE_STRENGTH_ACROSS);
    boolean directed = material.sort() == Sort.TIMBER || material.sort() == Sort.PLYWOOD;
    return new Stuff.Limits(
        pull,
        push,
        value(material, MaterialProperty.BENDING_STRENGTH),
        shear,
        pullAcross.isEmpty() && !directed ? pull : pullAcross,
        pushAcross.isEmpty() && !directed ? push : pushAcross);
  }

  /** Strengths of plywood across its face grain, where none is stated, go with its moduli. */
  private Stuff asVeneers(Material material, Stuff stuff) {
    Stuff.Limits at = stuff.limits();
    if (at.tensionAcross().isPresent() && at.compressionAcross().isPresent()) {
      return stuff;
    }
    double share = Math.min(1, stuff.elastic().across() / stuff.elastic().along());
    note(
        material.id()
            + ": strengths across the face grain in proportion to the moduli, "
            + Print.number(share)
            + " of those along");
    Stuff.Limits less = at.times(share);
    OptionalDouble pull = less.tension().isPresent() ? less.tension() : less.bending();
    Stuff.Limits both =
        new Stuff.Limits(
            at.tension(),
            at.compression(),
            at.bending(),
            at.shear(),
            at.tensionAcross().isPresent() ? at.tensionAcross() : pull,
            at.compressionAcross().isPresent() ? at.compressionAcross() : less.compression());
    return new Stuff(
        stuff.id(),
        stuff.sort(),
        stuff.density(),
        stuff.elastic(),
        both,
        stuff.scatter(),
        stuff.ply(),
        stuff.turned());
  }

  /**
   * Plywood of which the wood's values and the veneer are stated, but none of the board's: bending
   * moduli from its build.
   */
  Stuff boarded(Material material, Stuff wood, double thickness) {
    OptionalDouble veneer = value(material, MaterialProperty.VENEER);
    if (veneer.isEmpty() || material.properties().containsKey(MaterialProperty.E_ACROSS)) {
      return wood;
    }
    int count = (int) Math.round(thickness / veneer.getAsDouble());
    if (count % 2 == 0 || count < 1) {
      lacks(material.id() + " has an even number of veneers in " + Print.number(thickness) + " m");
      return wood;
    }
    double along = wood.elastic().along();
    Plywood board = Plywood.equal(count, thickness, along, along / TIMBER_ACROSS);
    note(
        material.id()
            + ": bending moduli from "
            + count
            + " equal veneers, E across the grain E/20");
    Stuff.Elastic elastic =
        new Stuff.Elastic(
            board.bendingModulus(Plywood.Grain.WITH_FACE),
            board.bendingModulus(Plywood.Grain.SQUARE),
            wood.elastic().shear(),
            wood.elastic().poisson(),
            wood.elastic().through());
    OptionalDouble wooden = wood.limits().bending();
    OptionalDouble bending =
        wooden.isEmpty()
            ? wooden
            : OptionalDouble.of(
                board.bendingStrength(Plywood.Grain.WITH_FACE, wooden.getAsDouble()));
    Stuff.Limits at = wood.limits();
    Stuff.Limits limits =
        new Stuff.Limits(
            at.tension(),
            at.compression(),
            bending,
            at.shear(),
            at.tensionAcross(),
            at.compressionAcross());
    return new Stuff(
        wood.id(),
        wood.sort(),
        wood.density(),
        elastic,
        limits,
        wood.scatter(),
        wood.ply(),
        wood.turned());
  }

  /** A property in SI units, noted as leaned on; empty where the material does not state it. */
  OptionalDouble value(Material material, MaterialProperty property) {
    Quantity stated = material.properties().get(property);
    if (stated == null) {
      return OptionalDouble.empty();
    }
    note(material, property, stated.toString(), trust(material, property), source(material));
    return OptionalDouble.of(stated.base());
  }

  /** The same, and noted as lacking where it is not stated. */
  OptionalDouble needed(Material material, MaterialProperty property) {
    OptionalDouble value = value(material, property);
    if (value.isEmpty()) {
      lacks(
          "material "
              + material.id()
              + " does not state its "
              + property.key()
              + "; write it there, with its source");
    } else if (!(value.getAsDouble() > 0)) {
      lacks("the " + property.key() + " of material " + material.id() + " is nought");
      return OptionalDouble.empty();
    }
    return value;
  }

  void note(
      Material material, MaterialProperty property, String value, Trust trust, String source) {
    inputs.putIfAbsent(
        material.id() + ' ' + property.key(),
        new Input(
            material.id(), material.sort(), property, value, material.basis(), trust, source));
  }

  void note(String assumption) {
    notes.add(assumption);
  }

  void lacks(String what) {
    lacking.add(what);
  }

  /** An assessment may itself say where the values of a material come from, by naming it. */
  private Optional<String> named(Material material) {
    return sources.stream().filter(source -> source.contains(material.id())).findFirst();
  }

  private Trust trust(Material material, MaterialProperty property) {
    if (named(material).isPresent()) {
      return Trust.SOURCED;
    }
    if (material.source().filter(source -> !source.isBlank()).isEmpty()) {
      return Trust.UNSOURCED;
    }
    List<String> open = material.unconfirmed();
    return open.contains("all") || open.contains(property.key())
        ? Trust.UNCONFIRMED
        : Trust.SOURCED;
  }

  private String source(Material material) {
    return named(material).or(material::source).orElse("no source");
  }
}
