package kitwright.substitution;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.ledger.Assessment;
import kitwright.ledger.KitItem;
import kitwright.ledger.KnockDown;
import kitwright.ledger.Ledger;
import kitwright.ledger.Load;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.Condition;
import kitwright.ledger.Substitution.Take;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;

/** What a signature rests on: the assessment, and the sections and materials that lead from it. */
final class Grounds {
  private final Ledger ledger;
  private final Lines lines;

  /** By id, so that their order does not hang on who names whom first. */
  private final Map<String, Ref> sections = new TreeMap<>();

  private final Map<String, Ref> materials = new TreeMap<>();

  Grounds(Ledger ledger, Lines lines) {
    this.ledger = ledger;
    this.lines = lines;
  }

  void tell(Substitution substitution, List<Condition> conditions) {
    substitution.insteadOf().item().ifPresent(this::item);
    substitution.use().forEach(this::take);
    conditions.forEach(condition -> condition.section().ifPresent(this::section));
    substitution.assessment().ifPresent(this::assessment);
    sections.values().forEach(this::tellSection);
    materials.values().forEach(this::tellMaterial);
  }

  private void take(Take take) {
    take.item().ifPresent(this::item);
    take.stock().flatMap(ledger::stock).flatMap(Stock::material).ifPresent(this::material);
    take.spend()
        .flatMap(ledger::spend)
        .ifPresent(
            spend -> {
              spend.material().ifPresent(this::material);
              spend.item().ifPresent(this::item);
            });
  }

  private void item(Ref ref) {
    ledger.kitItem(ref).flatMap(KitItem::material).ifPresent(this::material);
  }

  private void section(Ref ref) {
    if (sections.putIfAbsent(ref.id(), ref) == null) {
      ledger.section(ref).ifPresent(this::materialsOf);
      ledger.section(ref).flatMap(Section::tapersTo).ifPresent(this::section);
    }
  }

  private void materialsOf(Section section) {
    section.material().ifPresent(this::material);
    section.glue().ifPresent(this::material);
    section.members().forEach(member -> material(member.material()));
    Stream.of(section.layers(), section.skins())
        .flatMap(List::stream)
        .forEach(
            layer -> {
              layer.material().ifPresent(this::material);
              layer.strips().forEach(strip -> strip.material().ifPresent(this::material));
            });
  }

  private void material(Ref ref) {
    if (materials.putIfAbsent(ref.id(), ref) == null) {
      ledger
          .material(ref)
          .ifPresent(
              found ->
                  Stream.of(found.fibre(), found.resin(), found.hardener(), found.wood())
                      .flatMap(Optional::stream)
                      .forEach(this::material));
    }
  }

  private void assessment(Ref ref) {
    lines.heading("Assessment " + Plain.name(ref.id()));
    ledger.assessment(ref).ifPresentOrElse(this::assessment, Statement.absent(lines));
  }

  private void assessment(Assessment assessment) {
    lines.word("method", assessment.method()).day("made", assessment.on());
    assessment.by().ifPresent(by -> lines.line("made by", Statement.party(by, ledger)));
    lines
        .name("as designed", assessment.designed())
        .name("as built", assessment.built())
        .each("asks at least", assessment.require(), Plain::number)
        .each("asks less since", assessment.lessBecause(), Plain::words)
        .each("allows at most", assessment.allow(), Plain::number)
        .each("factor", assessment.factors(), Plain::number)
        .each("number", assessment.numbers(), Plain::number);
    assessment.knockDowns().forEach(this::knockDown);
    assessment.notStructural().ifPresent(this::notStructural);
    assessment.weakLink().ifPresent(this::weakLink);
    assessment.load().ifPresent(this::load);
    lines.names("against", assessment.against());
    assessment.against().forEach(this::material);
    assessment.sources().forEach(source -> lines.words("source", source));
    lines.words("remark", assessment.remark());
    assessment.evidence().forEach(piece -> Statement.document(piece, ledger, lines));
    assessment.designed().ifPresent(this::section);
    assessment.built().ifPresent(this::section);
  }

  private void knockDown(KnockDown stated) {
    lines.within(
        "knock-down",
        () -> {
          lines
              .word("for", stated.on())
              .number("value", stated.value())
              .number("slope", stated.slope())
              .word("lasts", stated.lasts())
              .word("on", stated.side());
          stated.serviceClass().ifPresent(wet -> lines.line("service class", wet.toString()));
          stated.layer().ifPresent(layer -> lines.line("layer", layer.toString()));
          lines.words("source", stated.source());
        });
  }

  private void notStructural(Assessment.NotStructural said) {
    lines.within(
        // Signed as it stands: another word would void every signature that covers it.
        "nothing structural hangs on it",
        () ->
            lines
                .line("says", Statement.party(said.by(), ledger) + ", on " + said.on())
                .words("why", said.why()));
  }

