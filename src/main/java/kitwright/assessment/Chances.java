package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.Resampled;
import kitwright.mechanics.load.Cantilever;
import kitwright.mechanics.scatter.Chance;
import kitwright.mechanics.scatter.Scatter;
import kitwright.mechanics.scatter.Scattered;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * How likely the built part is below the designed one, and the protected part fails first, where
 * materials state how they scatter. Moduli and strengths are lognormal about their means, each
 * piece of its own; a panel or laminate is taken as a strip along its span.
 */
public final class Chances {
  private static final int SAMPLES = 100_000;
  private static final long SEED = 20_260_329;

  private Chances() {}

  /**
   * Lines to tell.
   *
   * @param what in words: “built less stiff than designed”
   */
  public record Line(String what, Chance chance) {}

  /**
   * What came of it.
   *
   * @param notes what was left out, and why
   */
  public record Told(List<Line> lines, List<String> notes) {
    public Told {
      lines = List.copyOf(lines);
      notes = List.copyOf(notes);
    }
  }

  /** Samples the assessment; the same ledger gives the same answer. */
  public static Told of(Assessment assessment, Ledger ledger) {
    List<Line> lines = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    Stuffs stuffs = new Stuffs(ledger, Factors.of(assessment), assessment.sources());
    Optional<Resampled> designed = sampled(assessment.designed(), ledger, stuffs);
    Optional<Resampled> built = sampled(assessment.built(), ledger, stuffs);
    if (designed.isPresent() && built.isPresent()) {
      below(designed.get(), built.get(), ledger, assessment, lines, notes);
    } else {
      notes.add(assessment.id() + " is no cross-section that could be sampled");
    }
    assessment.weakLink().ifPresent(link -> order(assessment, link, ledger, stuffs, lines));
    return new Told(lines, notes);
  }

  private static Optional<Resampled> sampled(Optional<Ref> ref, Ledger ledger, Stuffs stuffs) {
    return ref.flatMap(ledger::section)
        .flatMap(section -> new Parts(stuffs, new Findings()).of(section))
        .map(part -> Resampled.of(part.beam()));
  }

  private static void below(
      Resampled designed,
      Resampled built,
      Ledger ledger,
      Assessment assessment,
      List<Line> lines,
      List<String> notes) {
    Scatter scatter = scatter(List.of(designed, built), ledger, assessment, notes);
    int from = 2 * designed.materials().size();
    lines.add(
        new Line(
            "built less stiff than designed",
            scatter.chance(v -> built.stiffness(v, from) < designed.stiffness(v, 0))));
    lines.add(
        new Line(
            "built fails at a smaller moment than designed",
            scatter.chance(v -> built.moment(v, from) < designed.moment(v, 0))));
    lines.add(
        new Line(
            "built fails at a smaller shear force than designed",
            scatter.chance(v -> built.shear(v, from) < designed.shear(v, 0))));
  }

  /** The protected part stands at the support, the sacrificial one at the place of the break. */
  private static void order(
      Assessment assessment,
      Assessment.WeakLink link,
      Ledger ledger,
      Stuffs stuffs,
      List<Line> lines) {
    Optional<Resampled> weak = sampled(Optional.of(link.sacrificial()), ledger, stuffs);
    Optional<Resampled> safe = sampled(Optional.of(link.protectedPart()), ledger, stuffs);
    Optional<Cantilever> load =
        assessment
            .load()
            .flatMap(some -> BeamLoad.of(some, new ArrayList<>()))
            .flatMap(BeamLoad::cantilever);
    if (weak.isEmpty() || safe.isEmpty() || load.isEmpty()) {
      return;
    }
    double at = link.breaksAt().map(Quantity::base).orElse(0.0);
    var here = load.get().at(at);
    var root = load.get().at(0);
    int from = 2 * weak.get().materials().size();
    Scatter scatter =
        scatter(List.of(weak.get(), safe.get()), ledger, assessment, new ArrayList<>());
    lines.add(
        new Line(
            "the protected part " + link.protectedPart() + " fails first",
            scatter.chance(
                v ->
                    reserve(safe.get(), v, from, root.moment(), root.shear())
                        < reserve(weak.get(), v, 0, here.moment(), here.shear()))));
  }

  private static double reserve(
      Resampled part, double[] shares, int from, double moment, double shear) {
    return Math.min(
        part.moment(shares, from) / Math.abs(moment), part.shear(shares, from) / Math.abs(shear));
  }

  /** For each part a share of modulus, then a share of strength, for each of its materials. */
  private static Scatter scatter(
      List<Resampled> parts, Ledger ledger, Assessment assessment, List<String> notes) {
    List<Scattered> all = new ArrayList<>();
    for (Resampled part : parts) {
      for (int twice = 0; twice < 2; twice++) {
        for (BeamMaterial material : part.materials()) {
          all.add(
              new Scattered(
                  1,
                  variation(material.name(), ledger, assessment, notes),
                  Scattered.Shape.LOGNORMAL));
        }
      }
    }
    return new Scatter(all, SAMPLES, SEED);
  }

  private static double variation(
      String id, Ledger ledger, Assessment assessment, List<String> notes) {
    Optional<Double> stated =
        ledger
            .material(new Ref(id, assessment.at().record()))
            .map(Material::properties)
            .flatMap(all -> Optional.ofNullable(all.get(kitwright.ledger.MaterialProperty.SCATTER)))
            .map(Quantity::base)
            .filter(share -> share < 1);
    String note = id + " does not state its scatter, and is taken as it is";
    if (stated.isEmpty() && !notes.contains(note)) {
      notes.add(note);
    }
    return stated.orElse(0.0);
  }
}
