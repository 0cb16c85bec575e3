package kitwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import kitwright.Sample;
import kitwright.cutting.solve.Effort;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Whatever the records say of kerf, trim, flaws, grain, thickness, joints and worth: the second
 * look, which works from the records alone, lets every plan pass; and what is told adds up.
 */
class CutPlanProperties {
  private static String one(Random random, String... of) {
    return of[random.nextInt(of.length)];
  }

  private static String ledger(Random random) {
    StringBuilder out = new StringBuilder("stock:\n");
    int kinds = 1 + random.nextInt(4);
    for (int s = 0; s < kinds; s++) {
      int length = 400 + random.nextInt(2600);
      out.append("  - {id: s").append(s).append(", what: s, size: ").append(length).append(" x ");
      out.append(40 + random.nextInt(random.nextBoolean() ? 160 : 1200));
      out.append(one(random, " x 20", " x 9", ""))
          .append(" mm, pieces: ")
          .append(1 + random.nextInt(3));
      out.append(
          one(random, "", ", grain: along", ", grain: across", ", grain: any", ", grain: odd"));
      out.append(one(random, "", ", worth: 9.50 EUR", ", worth: 4 EUR/m", ", worth: 11 EUR/m2"));
      if (random.nextInt(3) == 0) {
        int from = random.nextInt(length - 100);
        out.append(", flaws: [{from: ").append(from).append(" mm, to: ");
        out.append(from + 5 + random.nextInt(90)).append(" mm, what: knot}]");
      }
      out.append("}\n");
    }
    out.append("cuts:\n  - {id: c, from: [");
    for (int s = 0; s < kinds; s++) {
      out.append(s == 0 ? "" : ", ").append('s').append(s);
    }
    out.append("], kerf: ").append(one(random, "3", "2.4", "0")).append(" mm");
    out.append(one(random, "", ", rip-kerf: 4.1 mm", ", rip-kerf: 1 mm"));
    out.append(one(random, "", ", trim: 10 mm", ", trim: 2 mm", ", trim: 8 mm, edge-trim: 0 mm"));
    out.append(one(random, "", ", first: along", ", first: across"));
    out.append(one(random, "", ", keep: 200 x 50 mm", ", keep-length: 300 mm"));
    out.append(one(random, "", ", stages: 2")).append(", parts: [");
    int parts = 1 + random.nextInt(4);
    for (int p = 0; p < parts; p++) {
      out.append(p == 0 ? "" : ", ").append("{mark: p").append(p).append(", length: ");
      out.append(80 + random.nextInt(1500)).append(one(random, "", ".3")).append(" mm, qty: ");
      out.append(1 + random.nextInt(4));
      out.append(random.nextInt(5) == 0 ? "" : ", width: " + (25 + random.nextInt(300)) + " mm");
      out.append(one(random, "", ", grain: along", ", grain: across", ", grain: any"));
      out.append(one(random, "", "", ", thickness: 9 mm", ", thickness: 18 mm"));
      out.append(one(random, "", "", ", oversize: 4 mm", ", priority: 2"));
      out.append(one(random, "", "", "", ", butt: yes", ", scarf: 8, thickness: 9 mm"));
      out.append(random.nextInt(6) == 0 ? ", from: [s0]" : "").append('}');
    }
    return out.append("]}\n")
        .toString()
        .replaceAll("(thickness: \\d+ mm)(.*?), thickness: 9 mm", "$1$2");
  }

  @Property(tries = 250, seed = "91")
  void everyPlanStandsUpToTheSecondLook(@ForAll long seed) {
    Random random = new Random(seed);
    Facts day = Facts.of(Sample.ledger(ledger(random)), Sample.TODAY);
    Cut cut = day.ledger().cuts().get(0);
    CutFaults.of(cut, day);
    CutPlan plan = CutPlan.of(cut, day, Effort.steps(400_000));
    plan.made()
        .forEach(
            (mark, made) ->
                assertThat(made + plan.missing().getOrDefault(mark, 0))
                    .isEqualTo(
                        cut.parts().stream()
                            .filter(part -> part.mark().equals(mark))
                            .findFirst()
                            .orElseThrow()
                            .qty()));
    Yield yield = Yield.of(plan.pieces());
    long all = plan.pieces().stream().mapToLong(piece -> piece.board().rect().area()).sum();
    assertThat(yield.all()).as("nothing lost").isEqualTo(all);
    assertThat(Steps.of(plan)).hasSameSizeAs(plan.pieces());
    Sample.ledger(Remnants.records(plan, Sample.TODAY));
  }
}
