package kitwright.substitution;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.ledger.Assessment;
import kitwright.ledger.Entry;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;

/**
 * What a signature of the first form covers, as one canonical text: kept letter for letter, so that
 * what was signed by it stays signed.
 *
 * <p>Left out are the signatures themselves and a later withdrawal, and the paths of evidence,
 * since its hash says what it is wherever it lies.
 */
final class FirstForm {
  private static final Set<String> NOT_OF_A_SUBSTITUTION = Set.of("sign-offs", "withdrawn");
  private static final Set<String> NOT_OF_AN_ASSESSMENT = Set.of("evidence");

  private final Ledger ledger;

  /** Parts by kind and id, so that their order does not hang on who names whom first. */
  private final TreeMap<String, String> parts = new TreeMap<>();

  private final Deque<Ref> materials = new ArrayDeque<>();

  private FirstForm(Ledger ledger) {
    this.ledger = ledger;
  }

  static String text(Substitution substitution, Ledger ledger) {
    FirstForm covered = new FirstForm(ledger);
    covered.add(substitution);
    covered.addMaterials();
    StringBuilder out = new StringBuilder();
    covered.parts.forEach((name, text) -> out.append(name).append('\n').append(text).append('\n'));
    return out.toString();
  }

  private void add(Substitution substitution) {
    parts.put(substitution.named(), substitution.at().canonical(NOT_OF_A_SUBSTITUTION));
    for (Substitution.Take take : substitution.use()) {
      take.stock()
          .ifPresent(ref -> addMaterial("stock", ref, ledger.stock(ref).flatMap(Stock::material)));
      take.item()
          .ifPresent(
              ref -> addMaterial("kit", ref, ledger.kitItem(ref).flatMap(KitItem::material)));
    }
    substitution
        .assessment()
        .ifPresent(ref -> found("assessment", ref, ledger.assessment(ref)).ifPresent(this::add));
  }

  /**
   * The signature holds for the material that is taken, not for how much of it lies in the shed.
   */
  private void addMaterial(String kind, Ref thing, Optional<Ref> material) {
    parts.put("material of " + kind + " " + thing.id(), material.map(Ref::id).orElse(""));
    material.ifPresent(materials::add);
  }

  private void add(Assessment assessment) {
    StringBuilder text = new StringBuilder(assessment.at().canonical(NOT_OF_AN_ASSESSMENT));
    assessment.evidence().forEach(piece -> text.append('\n').append(hashes(piece)));
    parts.put(assessment.named(), text.toString());
    assessment.menu().forEach(addition -> addition.material().ifPresent(materials::add));
    materials.addAll(assessment.against());
    Stream.of(
            assessment.designed().stream(),
            assessment.built().stream(),
            assessment.weakLink().stream().flatMap(WeakLink::parts))
        .flatMap(sections -> sections)
        .forEach(ref -> found("section", ref, ledger.section(ref)).ifPresent(this::add));
  }

  private String hashes(Evidence piece) {
    EvidenceFile file = ledger.evidence(piece);
    String says = piece.says().orElse("").strip().replaceAll("\\s+", " ");
    return "recorded "
        + piece.sha256().orElse("nothing")
        + " found "
        + file.sha256().orElse(file.state().name())
        + " says "
        + says;
  }

  private void add(Section section) {
    parts.put(section.named(), section.at().canonical(Set.of()));
    section.material().ifPresent(materials::add);
    section.glue().ifPresent(materials::add);
    Stream.of(section.layers(), section.skins()).flatMap(List::stream).forEach(this::add);
    section.members().forEach(member -> materials.add(member.material()));
  }

  private void add(Section.Layer layer) {
    layer.material().ifPresent(materials::add);
    layer.strips().forEach(strip -> strip.material().ifPresent(materials::add));
  }

  private void addMaterials() {
    while (!materials.isEmpty()) {
      Ref ref = materials.remove();
      if (!parts.containsKey("material " + ref.id())) {
        found("material", ref, ledger.material(ref)).ifPresent(this::add);
      }
    }
  }

  private void add(Material material) {
    parts.put(material.named(), material.at().canonical(Set.of()));
    material.fibre().ifPresent(materials::add);
    material.wood().ifPresent(materials::add);
    material.resin().ifPresent(materials::add);
  }

  /** A record that is named but absent is part of what was signed, too. */
  private <T extends Entry> Optional<T> found(String kind, Ref ref, Optional<T> record) {
    if (record.isEmpty()) {
      parts.put(kind + " " + ref.id(), "absent");
    }
    return record;
  }
}
