package kitwright.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Bending;
import kitwright.mechanics.beam.FoilSection;
import kitwright.mechanics.beam.FoilShape;
import kitwright.mechanics.beam.LayeredSection;
import kitwright.mechanics.beam.Made;
import kitwright.mechanics.beam.Resampled;
import kitwright.mechanics.beam.Section;
import kitwright.mechanics.beam.Sense;
import kitwright.mechanics.beam.Strip;
import kitwright.mechanics.laminate.Lamina;
import kitwright.mechanics.laminate.Laminate;
import kitwright.mechanics.laminate.Plies;
import kitwright.mechanics.laminate.Ply;
import kitwright.mechanics.laminate.Stiffness;
import kitwright.mechanics.remedy.Addition;
import kitwright.mechanics.remedy.Remedy;
import kitwright.mechanics.scatter.Scatter;
import kitwright.mechanics.scatter.Scattered;
import kitwright.mechanics.scatter.Scattered.Shape;
import org.ejml.simple.SimpleMatrix;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One section assessed, scatter, remedy search, and inversion against a reference library. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
public class MechanicsBenchmark {
  private final BeamMaterial spruce =
      BeamMaterial.of("spruce", Kind.TIMBER, 425, 11e9, 7e8, Made.ofTimber(70e6, 38e6, 8e6));
  private final BeamMaterial glass =
      BeamMaterial.of("glass", Kind.LAMINATE, 1700, 15e9, 4e9, Made.strength(250e6, 200e6, 80e6));
  private final BeamMaterial foam = Made.core("foam", 80, 7e7, 2.7e7, Made.strength(2e6, 1e6, 1e6));
  private final Section foil =
      new FoilSection(
              new FoilShape(0.4, 0.12).outline(),
              List.of(new FoilSection.Ply(glass, 2e-3)),
              Optional.of(foam),
              List.of(new FoilSection.Member("spine", spruce, 0.08, 0.16)))
          .section();
  private final Stiffness stiffness = laminate().stiffness();
  private final SimpleMatrix matrix = new SimpleMatrix(Plies.rows(stiffness));

  private static Laminate laminate() {
    var stuff = new Lamina("graphite", 181e9, 10.3e9, 7.17e9, 0.28, 1600, Optional.empty());
    var plies = new ArrayList<Ply>();
    for (double angle : new double[] {0, 30, -45, 90}) {
      plies.add(new Ply(stuff, 5e-3, angle));
    }
    return new Laminate(plies);
  }

  private Section box(double glassThickness) {
    var wall = Strip.of(0.024, spruce);
    return LayeredSection.ofWidth(0.096)
        .layer(glass, glassThickness)
        .layer(spruce, 0.024)
        .strips(0.048, List.of(wall, Strip.gap(0.048), wall))
        .layer(spruce, 0.024)
        .layer(glass, glassThickness)
        .section();
  }

  private static double assess(Section section) {
    var bending = Bending.of(section);
    return bending.moment(Sense.SAGGING).value().orElse(0)
        + bending.moment(Sense.HOGGING).value().orElse(0)
        + bending.shear().value().orElse(0)
        + bending.stiffness();
  }

  @Benchmark
  public double layeredSection() {
    return assess(box(0.002));
  }

  @Benchmark
  public double foilSection() {
    return assess(foil);
  }

  @Benchmark
  public double scatterHundredThousand() {
    var built = new Scattered(1, 0.15, Shape.LOGNORMAL);
    return new Scatter(List.of(built, built, built, built), 100_000, 7)
        .chance(v -> v[0] * v[1] < v[2] * v[3])
        .probability();
  }

  /** Two sections, moduli and strengths of every material scattering: what --scatter does. */
  @Benchmark
  public double scatterSections() {
    var designed = Resampled.of(box(0.002));
    var built = Resampled.of(box(0.0018));
    var share = new Scattered(1, 0.15, Shape.LOGNORMAL);
    int from = 2 * designed.materials().size();
    var shares = java.util.Collections.nCopies(from + 2 * built.materials().size(), share);
    return new Scatter(shares, 100_000, 7)
        .chance(v -> built.moment(v, from) < designed.moment(v, 0))
        .probability();
  }

  @Benchmark
  public int remedyTenThousand() {
    var line = new Addition("ply", 9, 0.3);
    var menu = new Remedy(List.of(line, line, line, line));
    // Nothing serves, so that all ten thousand are assessed.
    return menu.cheapest(n -> assess(box(0.001 * (1 + n[0] + n[1] + n[2] + n[3]))) < 0)
        .map(Remedy.Found::tried)
        .orElse(0);
  }

  @Benchmark
  public Stiffness inversion() {
    return stiffness.inverse();
  }

  @Benchmark
  public SimpleMatrix inversionByReference() {
    return matrix.invert();
  }
}
