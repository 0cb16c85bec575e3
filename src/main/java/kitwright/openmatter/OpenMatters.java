package kitwright.openmatter;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import kitwright.ledger.Facts;

/**
 * Every open matter, most pressing first.
 *
 * @param all in that order
 */
public record OpenMatters(List<OpenMatter> all) {
  private static final Facts.Fact<OpenMatters> FACT = OpenMatters::of;

  public OpenMatters {
    all = List.copyOf(all);
  }

  public static OpenMatters on(Facts day) {
    return FACT.on(day);
  }

  private static OpenMatters of(Facts now) {
    Needed needed = Needed.on(now);
    WaitingMatters waiting = new WaitingMatters(now, needed);
    GroundMatters ground = new GroundMatters(now, needed);
    return new OpenMatters(
        Stream.of(
                new SignatureMatters(now, needed).all().stream(),
                new ShortageMatters(now, needed).all().stream(),
                waiting.claims(),
                waiting.deliveries(),
                waiting.orders(),
                waiting.counts(),
                waiting.unopened(),
                ground.tools(),
                ground.absent(),
                ground.repairs(),
                ground.weather())
            .flatMap(matters -> matters)
            .sorted(OpenMatter.MOST_PRESSING)
            .toList());
  }

  /** Those in which one must act on a day or before, most pressing first. */
  public List<OpenMatter> actingBy(LocalDate day) {
    return all.stream().filter(matter -> matter.isToActBy(day)).toList();
  }
}
