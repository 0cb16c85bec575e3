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
import kitwright.mechanics.load.BeamCase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Beam theory against a general finite-element solver (CalculiX 2.20, C3D20R solids): deflection
 * within 2 %, bending stress away from the support within 3 %.
 */
class CalculixIT {
  private static final double MM = 1e-3;
  private static final double GPA = 1e9;

  private static final BeamMaterial GLASS =
      stuff("glass", Kind.LAMINATE, 15 * GPA, 5 * GPA, 10 * GPA);
  private static final BeamMaterial FOAM =
      stuff("foam", Kind.CORE, 0.07 * GPA, 0.027 * GPA, 0.07 * GPA);
  private static final BeamMaterial SPRUCE =
      stuff("spruce", Kind.TIMBER, 11 * GPA, 0.7 * GPA, 0.55 * GPA);
  private static final BeamMaterial OAK = stuff("oak", Kind.TIMBER, 12.3 * GPA, 0.9 * GPA, 1 * GPA);
  private static final BeamMaterial STEEL =
      stuff("steel", Kind.METAL, 200 * GPA, 77 * GPA, 200 * GPA);

  private static final BeamMaterial BOARD =
      stuff("board", Kind.TIMBER, 11.7 * GPA, 0.731 * GPA, 0.39 * GPA);
  private static final BeamMaterial ROLLING =
      stuff("board across", Kind.TIMBER, 0.3 * GPA, 0.731 / 13 * GPA, 0.3 * GPA);

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
  void glassFacesOnFoam() throws Exception {
    agree(
        LayeredSection.ofWidth(40 * MM)
            .layer(GLASS, 2 * MM)
            .layer(FOAM, 25 * MM)
            .layer(GLASS, 2 * MM)
            .section(),
        0.9,
        90,
        2);
  }

  @Test
  void spruceWithASteelStrapAndAnOakCap() throws Exception {
    agree(
        LayeredSection.ofWidth(60 * MM)
            .layer(STEEL, 4 * MM)
            .layer(SPRUCE, 60 * MM)
            .layer(OAK, 16 * MM)
            .section(),
        1.2,
        60,
        2);
  }

  @Test
  void hollowSpruceBoxUnderGlass() throws Exception {
    agree(
        LayeredSection.ofWidth(96 * MM)
            .layer(SPRUCE, 24 * MM)
            .strips(
                48 * MM,
                List.of(Strip.of(24 * MM, SPRUCE), Strip.gap(48 * MM), Strip.of(24 * MM, SPRUCE)))
            .layer(SPRUCE, 24 * MM)
            .layer(GLASS, 2 * MM)
            .section(),
        1.8,
        60,
        2);
  }

  /**
   * Three boards of 35 mm, the middle one across: what it gives in rolling shear is what the solids
   * give, so the shear flow's 8.65·10⁶ N a metre of {@code WoodPublishedTest} holds, not the code's
   * 7.31. A board half as long, held by its root, gives 3 % less than told.
   */
  @Test
  void threeCrossedBoards() throws Exception {
    agree(
        LayeredSection.ofWidth(100 * MM)
            .layer(BOARD, 35 * MM)
            .layer(ROLLING, 35 * MM)
            .layer(BOARD, 35 * MM)
            .section(),
        2.2,
        44,
        2);
  }

  @Test
  void glassOnACoreOfCedarAcrossItsGrain() throws Exception {
    agree(
        LayeredSection.ofWidth(40 * MM)
            .layer(GLASS, 2 * MM)
            .layer(stuff("cedar", Kind.CORE, 0.5 * GPA, 0.065 * GPA, 0.5 * GPA), 20 * MM)
            .layer(GLASS, 2 * MM)
            .section(),
        0.6,
        60,
        2);
  }

  private void agree(Section section, double length, int alongX, int pieces) throws Exception {
    double load = 100;
    double width = section.bounds().width();
    var mesh = new SolidMesh(section, length, alongX, pieces, pieces);
    var moved = Ccx.solve(folder, mesh.deck(load / (width * length))).moved();

    var bending = Bending.of(section);
    double theory =
        BeamCase.CANTILEVER_EVEN
            .deflection(load, length, bending.stiffness(), bending.shearStiffness())
            .total();
    double solids = -Ccx.of(moved, mesh.topNode(mesh.steps()))[2];
    assertThat(theory / solids).as("deflection, theory over solids").isCloseTo(1, within(0.02));

    // Stress at the top a quarter of the way along, from the stretch between two nodes.
    int at = mesh.steps() / 4;
    double x = mesh.at(at);
    double stretch =
        (Ccx.of(moved, mesh.topNode(at + 2))[0] - Ccx.of(moved, mesh.topNode(at - 2))[0])
            / (mesh.at(at + 2) - mesh.at(at - 2));
    double moment = -load / length * (length - x) * (length - x) / 2;
    var stresses = Stresses.of(section, moment);
    var outer = stresses.get(stresses.size() - 1);
    double modulus = section.regions().get(section.regions().size() - 1).material().axial();
    assertThat(outer.atUpper() / (modulus * stretch))
        .as("stress, theory over solids")
        .isCloseTo(1, within(0.03));
  }
}
