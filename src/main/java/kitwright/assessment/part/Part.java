package kitwright.assessment.part;

import java.util.List;
import kitwright.assessment.material.Stuff;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Ply;

/**
 * A section of the ledger, worked out as far as mechanics needs it.
 *
 * @param source as the ledger has it
 * @param beam as a cross-section
 * @param stack its layers from bottom to top where each is of one material over the whole width;
 *     else empty
 */
public record Part(
    kitwright.ledger.Section source,
    kitwright.mechanics.beam.Section beam,
    List<StackLayer> stack) {
  /**
   * A layer over the whole width.
   *
   * @param angle of its grain or first fibre to the length, degrees
   * @param thickness m
   */
  public record StackLayer(String where, Stuff stuff, double angle, double thickness) {
    /** In a strip that runs at an angle to the length. */
    public BeamMaterial beam(double turn) {
      return stuff.veneer().isPresent() ? stuff.veneer(angle + turn) : stuff.beam(angle + turn);
    }
  }

  public Part {
    stack = List.copyOf(stack);
  }

  public String id() {
    return source.id();
  }

  /** The same with y and z exchanged, for what bends it sideways; of no layers. */
  public Part turned() {
    return new Part(source, beam.turned(), List.of());
  }

  /** m. */
  public double thickness() {
    var box = beam.bounds();
    return box.maxZ() - box.minZ();
  }

  public Laminate laminate() {
    return laminate(stack);
  }

  public static Laminate laminate(List<StackLayer> layers) {
    return new Laminate(
        layers.stream()
            .map(layer -> new Ply(layer.stuff().lamina(), layer.thickness(), layer.angle()))
            .toList());
  }
}
