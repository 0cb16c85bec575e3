package kitwright.drawing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One figure over days, as steps: it holds from the day it is read until the next. The first, the
 * last, the least and the greatest stand at their points in words.
 */
public final class OverDays {
  private static final double WIDTH = 900;
  private static final double HEIGHT = 380;
  private static final double LEFT = 40;
  private static final double RIGHT = 150;
  private static final double TOP = 84;
  private static final double BOTTOM = 60;
  private static final double LETTER = 15;

  private OverDays() {}

  /**
   * So much on a day.
   *
   * @param says the same in words
   */
  public record Reading(LocalDate day, double much, String says) {}

  /** Draws readings in order of day; at least one. */
  public static Svg of(String title, List<Reading> readings) {
    Reading first = readings.get(0);
    Reading last = readings.get(readings.size() - 1);
    Svg svg =
        Svg.sheet(
            WIDTH,
            HEIGHT,
            title,
            first.says() + " on " + first.day() + ", " + last.says() + " on " + last.day() + ".");
    svg.words(LEFT, 34, title, Lettering.of(LETTER + 4).bold());
    Axes axes = Axes.of(readings);
    svg.line(LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM, Look.line(1));
    svg.polyline(stairs(readings, axes), Look.line(3));
    for (Reading each : named(readings)) {
      svg.circle(axes.x(each), axes.y(each), 4, Look.filled(Shade.BLACK));
    }
    words(svg, axes, readings);
    day(svg, axes, first, Lettering.Anchor.START);
    if (axes.x(last) - axes.x(first) > 180) {
      day(svg, axes, last, Lettering.Anchor.MIDDLE);
    }
    return svg;
  }

  private record Axes(LocalDate first, double acrossDay, double low, double downOne) {
    static Axes of(List<Reading> readings) {
      double low = readings.stream().mapToDouble(Reading::much).min().orElse(0);
      double high = readings.stream().mapToDouble(Reading::much).max().orElse(0);
      LocalDate first = readings.get(0).day();
      long days = ChronoUnit.DAYS.between(first, readings.get(readings.size() - 1).day());
      return new Axes(
          first,
          (WIDTH - LEFT - RIGHT) / Math.max(1, days),
          low,
          (HEIGHT - TOP - BOTTOM - 30) / (high > low ? high - low : 1));
    }

    double x(Reading reading) {
      return LEFT + ChronoUnit.DAYS.between(first, reading.day()) * acrossDay;
    }

    double y(Reading reading) {
      return HEIGHT - BOTTOM - 30 - (reading.much() - low) * downOne;
    }
  }

  private static List<Svg.Point> stairs(List<Reading> readings, Axes axes) {
    List<Svg.Point> points = new ArrayList<>();
    Reading before = readings.get(0);
    for (Reading each : readings) {
      points.add(new Svg.Point(axes.x(each), axes.y(before)));
      points.add(new Svg.Point(axes.x(each), axes.y(each)));
      before = each;
    }
    return points;
  }

  /** Those that a reader looks for. */
  private static List<Reading> named(List<Reading> readings) {
    Reading least = readings.get(0);
    Reading most = least;
    for (Reading each : readings) {
      least = each.much() < least.much() ? each : least;
      most = each.much() > most.much() ? each : most;
    }
    return List.of(readings.get(0), least, most, readings.get(readings.size() - 1)).stream()
        .distinct()
        .toList();
  }

  /** Each beside its point, where no other words stand already; the last always at its right. */
  private static void words(Svg svg, Axes axes, List<Reading> readings) {
    Reading last = readings.get(readings.size() - 1);
    svg.words(axes.x(last) + 10, axes.y(last) + 5, last.says(), Lettering.of(LETTER).bold());
    double free = LEFT;
    for (Reading each : named(readings)) {
      Lettering set = Lettering.of(LETTER);
      double from = Math.max(LEFT, axes.x(each) - set.widthOf(each.says()) / 2);
      double to = from + set.widthOf(each.says());
      if (!each.equals(last) && from >= free && to < axes.x(last)) {
        double above = axes.y(each) - 12;
        svg.words(from, above < TOP - 20 ? axes.y(each) + 24 : above, each.says(), set);
        free = to + 12;
      }
    }
  }

  private static void day(Svg svg, Axes axes, Reading reading, Lettering.Anchor anchor) {
    svg.words(
        axes.x(reading),
        HEIGHT - BOTTOM + 24,
        String.format(Locale.ROOT, "%s", reading.day()),
        Lettering.of(LETTER).anchored(anchor));
  }
}
