package kitwright.assessment;

import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The whole way of {@code assess --remedy} over a menu of ten thousand combinations of which none
 * will do, and what is missed is worked out last: the weak link, or the plate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(value = 1, jvmArgs = {"-Xms1g", "-Xmx1g"})
public class RemedyBenchmark {
  private static final String STUFF =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      materials:
        - {id: wood, kind: timber, density: 500 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 60 MPa, tensile-strength: 60 MPa, compressive-strength: 40 MPa, shear-strength: 8 MPa, source: sample}
        - {id: ash, kind: timber, density: 680 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 100 MPa, tensile-strength: 100 MPa, compressive-strength: 50 MPa, shear-strength: 13 MPa, source: sample}
        - {id: foam, kind: core, density: 80 kg/m3, E: 70 MPa, G: 20 MPa, tensile-strength: 2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1.0 MPa, source: sample}
        - {id: fibre-of-glass, kind: fibre, density: 2560 kg/m3, E: 73 GPa, poisson: 0.22, source: sample}
        - {id: resin, kind: resin, density: 1200 kg/m3, E: 3 GPa, poisson: 0.35, source: sample}
        - {id: straight, kind: cloth, fibre: fibre-of-glass, resin: resin, weave: biaxial, areal-weight: 600 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: sample}
        - {id: light, kind: cloth, fibre: fibre-of-glass, resin: resin, weave: biaxial, areal-weight: 300 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: sample}
        - {id: slant, kind: cloth, fibre: fibre-of-glass, resin: resin, weave: double-bias, areal-weight: 600 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: sample}
      sections:
        - {id: drawn, width: 1000 mm, layers: [{material: straight, plies: 3}, {material: foam, thickness: 30 mm}, {material: straight, plies: 3}]}
        - {id: made, width: 1000 mm, layers: [{material: straight, plies: 2}, {material: foam, thickness: 25 mm}, {material: straight, plies: 2}]}
        - {id: stock, width: 600 mm, layers: [{material: ash, thickness: 40 mm}]}
        - {id: foil-drawn, shape: foil, dimensions: {chord: 260 mm, thickness-ratio: 0.115}, material: wood, skins: [{material: light, plies: 1}], members: [{what: spine, material: wood, width: 28 mm, at: 78 mm}]}
        - {id: foil-made, shape: foil, dimensions: {chord: 260 mm, thickness-ratio: 0.115}, material: wood, skins: [{material: light, plies: 1}], members: [{what: spine, material: ash, width: 28 mm, at: 78 mm}]}
        - {id: foil-stock, shape: rectangle, material: ash, dimensions: {width: 60 mm, height: 30 mm}}
        - {id: bolt-drawn, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm}}
        - {id: bolt-made, shape: bolt, material: bolt-8-8, dimensions: {diameter: 8 mm}}
      """;

  private static final String PLIES =
      "menu: [{material: straight, faces: 2, most: 9}, {material: light, faces: 2, most: 9},"
          + " {step: 1 mm, dimension: core, most: 9}, {material: slant, faces: 1, most: 9}]";

  private static final Map<String, String> ASKED =
      Map.of(
          "beam",
          "method: section, designed: drawn, built: made, require: {stiffness: 0.1, moment: 0.1,"
              + " shear: 0.1, reserve: 0.1}, weak-link: {sacrificial: made, protected: stock,"
              + " margin: 90, breaks-at: 50 mm}, load: {shape: elliptic, force: 900 N, span: 0.8 m,"
              + " self-weight: yes, source: sample}, "
              + PLIES,
          "panel",
          "method: panel, designed: drawn, built: made, require: {stiffness: 0.1, moment: 0.1,"
              + " reserve: 1000}, load: {pressure: 5 kPa, span: 900 mm, breadth: 480 mm, source:"
              + " sample, support: simple}, "
              + PLIES,
          "clamped",
          "method: panel, designed: drawn, built: made, require: {stiffness: 0.1, moment: 0.1,"
              + " reserve: 1000}, load: {pressure: 5 kPa, span: 900 mm, breadth: 480 mm, source:"
              + " sample, support: clamped}, "
              + PLIES,
          "laminate",
          "method: laminate, designed: drawn, built: made, require: {stiffness: 0.1, strength:"
              + " 1000}, "
              + PLIES,
          "foil",
          "method: section, designed: foil-drawn, built: foil-made, require: {stiffness: 0.1,"
              + " moment: 0.1}, weak-link: {sacrificial: foil-made, protected: foil-stock, margin:"
              + " 90, breaks-at: 60 mm}, load: {shape: elliptic, force: 500 N, span: 0.74 m, source:"
              + " sample}, menu: [{material: light, most: 9}, {material: straight, most: 9}, {step:"
              + " 0.4 mm, dimension: spine, most: 99}]",
          "bolt",
          "method: bolt, designed: bolt-drawn, built: bolt-made, require: {strength: 1000}, menu:"
              + " [{step: 1 mm, dimension: diameter, most: 99}, {step: 1 mm, dimension: diameter,"
              + " most: 99}]");

  @Param({"beam", "panel", "clamped", "laminate", "foil", "bolt"})
  String method = "beam";

  private Ledger ledger = read("beam");

  @Setup
  public void read() {
    ledger = read(method);
  }

  private static Ledger read(String method) {
    String text = STUFF + "assessments: [{id: a, " + ASKED.get(method) + "}]\n";
    List<SourceFile> files = List.of(new SourceFile("kitwright.yaml", text));
    return LedgerReader.read(files, paths -> Map.of(), new Findings()).orElseThrow();
  }

  @Benchmark
  public Remedies.Answer tenThousand() {
    return Remedies.of(ledger.assessments().get(0), ledger, Remedies.Least.MASS);
  }
}
