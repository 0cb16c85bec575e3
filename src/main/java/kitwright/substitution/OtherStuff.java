package kitwright.substitution;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import kitwright.ledger.Assessment;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.Take;
import kitwright.value.Dimension;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;

/**
 * Whether an assessment works out what a substitution takes and replaces: a pass of an oak board 25
 * mm thick says nothing of the pine board of 18 mm that is built in.
 */
final class OtherStuff {
  /** Half a millimetre: sheets are sold by a nominal thickness. */
  private static final double NOMINAL = 0.5e-3;

  private final Substitution substitution;
  private final Ledger ledger;
  private final List<Fault> faults = new ArrayList<>();

  private OtherStuff(Substitution substitution, Ledger ledger) {
    this.substitution = substitution;
    this.ledger = ledger;
  }

  /** One thing that is not as assessed, a clause. */
  record Fault(Place at, String what) {}

  /** What is taken or replaced. */
  private record Thing(String named, Place at, Material material, Optional<Double> thickness) {}

  /** Sorts of stuff that may stand for one another in a part. */
  private enum Family {
    WOOD,
    CLOTH,
    LAMINATE,
    CORE,
    METAL,
    BOLT
  }

  /** All of them; none where it was worked out elsewhere. */
  static List<Fault> of(Substitution substitution, Ledger ledger) {
    Optional<Assessment> assessment = substitution.assessment().flatMap(ledger::assessment);
    if (assessment.isEmpty() || assessment.get().method() == Assessment.Method.EXTERNAL) {
      return List.of();
    }
    OtherStuff stuff = new OtherStuff(substitution, ledger);
    assessment.get().built().flatMap(ledger::section).ifPresent(stuff::taken);
    assessment.get().designed().flatMap(ledger::section).ifPresent(stuff::replaced);
    if (assessment.get().method() == Assessment.Method.BOLT) {
      stuff.fewer(assessment.get());
    }
    return stuff.faults;
  }

  private void taken(Section built) {
    List<Thing> things = new ArrayList<>();
    substitution.use().forEach(take -> thing(take).ifPresent(things::add));
    for (Family family : Family.values()) {
      List<Thing> some = things.stream().filter(one -> isOf(family, one.material())).toList();
      Set<String> known = materials(built, family);
      if (!known.isEmpty() && some.stream().noneMatch(one -> known.contains(one.material().id()))) {
        some.forEach(one -> faults.add(other("it takes ", one, "as built", built, known)));
      }
    }
    unsaid(things, built);
    for (Thing thing : things) {
      Pieces of = Pieces.of(built, thing.material().id());
      thing
          .thickness()
          .filter(thick -> of.thinnest() > thick + NOMINAL)
          .ifPresent(
              thick ->
                  faults.add(
                      new Fault(
                          thing.at(),
                          "it takes "
                              + thing.named()
                              + ", "
                              + mm(thick)
                              + " thick, and the thinnest "
                              + thing.material().id()
                              + " of the section as built, "
                              + built.id()
                              + ", is "
                              + mm(of.thinnest()))));
    }
  }

  /** Where nothing that is taken is known to be as assessed, whatever else goes with it. */
  private void unsaid(List<Thing> things, Section built) {
    Set<String> known = new TreeSet<>();
    for (Family family : Family.values()) {
      known.addAll(materials(built, family));
    }
    if (known.isEmpty() || things.stream().anyMatch(one -> known.contains(one.material().id()))) {
      return;
    }
    String is =
        ", and the section as built, " + built.id() + ", is of " + String.join(" and ", known);
    if (substitution.use().isEmpty()) {
      faults.add(new Fault(substitution.at().record(), "it does not say what it takes (use)" + is));
    }
    if (faults.isEmpty()) {
      things.forEach(one -> faults.add(other("it takes ", one, "as built", built, known)));
    }
    substitution.use().stream()
        .filter(take -> thing(take).isEmpty())
        .forEach(
            take ->
                faults.add(
                    new Fault(
                        substitution.at().of("use"),
                        "it takes "
                            + named(take)
                            + ", which does not say of which material it is"
                            + is)));
  }

  private String named(Take take) {
    return take.stock()
        .map(ref -> ledger.stock(ref).map(Stock::named).orElse("stock “" + ref + "”"))
        .or(
            () ->
                take.item()
                    .map(
                        ref ->
                            ledger.kitItem(ref).map(KitItem::named).orElse("item “" + ref + "”")))
        .or(
            () ->
                take.spend()
                    .map(ref -> ledger.spend(ref).map(Spend::named).orElse("spend “" + ref + "”")))
        .orElse("something");
  }

