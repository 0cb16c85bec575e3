package kitwright.assessment.part;

import java.util.List;
import java.util.Optional;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.sheet.Faults;
import kitwright.finding.Findings;
import kitwright.ledger.Section;

/** Turns a section of the ledger into a part that mechanics can work with. */
public final class Parts {
  /** Ten times what a thick mast laminated of veneers has. From memory. */
  private static final int MOST_LAYERS = 500;

  private final Materials materials;
  private final Factors.OnSide factors;
  private final Findings out;

  /**
   * @param materials where lacking values are noted
   * @param out where impossible sections are told
   */
  public Parts(Materials materials, Factors.OnSide factors, Findings out) {
    this.materials = materials;
    this.factors = factors;
    this.out = out;
  }

  /** The part; empty where a value is lacking or the section cannot be. */
  public Optional<Part> of(Section section) {
    Faults faults = new Faults(section, out);
    Unheeded.tell(section, faults);
    Optional<Part> part;
    try {
      part = attempt(section, faults);
    } catch (IllegalArgumentException impossible) {
      faults.add(
          section.at().record(),
          "This section cannot be: " + impossible.getMessage(),
          "Check its measures and materials.");
      part = Optional.empty();
    }
    Webs.lacking(section, materials::material).forEach(materials.inputs()::lacks);
    part.ifPresent(this::slim);
    factors.beyond(section).forEach(materials.inputs()::lacks);
    if (faults.any()) {
      materials
          .inputs()
          .lacks(section.named() + " cannot be as it is written; “kitwright check” says why");
      return Optional.empty();
    }
    return part;
  }

  private void slim(Part part) {
    Webs.legs(part).ifPresent(materials.inputs()::lacks);
    Cells.taken(part.source(), materials::material).forEach(materials.inputs()::note);
    Cells.lacking(part, materials::material).forEach(materials.inputs()::lacks);
    Webs.sheared(part).forEach(materials.inputs()::lacks);
    Holes.lacking(part).forEach(materials.inputs()::lacks);
  }

  private Optional<Part> attempt(Section section, Faults faults) {
    if (!section.layers().isEmpty()) {
      if (section.shape().isPresent()) {
        faults.add(
            "shape", "A section has layers and a shape", "Keep one of “layers” and “shape”.");
        return Optional.empty();
      }
      if (section.layers().size() > MOST_LAYERS) {
        faults.add(
            "layers",
            "A section has " + section.layers().size() + " layers, more than can be worked out",
            "Write layers alike as one with “plies”, or with their thickness together; "
                + MOST_LAYERS
                + " at most.");
        return Optional.empty();
      }
      return new LayeredPart(section, materials, factors, faults).part();
    }
    if (section.shape().isEmpty()) {
      faults.add(
          "layers",
          "A section has neither layers nor a shape",
          "List its layers from bottom to top, or give a shape with its dimensions.");
      return Optional.empty();
    }
    if (section.shape().get().isFastening()) {
      return Optional.empty();
    }
    return new ShapedPart(section, materials, factors, faults)
        .section()
        .map(beam -> part(section, beam));
  }

  private static Part part(Section section, kitwright.mechanics.beam.Section beam) {
    return new Part(section, beam, List.of());
  }
}
