package kitwright.network;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A network drawn at random, without loops.
 *
 * @param tasks some with a cure, a headway, a day before which they cannot begin
 * @param links pointing from earlier numbers to later ones
 */
record RandomPlan(List<Activity> tasks, List<Link> links) {
  /** Plain tasks: durations and lags only. */
  static RandomPlan plain(long seed) {
    return drawn(new Random(seed), 0);
  }

  /** Tasks with cures, begun and finished ones, and days that hold them. */
  static RandomPlan lively(long seed) {
    return drawn(new Random(seed), 3);
  }

  Network network() {
    return Network.of(tasks, links);
  }

  /** A link that closes no loop, between two tasks drawn at random. */
  Link another(long seed) {
    Random random = new Random(seed);
    int later = 1 + random.nextInt(tasks.size() - 1);
    return new Link(name(random.nextInt(later)), name(later), random.nextInt(3) * 100L);
  }

  private static RandomPlan drawn(Random random, int liveliness) {
    int size = 2 + random.nextInt(30);
    List<Activity> tasks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Activity task = Works.of(name(i), Estimate.fixed(random.nextInt(1500)));
      if (random.nextInt(10) < liveliness) {
        task = Works.curing(task, Duration.ofMinutes(random.nextInt(4000)));
      }
      if (random.nextInt(10) < liveliness) {
        task = task.heldUntil(Calendars.MONDAY.plusDays(random.nextInt(30)));
      }
      tasks.add(random.nextInt(20) < liveliness ? Works.at(task, headway(random)) : task);
      for (int k = random.nextInt(4); k > 0 && i > 0; k--) {
        long lag = random.nextInt(3) == 0 ? random.nextInt(500) : 0;
        links.add(new Link(name(random.nextInt(i)), name(i), lag));
      }
    }
    return new RandomPlan(tasks, links);
  }

  private static Headway headway(Random random) {
    var before = Calendars.MONDAY.minusDays(1 + random.nextInt(9));
    return random.nextBoolean()
        ? new Headway.Begun(before, random.nextInt(5) / 4.0)
        : new Headway.Done(before.minusDays(2), before);
  }

  /** Scrambled, so that the order of ids is not the order of work. */
  static String name(int i) {
    return "t" + (i * 37) % 101 + "-" + i;
  }
}