  private void replaced(Section designed) {
    Optional<Thing> thing =
        substitution
            .insteadOf()
            .item()
            .flatMap(ref -> item(ref, substitution.at().of("instead-of")));
    if (thing.isEmpty()) {
      return;
    }
    for (Family family : Family.values()) {
      Set<String> known = materials(designed, family);
      boolean isOne = isOf(family, thing.get().material());
      if (isOne && !known.isEmpty() && !known.contains(thing.get().material().id())) {
        faults.add(other("it replaces ", thing.get(), "as drawn", designed, known));
      }
    }
    Pieces of = Pieces.of(designed, thing.get().material().id());
    thing
        .get()
        .thickness()
        .filter(any -> isSheet(thing.get().material()))
        .filter(thick -> of.thickest() < thick - NOMINAL)
        .ifPresent(
            thick ->
                faults.add(
                    new Fault(
                        thing.get().at(),
                        "it replaces "
                            + thing.get().named()
                            + ", "
                            + mm(thick)
                            + " thick, and the thickest "
                            + thing.get().material().id()
                            + " of the section as drawn, "
                            + designed.id()
                            + ", is "
                            + mm(of.thickest()))));
  }

  /** Fewer fastenings for those that are replaced than the sections count of each. */
  private void fewer(Assessment assessment) {
    Optional<Section> drawn = assessment.designed().flatMap(ledger::section);
    Optional<Section> made = assessment.built().flatMap(ledger::section);
    Quantity replaced = substitution.insteadOf().qty();
    if (drawn.isEmpty() || made.isEmpty() || !isCount(replaced) || replaced.isNone()) {
      return;
    }
    double taken = 0;
    for (Take take : substitution.use()) {
      boolean isIt =
          thing(take)
              .filter(one -> made.get().material().filter(of -> isOfIt(one, of)).isPresent())
              .isPresent();
      taken += isIt && isCount(take.qty()) ? take.qty().base() : 0;
    }
    double asked = replaced.base() * count(made.get()) / count(drawn.get());
    if (taken > 0 && taken < asked * (1 - 1e-9)) {
      faults.add(
          new Fault(
              substitution.at().of("use"),
              "it takes "
                  + number(taken)
                  + " for "
                  + number(replaced.base())
                  + ", and its sections count "
                  + number(count(made.get()))
                  + " for "
                  + number(count(drawn.get()))));
    }
  }

  private static boolean isOfIt(Thing thing, Ref material) {
    return thing.material().id().equals(material.id());
  }

  private static boolean isCount(Quantity qty) {
    return qty.unit().dimension() == Dimension.COUNT;
  }

  private static double count(Section section) {
    return section
        .dimension("count")
        .filter(many -> !many.isNone())
        .map(Quantity::base)
        .orElse(1.0);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static Fault other(
      String how, Thing thing, String which, Section section, Set<String> known) {
    return new Fault(
        thing.at(),
        how
            + thing.named()
            + ", which is of "
            + thing.material().id()
            + ", and the section "
            + which
            + ", "
            + section.id()
            + ", is of "
            + String.join(" and ", known));
  }

  private static String mm(double metres) {
    return number(Math.round(metres * 1e4) / 10.0) + " mm";
  }

  private Optional<Thing> thing(Take take) {
    if (take.stock().isPresent()) {
      Optional<Stock> stock = take.stock().flatMap(ledger::stock);
      return stock.flatMap(
          some -> thing(some.named(), take.at().of("stock"), some.material(), some.size()));
    }
    if (take.item().isPresent()) {
      return item(take.item().get(), take.at().of("item"));
    }
    Optional<Spend> spend = take.spend().flatMap(ledger::spend);
    return spend.flatMap(
        some -> thing(some.named(), take.at().of("spend"), some.material(), Optional.empty()));
  }

  private Optional<Thing> item(Ref ref, Place at) {
    Optional<KitItem> item = ledger.kitItem(ref);
    return item.flatMap(some -> thing(some.named(), at, some.material(), some.size()));
  }

  private Optional<Thing> thing(
      String named, Place at, Optional<Ref> material, Optional<Size> size) {
    return material
        .flatMap(ledger::material)
        .map(
            some ->
                new Thing(
                    named,
                    at,
                    some,
                    size.flatMap(Size::thickness).map(mm -> mm.doubleValue() / 1000)));
  }

  private static boolean isOf(Family family, Material material) {
    return switch (material.sort()) {
      case TIMBER, PLYWOOD -> family == Family.WOOD;
      case CLOTH -> family == Family.CLOTH;
      case LAMINATE -> family == Family.LAMINATE;
      case CORE -> family == Family.CORE;
      case METAL -> family == Family.METAL;
      case BOLT -> family == Family.BOLT;
      case FIBRE, RESIN, GLUE, OTHER -> false;
    };
  }

  private static boolean isSheet(Material material) {
    return material.sort() == Material.Sort.PLYWOOD || material.sort() == Material.Sort.CORE;
  }

  private Set<String> materials(Section section, Family family) {
    Set<String> all = new TreeSet<>();
    Pieces.materials(section)
        .flatMap(ref -> ledger.material(ref).stream())
        .filter(one -> isOf(family, one))
        .forEach(one -> all.add(one.id()));
    return all;
  }
}