  private void weakLink(WeakLink link) {
    lines.within(
        "weak link",
        () ->
            lines
                .name("breaks", link.sacrificial())
                .name("stays whole", link.protectedPart())
                .line("margin", Plain.number(link.margin()))
                .quantity("breaks at", link.breaksAt())
                .number("chance of the wrong order", link.chance())
                .word("broken by", Optional.of(link.by()).filter(by -> by != WeakLink.By.BENDING)));
    link.rating().ifPresent(this::rating);
    link.parts().forEach(this::section);
  }

  private void notch(Section.Notch notch) {
    lines.within(
        "notch at a support",
        () ->
            lines
                .quantity("depth", Optional.of(notch.depth()))
                .quantity("corner", notch.corner())
                .number("slope", notch.slope())
                .line(
                    "on the side", notch.opposite() ? "away from the support" : "of the support"));
  }

  private void rating(WeakLink.Rating rating) {
    lines.within(
        "known load",
        () ->
            lines
                .quantity("load", Optional.of(rating.load()))
                .word("basis", rating.basis())
                .number("scatter", rating.scatter())
                .words("source", rating.source()));
  }

  private void load(Load load) {
    lines.within(
        "load",
        () ->
            lines
                .word("shape", load.shape())
                .word("support", load.support())
                .quantity("force", load.force())
                .quantity("tip force", load.tipForce())
                .quantity("pressure", load.pressure())
                .quantity("span", load.span())
                .quantity("overhang", load.overhang())
                .quantity("breadth", load.breadth())
                .quantity("speed", load.speed())
                .quantity("area", load.area())
                .number("lift", load.lift())
                .quantity("density", load.density())
                .quantity("thrust", load.thrust())
                .word("ends", load.ends())
                .quantity("torque", load.torque())
                .quantity("held sideways", load.heldSideways())
                .quantity("bearing", load.bearing())
                .line("own weight", load.selfWeight() ? "added" : "not added")
                .line("safety factor", Plain.number(load.safety()))
                .words("source", load.source()));
  }

  private void tellSection(Ref ref) {
    lines.heading("Section " + Plain.name(ref.id()));
    ledger.section(ref).ifPresentOrElse(this::tell, Statement.absent(lines));
  }

  private void tell(Section section) {
    lines
        .words("what", section.what())
        .word("grade", section.grade())
        .word("shape", section.shape())
        .quantity("width", section.width())
        .name("material", section.material())
        .each("measure", section.dimensions(), Plain::quantity)
        .name("glue", section.glue())
        .name("tapers to", section.tapersTo());
    section.notch().ifPresent(this::notch);
    section.layers().forEach(layer -> layer("layer", layer));
    section.skins().forEach(layer -> layer("skin", layer));
    section.members().forEach(this::member);
    section
        .outline()
        .forEach(
            corner ->
                lines.line(
                    "corner",
                    Plain.quantity(corner.y())
                        + ", "
                        + Plain.quantity(corner.z())
                        + corner.wall().map(wall -> ", wall " + Plain.quantity(wall)).orElse("")));
  }

  private void layer(String kind, Section.Layer layer) {
    lines.within(
        kind,
        () -> {
          lines
              .name("material", layer.material())
              .quantity("thickness", layer.thickness())
              .number("plies", layer.plies())
              .word("grain", layer.grain())
              .quantity("angle", layer.angle());
          layer.strips().forEach(this::strip);
        });
  }

  private void strip(Section.Strip strip) {
    lines.within(
        strip.hollow() ? "void" : "strip",
        () ->
            lines
                .name("material", strip.material())
                .word("grain", strip.grain())
                .quantity("width", strip.width()));
  }

  private void member(Section.Member member) {
    lines.within(
        "member",
        () ->
            lines
                .words("what", member.what())
                .name("material", member.material())
                .quantity("width", member.width())
                .quantity("at", member.at())
                .quantity("height", member.height()));
  }

  private void tellMaterial(Ref ref) {
    lines.heading("Material " + Plain.name(ref.id()));
    ledger.material(ref).ifPresentOrElse(this::tell, Statement.absent(lines));
  }

  private void tell(Material material) {
    lines
        .words("what", material.what())
        .word("kind", material.sort())
        .name("fibre", material.fibre())
        .name("resin", material.resin())
        .name("hardener", material.hardener())
        .name("veneers of", material.wood())
        .word("weave", material.weave())
        .word("metal", material.metal());
    if (material.isotropic()) {
      lines.line("the same every way", "yes");
    }
    if (material.invented()) {
      lines.line("invented", "yes");
    }
    material.angles().forEach(angle -> lines.line("direction", Plain.number(angle) + " deg"));
    for (MaterialProperty property : MaterialProperty.values()) {
      if (!ofTheWorkshop(property)) {
        lines.quantity(property.key(), Optional.ofNullable(material.properties().get(property)));
      }
    }
    lines.words("source", material.source()).word("basis", material.basis());
    material.unconfirmed().stream().sorted().forEach(key -> lines.words("unconfirmed", key));
  }

  /** What matters to whoever cuts and mixes, and changes no strength. */
  private static boolean ofTheWorkshop(MaterialProperty property) {
    return switch (property) {
      case ROLL_WIDTH, OVERLAP, POT_LIFE -> true;
      default -> false;
    };
  }
}
