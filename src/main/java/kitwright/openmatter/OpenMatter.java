package kitwright.openmatter;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.network.Slack;

/**
 * Something open.
 *
 * @param record the record that it is about, as {@code kind id}
 * @param what what is open, a few words without a full stop
 * @param stop the work that it will stop; empty where no open task waits for it
 * @param waitsFor who has to act, or what has to happen
 * @param next what to do next, one imperative without a full stop
 * @param actBy the last day on which acting helps, where it lies before the stop
 * @param expected the day for which somebody has said that it will be settled
 */
public record OpenMatter(
    Sort sort,
    String record,
    String what,
    Optional<Stop> stop,
    String waitsFor,
    String next,
    Optional<LocalDate> actBy,
    Optional<LocalDate> expected) {

  /** Most pressing first: by the last day to act, then by float, then by record. */
  public static final Comparator<OpenMatter> MOST_PRESSING =
      Comparator.comparing(OpenMatter::lastDay)
          .thenComparing(matter -> matter.stop().map(Stop::slack).map(Slack::days).orElse(1e9))
          .thenComparing(OpenMatter::sort)
          .thenComparing(OpenMatter::record)
          .thenComparing(OpenMatter::what);

  /** What kind of matter. */
  public enum Sort {
    SIGN_OFF("signature"),
    ASSESSMENT("assessment"),
    SHORTAGE("shortage"),
    LACK("to get"),
    COUNT("to count"),
    CLAIM("claim"),
    DELIVERY("delivery"),
    ORDER("order"),
    TOOL("tool"),
    WEATHER("weather");

    private final String word;

    Sort(String word) {
      this.word = word;
    }

    /** As a list shows it. */
    public String word() {
      return word;
    }
  }

  /**
   * The work that a matter will stop: of several tasks the one that has to start first.
   *
   * @param task its id
   * @param what its name
   * @param from the day on which the work could go on, and cannot while the matter is open
   * @param neededBy the last day on which the work can start without moving the end of the plan
   * @param slack working time from the one to the other
   */
  public record Stop(String task, String what, LocalDate from, LocalDate neededBy, Slack slack) {
    /** Working days of float, in full. */
    public long floatDays() {
      return slack.wholeDays();
    }
  }

  /** The last day on which acting helps; far off where nothing waits. */
  public LocalDate lastDay() {
    return Stream.of(actBy, stop.map(Stop::neededBy))
        .flatMap(Optional::stream)
        .min(Comparator.naturalOrder())
        .orElse(LocalDate.MAX);
  }

  /** Whether one must act on a day, or should have before. */
  public boolean isToActBy(LocalDate day) {
    return !lastDay().isAfter(day);
  }

  /** Whether there is a last day to act at all. */
  public boolean isDated() {
    return actBy.isPresent() || stop.isPresent();
  }

  /** The day by which it has to be settled so that the end of the plan does not move. */
  public Optional<LocalDate> neededBy() {
    return stop.map(Stop::neededBy);
  }

  /** Whether it is expected to be settled only after the work has to start. */
  public boolean comesTooLate() {
    return expected.isPresent()
        && stop.filter(at -> expected.get().isAfter(at.neededBy())).isPresent();
  }
}
