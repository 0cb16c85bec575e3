package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import kitwright.mechanics.Ccx;
import kitwright.mechanics.beam.BeamMaterial.Elastic;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.BeamMaterial.Strength;
import kitwright.mechanics.column.Column;
import kitwright.mechanics.column.Ends;
import kitwright.mechanics.column.Rule;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Columns held at one end against a general finite-element solver (solids), within 5 %. */
class ColumnIT {
  private static final double MM = 1e-3;
  private static final double GPA = 1e9;

  @TempDir Path folder;

  private static BeamMaterial stuff(String name, Kind kind, double e, double g, double through) {
    var elastic = new Elastic(e, g, OptionalDouble.of(through));
    return new BeamMaterial(name, kind, 500, elastic, Strength.unknown());
  }

  @BeforeEach
  void theSolverIsThere() {
    Ccx.needed();
  }

  @Test
  void aSolidPost() throws Exception {
    var spruce = stuff("spruce", Kind.TIMBER, 11 * GPA, 0.7 * GPA, 0.55 * GPA);
    agree(LayeredSection.ofWidth(60 * MM).layer(spruce, 40 * MM).section(), 0.8, 40);
  }

  @Test
  void aSandwichGivesInShear() throws Exception {
    var glass = stuff("glass", Kind.LAMINATE, 15 * GPA, 5 * GPA, 10 * GPA);
    var foam = stuff("foam", Kind.CORE, 0.07 * GPA, 0.027 * GPA, 0.07 * GPA);
    agree(
        LayeredSection.ofWidth(60 * MM)
            .layer(glass, 1.5 * MM)
            .layer(foam, 15 * MM)
            .layer(glass, 1.5 * MM)
            .section(),
        0.4,
        60);
  }

  @Test
  void aHollowMast() throws Exception {
    var spruce = stuff("spruce", Kind.TIMBER, 11 * GPA, 0.7 * GPA, 0.55 * GPA);
    var side = Strip.of(12 * MM, spruce);
    agree(
        LayeredSection.ofWidth(60 * MM)
            .layer(spruce, 12 * MM)
            .strips(26 * MM, List.of(side, Strip.gap(36 * MM), side))
            .layer(spruce, 12 * MM)
            .section(),
        1.0,
        40);
  }

  private void agree(Section section, double length, int alongX) throws Exception {
    var bounds = section.bounds();
    var mesh = new SolidMesh(section, length, alongX, 2, 2);
    double area = section.regions().stream().mapToDouble(r -> r.moments().area()).sum();
    double solids = 1000 * Ccx.solve(folder, mesh.buckling(1000 / area)).factor();
    var upright = Bending.of(section);
    var aside = Bending.of(section.turned());
    var weak = upright.stiffness() < aside.stiffness() ? upright : aside;
    var column =
        new Column(
            1e12,
            weak.stiffness(),
            weak.shearStiffness(),
            length * Ends.FIXED_FREE.factor(),
            Rule.APART);
    assertThat(column.capacity() / solids)
        .as("theory over solids, " + bounds.width())
        .isCloseTo(1, within(0.05));
  }
}
