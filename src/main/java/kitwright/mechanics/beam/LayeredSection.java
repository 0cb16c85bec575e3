package kitwright.mechanics.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.Refuse;

/**
 * A stack of layers, each over the full width or of strips side by side, put together to a section
 * with its glue lines, its thin faces and, where it closes round a cell, its torsion.
 */
public final class LayeredSection {
  private static final double FIT = 1e-9;

  private final double width;
  private final List<Layer> layers = new ArrayList<>();
  private OptionalDouble glue = OptionalDouble.empty();

  private LayeredSection(double width) {
    this.width = Refuse.unlessPositive("section width", width);
  }

  /** An empty stack of a width in m; add from bottom to top. */
  public static LayeredSection ofWidth(double width) {
    return new LayeredSection(width);
  }

  /** Adds a layer over the full width; thickness in m. */
  public LayeredSection layer(BeamMaterial material, double thickness) {
    return strips(thickness, List.of(Strip.of(width, material)));
  }

  /** Adds a layer of strips from left to right; thickness in m. */
  public LayeredSection strips(double thickness, List<Strip> strips) {
    return add(new Layer("layer " + (layers.size() + 1), thickness, strips));
  }

  public LayeredSection add(Layer layer) {
    Refuse.unless(
        Math.abs(layer.width() - width) <= FIT * width,
        () ->
            layer.where()
                + ": strips "
                + layer.width()
                + " m wide in a section of "
                + width
                + " m");
    Refuse.unless(
        layer.strips().stream().anyMatch(s -> s.material().isPresent()),
        () -> layer.where() + " is all void");
    layers.add(layer);
    return this;
  }

  /** States the shear strength of the glue in every bond line, Pa. */
  public LayeredSection glue(double strength) {
    glue = OptionalDouble.of(Refuse.unlessPositive("shear strength of the glue", strength));
    return this;
  }

  /** The section, its origin at the bottom left corner. */
  public Section section() {
    Refuse.unless(!layers.isEmpty(), "a section has a layer");
    var grid = Grid.of(layers);
    boolean joined = grid.joined();
    Refuse.unless(
        joined || grid.abreast(),
        "the parts of a section touch each other, or stand side by side and are built alike: a"
            + " strip stands alone");
    var torsion = joined ? GridTorsion.of(layers) : GridTorsion.Known.nothing();
    return new Section(
        grid.regions(),
        grid.bonds(glue),
        GridSkins.of(grid),
        torsion.stiffness(),
        torsion.twisted(),
        GridSandwich.of(layers, width));
  }
}
