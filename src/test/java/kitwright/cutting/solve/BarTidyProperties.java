package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Of the parts of any two bars, no sharing out leaves a longer piece than the plan's. */
class BarTidyProperties {
  private static final long REMNANT = 200;

  @Property(tries = 150, seed = "81")
  void noTwoBarsCouldLeaveALongerPiece(@ForAll long seed) {
    Random random = new Random(seed);
    List<BarPart> parts = new ArrayList<>();
    for (int p = 0; p < 4; p++) {
      parts.add(
          new BarPart(
              "p" + p, 150 + random.nextInt(500), 1 + random.nextInt(3), 1, Optional.empty()));
    }
    BarTask task =
        new BarTask(parts, List.of(new Bar("b", 1_000, 20, 10, List.of())), 3, 0, REMNANT);
    BarPlan plan = BarCutter.plan(task, Effort.steps(2_000_000));
    for (CutBar a : plan.bars()) {
      for (CutBar b : plan.bars()) {
        if (a.number() < b.number()) {
          assertThat(Math.max(left(a), left(b))).isGreaterThanOrEqualTo(most(a, b));
        }
      }
    }
  }

  private static long left(CutBar bar) {
    return room(bar.pieces());
  }

  private static long room(List<BarPiece> pieces) {
    long room = 1_000 - pieces.stream().mapToLong(piece -> piece.length() + 3).sum();
    return room >= REMNANT ? room : 0;
  }

  private static long most(CutBar a, CutBar b) {
    List<BarPiece> both = new ArrayList<>(a.pieces());
    both.addAll(b.pieces());
    long most = 0;
    for (int in = 0; in < 1 << both.size(); in++) {
      List<BarPiece> one = new ArrayList<>();
      List<BarPiece> other = new ArrayList<>();
      for (int i = 0; i < both.size(); i++) {
        ((in >> i & 1) == 1 ? one : other).add(both.get(i));
      }
      if (fits(one) && fits(other)) {
        most = Math.max(most, Math.max(room(one), room(other)));
      }
    }
    return most;
  }

  private static boolean fits(List<BarPiece> pieces) {
    return pieces.stream().mapToLong(piece -> piece.length() + 3).sum() <= 1_003;
  }
}
