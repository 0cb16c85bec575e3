package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import kitwright.OutsideProgram;
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

  @TempDir Path folder;

  private static BeamMaterial stuff(String name, Kind kind, double e, double g, double through) {
    var elastic = new Elastic(e, g, OptionalDouble.of(through));
    return new BeamMaterial(name, kind, 500, elastic, Strength.unknown());
  }

  @BeforeEach
  void theSolverIsThere() {
    OutsideProgram.needed("ccx", "calculix-ccx");
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

  private void agree(Section section, double length, int alongX, int pieces) throws Exception {
    double load = 100;
    double width = section.bounds().width();
    var mesh = new SolidMesh(section, length, alongX, pieces, pieces);
    var moved = solve(mesh.deck(load / (width * length)));

    var bending = Bending.of(section);
    double theory =
        BeamCase.CANTILEVER_EVEN
            .deflection(load, length, bending.stiffness(), bending.shearStiffness())
            .total();
    double solids = -moved(moved, mesh.topNode(mesh.steps()))[2];
    assertThat(theory / solids).as("deflection, theory over solids").isCloseTo(1, within(0.02));

    // Stress at the top a quarter of the way along, from the stretch between two nodes.
    int at = mesh.steps() / 4;
    double x = mesh.at(at);
    double stretch =
        (moved(moved, mesh.topNode(at + 2))[0] - moved(moved, mesh.topNode(at - 2))[0])
            / (mesh.at(at + 2) - mesh.at(at - 2));
    double moment = -load / length * (length - x) * (length - x) / 2;
    var stresses = bending.stresses(moment);
    var outer = stresses.get(stresses.size() - 1);
    double modulus = section.regions().get(section.regions().size() - 1).material().axial();
    assertThat(outer.atUpper() / (modulus * stretch))
        .as("stress, theory over solids")
        .isCloseTo(1, within(0.03));
  }

  private static double[] moved(Map<Integer, double[]> all, int node) {
    return Optional.ofNullable(all.get(node)).orElseThrow();
  }

  private Map<Integer, double[]> solve(String deck) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("beam.inp"), deck, StandardCharsets.US_ASCII);
    var builder = new ProcessBuilder("ccx", "-i", "beam").directory(folder.toFile());
    builder.environment().put("OMP_NUM_THREADS", "1");
    builder.redirectErrorStream(true).redirectOutput(folder.resolve("log.txt").toFile());
    var process = builder.start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("ccx ends").isTrue();
    assertThat(process.exitValue()).as(Files.readString(folder.resolve("log.txt"))).isZero();
    var moved = new HashMap<Integer, double[]>();
    for (var line : Files.readAllLines(folder.resolve("beam.dat"))) {
      var words = line.strip().split("\\s+");
      if (words.length == 4 && words[0].matches("\\d+")) {
        moved.put(
            Integer.valueOf(words[0]),
            new double[] {
              Double.parseDouble(words[1]),
              Double.parseDouble(words[2]),
              Double.parseDouble(words[3])
            });
      }
    }
    return moved;
  }
}
