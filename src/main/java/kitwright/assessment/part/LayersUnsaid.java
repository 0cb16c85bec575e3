package kitwright.assessment.part;

import java.util.Optional;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Stuff;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Layer;
import kitwright.value.Ref;

/** What nobody says of the layers of a section: noted where it is taken, told where it lacks. */
record LayersUnsaid(Section section, Materials materials) {
  /** What nobody says of its layers and is taken all the same. */
  void taken() {
    boolean wood = section.layers().stream().flatMap(Layer::materials).anyMatch(this::isWood);
    if (!wood) {
      return;
    }
    if (section.layers().size() > 1 && section.glue().isEmpty()) {
      materials
          .inputs()
          .note(
              "no glue is stated between the layers of "
                  + section.id()
                  + ": a glue line is taken to bear what the weaker of both sides bears");
    }
    if (section.layers().stream().anyMatch(this::isUnsaid)) {
      materials
          .inputs()
          .note(
              "where nothing says how its grain runs, the wood of "
                  + section.id()
                  + " is taken to run along the part");
    }
  }

  /** Whether it is of wood, or has a strip of it, and does not say how that lies. */
  private boolean isUnsaid(Layer layer) {
    boolean strips =
        layer.strips().stream()
            .filter(strip -> strip.grain().isEmpty())
            .flatMap(strip -> strip.material().stream())
            .anyMatch(this::isWood);
    boolean whole = layer.grain().isEmpty() && layer.angle().isEmpty();
    return strips || (whole && layer.material().filter(this::isWood).isPresent());
  }

  private boolean isWood(Ref ref) {
    return materials.material(ref).filter(LayersUnsaid::isWood).isPresent();
  }

  private static boolean isWood(Material material) {
    return material.sort() == Material.Sort.TIMBER || material.sort() == Material.Sort.PLYWOOD;
  }

  /**
   * Fibres of one direction lie nowhere by themselves, nor does grain beside grain that is told.
   */
  void notTurned(Ref ref, String where) {
    Optional<Material> material = materials.material(ref);
    boolean fibres =
        material.flatMap(Material::weave).filter(Material.Weave.UNIDIRECTIONAL::equals).isPresent();
    boolean wood = material.filter(LayersUnsaid::isWood).isPresent();
    boolean told = section.layers().stream().anyMatch(layer -> layer.grain().isPresent());
    if (material.flatMap(Material::weave).isPresent() && !fibres) {
      materials
          .inputs()
          .note(
              where
                  + " of "
                  + section.id()
                  + " states no angle: the roll of its cloth is taken to lie along the part");
    } else if (fibres) {
      materials
          .inputs()
          .lacks(
              where
                  + " of "
                  + section.named()
                  + " does not say how its fibres lie: angle: 0 deg is along the part");
    } else if (wood && told) {
      materials
          .inputs()
          .lacks(
              where
                  + " of "
                  + section.named()
                  + " does not say how its grain runs, as another layer does: grain: along, across"
                  + " or bias");
    }
  }

  /** What a board of plywood bears on edge is not what it bears lying flat. */
  void upright(Ref ref, double wide, double high) {
    materials
        .material(ref)
        .filter(one -> high > wide && OnEdge.isMeantFlat(one))
        .ifPresent(one -> materials.inputs().lacks(OnEdge.words(one, section)));
  }

  /** A strip of plywood stands on edge or lies flat, and nothing says which. */
  boolean isVeneered(Stuff stuff) {
    if (stuff.veneer().isPresent()) {
      materials
          .inputs()
          .lacks(
              stuff.id()
                  + " is worked out veneer by veneer over a whole width, not as a strip: state the"
                  + " values of the board (E, E-across and strengths) for that");
    }
    return stuff.veneer().isPresent();
  }
}
