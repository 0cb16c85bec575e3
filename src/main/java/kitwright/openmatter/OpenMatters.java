package kitwright.openmatter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.network.Plan;

/**
 * Every open matter, most pressing first.
 *
 * @param all in that order
 */
public record OpenMatters(List<OpenMatter> all) {
  private static final Facts.Fact<OpenMatters> FACT = new Work();

  public OpenMatters {
    all = List.copyOf(all);
  }

  /** The open matters on the day. */
  public static OpenMatters on(Facts day) {
    return FACT.on(day);
  }

  private static final class Work extends Facts.Fact<OpenMatters> {
    @Override
    protected OpenMatters work(Facts day) {
      return OpenMatters.of(day);
    }
  }

  private static OpenMatters of(Facts now) {
    Stops stops = new Stops(Plan.on(now));
    WaitingMatters waiting = new WaitingMatters(now, stops);
    GroundMatters ground = new GroundMatters(now, stops);
    return new OpenMatters(
        Stream.of(
                new SignatureMatters(now, stops).all().stream(),
                new ShortageMatters(now, stops).all().stream(),
                waiting.claims(),
                waiting.deliveries(),
                waiting.orders(),
                waiting.counts(),
                ground.tools(),
                ground.weather())
            .flatMap(matters -> matters)
            .sorted(OpenMatter.MOST_PRESSING)
            .toList());
  }

  /** What will stop a task, most pressing first. */
  public List<OpenMatter> stopping(String task) {
    return all.stream()
        .filter(matter -> matter.stop().filter(stop -> stop.task().equals(task)).isPresent())
        .toList();
  }

  /** The matter of a record, as {@code shortage short-2026-01-22-stave-s}. */
  public Optional<OpenMatter> of(String record) {
    return all.stream().filter(matter -> matter.record().equals(record)).findFirst();
  }

  /** Those that stop work on a day or before, if nothing is done. */
  public List<OpenMatter> stoppingBy(LocalDate day) {
    return all.stream()
        .filter(matter -> matter.stop().filter(stop -> !stop.from().isAfter(day)).isPresent())
        .toList();
  }
}
