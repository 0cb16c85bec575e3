package kitwright.assessment.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.assessment.part.Part.StackLayer;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Faces on a honeycomb, which dimple into its cells at 2·E/(1 − ν₁₂·ν₂₁)·(t/s)², s the width of a
 * cell, the bracket taken as 1: where that is less than what the face bears in compression nothing
 * is told.
 *
 * @see "intra-cell buckling as two public programs have it, read 2026-11-30"
 */
final class Cells {
  private Cells() {}

  /** What cannot be told of a part for the cells of its core, each a clause. */
  static List<String> lacking(Part part, Function<Ref, Optional<Material>> materials) {
    List<String> lacking = new ArrayList<>();
    Section section = part.source();
    section
        .material()
        .flatMap(materials)
        .flatMap(Cells::width)
        .ifPresent(w -> lacking.add(any(part)));
    List<Section.Layer> layers = section.layers();
    boolean stacked = part.stack().size() == layers.size();
    for (int i = 0; i < layers.size(); i++) {
      Optional<Double> cell = layers.get(i).material().flatMap(materials).flatMap(Cells::width);
      boolean inStrip =
          layers.get(i).strips().stream()
              .flatMap(strip -> strip.material().stream())
              .flatMap(ref -> materials.apply(ref).stream())
              .anyMatch(one -> width(one).isPresent());
      if (inStrip || (cell.isPresent() && !stacked)) {
        lacking.add(any(part));
      } else if (cell.isPresent()) {
        face(part, i, -1, cell.get()).ifPresent(lacking::add);
        face(part, i, 1, cell.get()).ifPresent(lacking::add);
      }
    }
    return lacking.stream().distinct().toList();
  }

  /** What is taken of cores that are not the same every way and state no cell, each a sentence. */
  static List<String> taken(Section section, Function<Ref, Optional<Material>> materials) {
    return section.layers().stream()
        .flatMap(layer -> layer.material().stream())
        .flatMap(ref -> materials.apply(ref).stream())
        .filter(one -> one.sort() == Material.Sort.CORE && !one.isotropic())
        .filter(one -> width(one).isEmpty())
        .map(
            one ->
                one.id()
                    + " states no cell: it is taken to be without cells, as end-grain balsa is; of"
                    + " a honeycomb state the cell, into which a face may dimple")
        .distinct()
        .toList();
  }

  private static Optional<Double> width(Material one) {
    return Optional.ofNullable(one.properties().get(MaterialProperty.CELL)).map(Quantity::base);
  }

  private static String any(Part part) {
    return part.id()
        + " has a honeycomb that is no layer of its whole width, and whether its faces dimple into"
        + " the cells is not worked out";
  }

  /** The plies from a core outward, along the part and across it. */
  private static Optional<String> face(Part part, int core, int step, double cell) {
    for (double turn : new double[] {0, 90}) {
      double thick = 0;
      double stiff = 0;
      double bears = 0;
      for (int i = core + step; i >= 0 && i < part.stack().size(); i += step) {
        StackLayer ply = part.stack().get(i);
        if (ply.stuff().kind() == Kind.CORE) {
          break;
        }
        BeamMaterial one = ply.beam(turn);
        thick += ply.thickness();
        stiff += ply.thickness() * one.axial();
        bears = Math.max(bears, one.strength().compression().orElse(Double.POSITIVE_INFINITY));
      }
      double dimples = thick > 0 ? 2 * stiff / thick * Math.pow(thick / cell, 2) : 0;
      if (thick > 0 && dimples < bears) {
        return Optional.of(
            "a face of "
                + part.id()
                + ", "
                + Print.mm(thick)
                + " thick, may dimple into cells of "
                + Print.mm(cell)
                + " at "
                + Print.with(dimples / 1e6, "MPa")
                + ", before it fails: a thicker face, or smaller cells");
      }
    }
    return Optional.empty();
  }
}
