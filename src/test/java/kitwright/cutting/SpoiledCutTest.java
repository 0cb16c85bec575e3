package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import kitwright.Sample;
import kitwright.cutting.solve.Effort;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * No plan is called proved best that leans on something spoilt: whatever value of the rack, of the
 * cut or of what takes from the rack cannot be read, or names nothing.
 */
class SpoiledCutTest {
  private static final String RACK =
      """
      stock:
        - {id: long, what: long board, size: 2000 x 100 x 20 mm, material: larch, worth: 20 EUR}
        - {id: short, what: short board, size: 1000 x 100 x 20 mm, pieces: 3, material: larch, worth: 9 EUR}
        - {id: kept, what: kept board, size: 950 x 100 x 20 mm, material: larch, worth: 1 EUR, keep-for: [rails]}
        - {id: foreign, what: dear board, size: 1100 x 100 x 20 mm, worth: 30 NZD, flaws: [{from: 400 mm, to: 460 mm}]}
      materials: [{id: larch, kind: timber, density: 560 kg/m3, source: test}]
      rates: [{on: 2026-02-01, from: NZD, to: EUR, rate: 0.5}]
      tasks:
        - {id: rails, what: Rails, takes: 1 d}
        - {id: other, what: Other, takes: 1 d, uses: [{stock: short, qty: 1}]}
      cuts:
        - {id: c, task: rails, from: [long, short, kept, foreign], kerf: 3 mm, trim: 2 mm, parts: [{mark: a, length: 900 mm, width: 90 mm, qty: 2, material: larch}]}
        - {id: done, from: [], kerf: 3 mm, parts: [], done: 2026-02-20, used: [{stock: short, pieces: 1}]}
      """;

  /** What no plan rests on: what things are called, and how long work takes. */
  private static final Set<String> WITHOUT_BEARING =
      Set.of(
          "stock.what",
          "tasks.id",
          "tasks.what",
          "tasks.takes",
          "cuts.parts.mark",
          "materials.id",
          "materials.kind",
          "materials.density",
          "materials.source");

  private record Spot(String key, String value, int from, int to) {}

  private static List<Spot> spots() {
    List<Spot> all = new ArrayList<>();
    gather(new Yaml(new LoaderOptions()).compose(new StringReader(RACK)), "", all);
    return all;
  }

  private static void gather(Node node, String key, List<Spot> all) {
    if (node instanceof MappingNode mapping) {
      mapping
          .getValue()
          .forEach(
              each ->
                  gather(
                      each.getValueNode(),
                      (key.isEmpty() ? "" : key + ".")
                          + ((ScalarNode) each.getKeyNode()).getValue(),
                      all));
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(each -> gather(each, key, all));
    } else if (node instanceof ScalarNode scalar) {
      all.add(
          new Spot(
              key,
              scalar.getValue(),
              scalar.getStartMark().getIndex(),
              scalar.getEndMark().getIndex()));
    }
  }

  private static Optional<CutPlan> plan(String yaml) {
    Optional<Ledger> ledger = Sample.read(yaml, new Findings());
    Optional<Cut> cut =
        ledger.flatMap(
            read -> read.cuts().stream().filter(each -> each.id().equals("c")).findFirst());
    return cut.filter(each -> CutFaults.spoiling(each, ledger.orElseThrow()).isEmpty())
        .map(
            each ->
                CutPlan.of(
                    each, Facts.of(ledger.orElseThrow(), Sample.TODAY), Effort.steps(5_000_000)));
  }

  @Test
  void nothingIsProvedBestByBeingSpoilt() {
    CutPlan whole = plan(RACK).orElseThrow();
    assertThat(whole.isProvedBest()).as(whole.quality() + whole.notes()).isTrue();
    Map<String, String> proved = new TreeMap<>();
    for (Spot spot : spots()) {
      if (WITHOUT_BEARING.contains(spot.key()) || spot.value().equals("done")) {
        continue;
      }
      for (String value : Set.of("\"?!\"", "-5")) {
        String text = RACK.substring(0, spot.from()) + value + RACK.substring(spot.to());
        plan(text)
            .filter(CutPlan::isProvedBest)
            .ifPresent(
                plan ->
                    proved.put(
                        spot.key() + ": " + spot.value() + " → " + value, plan.used().toString()));
      }
    }
    assertThat(proved).isEmpty();
  }
}
