package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.value.Days;

/**
 * Fires where something is said to have happened in the future, lies before the build began, or is
 * planned absurdly far off: for every key that is a day.
 */
public final class DateImpossible extends KeyRule {
  private static final int YEARS_AHEAD = 15;
  private static final int YEARS_BACK = 10;

  @Override
  void examine(Seen seen, Facts day, Findings out) {
    if (seen.key().isDay()) {
      days(seen.value()).forEach(each -> examine(seen, each, day, out));
    }
  }

  /** A day, or the ends of one stretch of days or of several. */
  private static Stream<LocalDate> days(Object value) {
    if (value instanceof LocalDate one) {
      return Stream.of(one);
    }
    Stream<?> stretches = value instanceof Days one ? Stream.of(one) : ((List<?>) value).stream();
    return stretches.map(Days.class::cast).flatMap(each -> Stream.of(each.first(), each.last()));
  }

  private void examine(Seen seen, LocalDate when, Facts day, Findings out) {
    LocalDate began = day.written().build().started();
    LocalDate today = day.day();
    if (seen.key().isHappened() && when.isAfter(today) && seen.key().toldBy().isEmpty()) {
      out.add(
          finding(
              seen,
              when,
              Severity.STOP,
              "is still to come; today is " + Days.named(today),
              "Correct the date, or take the entry out until it has happened."));
    } else if (when.isAfter(today.plusYears(YEARS_AHEAD))) {
      String what = "is more than " + YEARS_AHEAD + " years off";
      out.add(finding(seen, when, Severity.STOP, what, "Check the year."));
    } else if (when.isBefore(began.minusYears(YEARS_BACK))) {
      String what =
          "is more than "
              + YEARS_BACK
              + " years before the build began ("
              + Days.named(began)
              + ")";
      out.add(finding(seen, when, Severity.STOP, what, "Check the year."));
    } else if (when.isBefore(began) && !seen.key().traits().contains(Key.Trait.EVER)) {
      out.add(
          finding(
              seen,
              when,
              Severity.WARN,
              "is before the build began (" + Days.named(began) + ")",
              "Check the year; or write the day of the first order or payment as “started” of the"
                  + " build."));
    }
  }

  private Finding finding(Seen seen, LocalDate when, Severity severity, String what, String mend) {
    return new Finding(
        name(),
        severity,
        seen.at().of(seen.key().name()),
        seen.told(when) + " " + what + ".",
        "Ages, floats and sums built on it are false.",
        mend,
        List.of(seen.entry().named()));
  }
}
