package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A claim that nobody can make more parts is held against trying everything. */
class MostPartsTest {

  @Test
  void nobodyMakesMoreThanAPlanThatClaimsTheMost() {
    int claims = 0;
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      List<BarPart> parts = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        parts.add(new BarPart("P" + i, 50L + random.nextInt(400), 2, 1, Optional.empty()));
      }
      long kerf = random.nextInt(20);
      List<Bar> stock =
          List.of(
              new Bar("a", 400L + random.nextInt(400), 1, 3, List.of()),
              new Bar("b", 300L + random.nextInt(400), 1, 2, List.of()));
      BarPlan plan =
          BarCutter.plan(new BarTask(parts, stock, kerf, 0, 1), Effort.steps(20_000_000));
      int missing = plan.missing().stream().mapToInt(Shortfall::missing).sum();
      if (missing > 0 && plan.outcome().mostParts()) {
        claims++;
        long first = stock.get(0).length() + kerf;
        long second = stock.get(1).length() + kerf;
        assertThat(10 - missing).as("seed %d", seed).isEqualTo(most(parts, 0, kerf, first, second));
      }
    }
    assertThat(claims).isGreaterThan(200);
  }

  private static int most(List<BarPart> parts, int at, long kerf, long first, long second) {
    if (at == parts.size()) {
      return 0;
    }
    long taking = parts.get(at).length() + kerf;
    int best = 0;
    for (int a = 0; a <= 2 && a * taking <= first; a++) {
      for (int b = 0; a + b <= 2 && b * taking <= second; b++) {
        int rest = most(parts, at + 1, kerf, first - a * taking, second - b * taking);
        best = Math.max(best, a + b + rest);
      }
    }
    return best;
  }
}
