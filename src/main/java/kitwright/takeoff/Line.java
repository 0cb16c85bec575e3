package kitwright.takeoff;

import java.util.Optional;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * So much of a material that a task takes.
 *
 * @param net what ends up in the boat, overlaps among it
 * @param gross with waste: what has to be there
 * @param thickness of a layer that is no cloth, where the section says it
 * @param sum how it was worked out, for a person to follow: {@code 24 m2 × 1 ply = 24 m2}
 */
public record Line(
    Ref material,
    Role role,
    Quantity net,
    Quantity gross,
    Optional<Quantity> thickness,
    String sum) {
  Line of(Optional<Quantity> thick) {
    return new Line(material, role, net, gross, thick, sum);
  }

  /** What the material does in the part. */
  public enum Role {
    CLOTH("cloth"),
    RESIN("resin"),
    HARDENER("hardener"),
    CORE("core"),
    TIMBER("timber"),
    PANEL("panel"),
    METAL("metal"),
    FASTENER("fasteners");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /** As a builder says it. */
    public String word() {
      return word;
    }
  }
}
