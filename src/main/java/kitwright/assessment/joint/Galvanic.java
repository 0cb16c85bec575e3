package kitwright.assessment.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Assessment;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.mechanics.fastener.Metal;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * Cautions about metals that corrode each other in sea water: within the section as built, between
 * it and what the assessment says it touches, and where it is not the metal drawn. They say nothing
 * about strength, and neither pass nor fail.
 */
public final class Galvanic {
  private final Function<Ref, Optional<Material>> table;

  private Galvanic(Function<Ref, Optional<Material>> table) {
    this.table = table;
  }

  /** The cautions of one assessment, then where their numbers come from; often none. */
  public static List<String> cautions(
      Assessment assessment,
      Function<Ref, Optional<Section>> sections,
      Function<Ref, Optional<Material>> table) {
    Galvanic galvanic = new Galvanic(table);
    List<Found> drawn = galvanic.of(assessment.designed().flatMap(sections));
    List<Found> made = galvanic.of(assessment.built().flatMap(sections));
    List<Found> touched = galvanic.found(assessment.against().stream());
    List<String> compared = new ArrayList<>();
    if (!drawn.isEmpty()) {
      made.stream()
          .filter(built -> drawn.stream().noneMatch(one -> one.metal() == built.metal()))
          .forEach(built -> compared.add(changed(drawn, built)));
    }
    for (int i = 0; i < made.size(); i++) {
      for (Found other : made.subList(i + 1, made.size())) {
        Pair.of(made.get(i), other).ifPresent(pair -> compared.add(pair.words()));
      }
      for (Found other : touched) {
        Pair.of(made.get(i), other).ifPresent(pair -> compared.add(pair.words()));
      }
    }
    List<String> all = new ArrayList<>(new LinkedHashSet<>(compared));
    if (!compared.isEmpty()) {
      all.add(source());
    }
    if (!assessment.against().isEmpty()) {
      galvanic.unknown(assessment, sections).forEach(all::add);
    }
    return List.copyOf(all);
  }

  private static String source() {
    return "potentials in flowing sea water against a saturated calomel electrode, by the"
        + " Australasian Corrosion Association (corrosion.com.au); caution above "
        + Print.with(Metal.CAUTION, "V")
        + ", as for salt water (Carr Lane, carrlane.com)";
  }

  /** A metal of a section, by the id of its material. */
  private record Found(String id, Material.Metal metal, boolean bolt) {
    String words() {
      return id + " (" + Word.spoken(metal) + ")";
    }
  }

  private List<Found> of(Optional<Section> section) {
    return section.map(one -> found(materials(one))).orElse(List.of());
  }

  private List<Found> found(Stream<Ref> materials) {
    return materials
        .flatMap(ref -> table.apply(ref).stream())
        .flatMap(
            material ->
                conducting(material)
                    .map(
                        metal ->
                            new Found(material.id(), metal, material.sort() == Material.Sort.BOLT))
                    .stream())
        .distinct()
        .toList();
  }

  /** A cloth or laminate conducts where its fibre does. */
  private Optional<Material.Metal> conducting(Material material) {
    return Metals.of(material).or(() -> material.fibre().flatMap(table).flatMap(Metals::of));
  }

  private static Stream<Ref> materials(Section section) {
    return Stream.of(
            section.material().stream(),
            layers(section.layers()),
            layers(section.skins()),
            section.members().stream().map(Section.Member::material))
        .flatMap(some -> some);
  }

  private static Stream<Ref> layers(List<Section.Layer> layers) {
    return layers.stream()
        .flatMap(
            layer ->
                Stream.concat(
                    layer.material().stream(),
                    layer.strips().stream().flatMap(strip -> strip.material().stream())));
  }

  private Set<String> unknown(Assessment assessment, Function<Ref, Optional<Section>> sections) {
    return Stream.concat(
            assessment.against().stream(),
            assessment.built().flatMap(sections).stream().flatMap(Galvanic::materials))
        .flatMap(ref -> table.apply(ref).stream())
        .filter(material -> Metals.isMetal(material) && Metals.of(material).isEmpty())
        .map(
            material ->
                "which metal "
                    + material.id()
                    + " is, nobody says, so that it is not compared; write “metal” to the material")
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static String changed(List<Found> drawn, Found built) {
    Found first = drawn.get(0);
    return "the metal is not the one drawn: "
        + built.words()
        + " in place of "
        + first.words()
        + "; what it touches was chosen for "
        + first.id()
        + Pair.of(first, built)
            .map(pair -> ", " + pair.volts() + ", so look at each neighbour again")
            .orElse("");
  }

  /** Two metals in those of their states that are furthest apart. */
  private record Pair(Found baser, Metal base, Found nobler, Metal noble) {
    /** Empty where they mix well. */
    static Optional<Pair> of(Found one, Found other) {
      if (one.metal() == other.metal()) {
        return Optional.empty();
      }
      return Metals.states(one.metal()).stream()
          .flatMap(
              state ->
                  Metals.states(other.metal()).stream()
                      .filter(state::mixesBadlyWith)
                      .map(
                          second ->
                              state.baser(second) == state
                                  ? new Pair(one, state, other, second)
                                  : new Pair(other, second, one, state)))
          .max(Comparator.comparingDouble(Pair::apart));
    }

    double apart() {
      return noble.potential() - base.potential();
    }

    String volts() {
      return Print.with(apart(), "V") + " apart in sea water";
    }

    String words() {
      return side(baser, base)
          + " and "
          + side(nobler, noble)
          + " are "
          + volts()
          + ": where both are wet and touch, "
          + baser.id()
          + " is eaten. Part them by sleeves, washers and sealant, or keep to one metal."
          + (baser.bolt() && !nobler.bolt()
              ? " Bolts are small against what they hold and go fastest (MIL-STD-1250A)."
              : "");
    }

    private static String side(Found found, Metal state) {
      return found.id()
          + " ("
          + Word.spoken(state)
          + ", "
          + Print.with(state.potential(), "V")
          + ")";
    }
  }
}
