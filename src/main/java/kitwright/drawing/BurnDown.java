package kitwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Money over time: what was paid as a thick line, what was promised besides as a thin one, the
 * budget as a dashed level, the forecast as a hatched wedge from today to the end. Reads in black
 * and white.
 */
public final class BurnDown {
  private static final double WIDTH = 1000;
  private static final double HEIGHT = 520;
  private static final double LEFT = 92;
  private static final double RIGHT = 210;
  private static final double TOP = 64;
  private static final double BOTTOM = 56;
  private static final double LETTER = 14;

  private BurnDown() {}

  /** So much by a day; days are counted from the first. */
  public record Reading(double day, double paid, double committed) {}

  /**
   * The end of the forecast.
   *
   * @param low nine in ten builds end above it
   * @param high nine in ten end below it
   */
  public record End(double day, double low, double likely, double high) {}

  /** A mark below the axis. */
  public record Tick(double day, String word) {}

  /**
   * Draws readings in order of day, all amounts in one currency.
   *
   * @param contingency kept back beyond the budget; 0 where nothing is
   */
  public static Svg of(
      String title,
      String currency,
      List<Reading> readings,
      End end,
      double budget,
      double contingency,
      List<Tick> ticks) {
    double most = Math.max(budget + contingency, Math.max(end.high(), 1)) * 1.06;
    double acrossDay = (WIDTH - LEFT - RIGHT) / Math.max(1, end.day());
    double downMoney = (HEIGHT - TOP - BOTTOM) / most;
    Reading last = readings.get(readings.size() - 1);
    Svg svg =
        Svg.sheet(
            WIDTH,
            HEIGHT,
            title,
            String.format(
                Locale.ROOT,
                "Paid so far %.0f %s, with what is ordered %.0f; forecast %.0f, between %.0f and"
                    + " %.0f; budget %.0f.",
                last.paid(),
                currency,
                last.committed(),
                end.likely(),
                end.low(),
                end.high(),
                budget));
    svg.words(LEFT, TOP - 34, title, Lettering.of(LETTER + 5).bold());
    Axes axes = new Axes(acrossDay, downMoney);
    grid(svg, axes, most, currency, ticks);
    double now = axes.x(last.day());
    svg.polygon(
        List.of(
            new Svg.Point(now, axes.y(last.committed())),
            new Svg.Point(axes.x(end.day()), axes.y(end.high())),
            new Svg.Point(axes.x(end.day()), axes.y(end.low()))),
        Look.line(1).over(Shade.SLANTED));
    svg.line(
        now, axes.y(last.committed()), axes.x(end.day()), axes.y(end.likely()), Look.line(1.6));
    svg.line(
        LEFT, axes.y(budget), axes.x(end.day()), axes.y(budget), Look.line(2).dashed(10.0, 5.0));
    if (contingency > 0) {
      double kept = axes.y(budget + contingency);
      svg.line(LEFT, kept, axes.x(end.day()), kept, Look.line(1).dashed(3.0, 4.0));
    }
    stairs(svg, axes, readings);
    svg.line(now, TOP - 6, now, HEIGHT - BOTTOM, Look.line(1).dashed(2.0, 3.0));
    svg.words(now, TOP - 10, "today", Lettering.of(LETTER).anchored(Lettering.Anchor.MIDDLE));
    names(svg, axes, last, end, budget, contingency);
    return svg;
  }

  private record Axes(double acrossDay, double downMoney) {
    double x(double day) {
      return LEFT + day * acrossDay;
    }

    double y(double money) {
      return HEIGHT - BOTTOM - money * downMoney;
    }
  }

  private static void stairs(Svg svg, Axes axes, List<Reading> readings) {
    List<Svg.Point> paid = new ArrayList<>();
    List<Svg.Point> committed = new ArrayList<>();
    Reading before = new Reading(0, 0, 0);
    for (Reading each : readings) {
      paid.add(new Svg.Point(axes.x(each.day()), axes.y(before.paid())));
      paid.add(new Svg.Point(axes.x(each.day()), axes.y(each.paid())));
      committed.add(new Svg.Point(axes.x(each.day()), axes.y(before.committed())));
      committed.add(new Svg.Point(axes.x(each.day()), axes.y(each.committed())));
      before = each;
    }
    svg.polyline(committed, Look.line(1.3));
    svg.polyline(paid, Look.line(3.2));
  }

  private static void grid(Svg svg, Axes axes, double most, String currency, List<Tick> ticks) {
    double step = step(most);
    for (double money = 0; money <= most; money += step) {
      svg.line(
          LEFT,
          axes.y(money),
          WIDTH - RIGHT,
          axes.y(money),
          Look.line(0.4).edged(Shade.MIDDLE, 0.6));
      svg.words(
          LEFT - 8,
          axes.y(money) + 5,
          figure(money),
          Lettering.of(LETTER).anchored(Lettering.Anchor.END));
    }
    svg.words(LEFT - 8, TOP - 12, currency, Lettering.of(LETTER).anchored(Lettering.Anchor.END));
    for (Tick tick : ticks) {
      svg.line(
          axes.x(tick.day()),
          HEIGHT - BOTTOM,
          axes.x(tick.day()),
          HEIGHT - BOTTOM + 5,
          Look.line(1));
      svg.words(
          axes.x(tick.day()),
          HEIGHT - BOTTOM + 22,
          tick.word(),
          Lettering.of(LETTER).anchored(Lettering.Anchor.MIDDLE));
    }
  }

  /** One, two or five times a power of ten, so that there are four to ten steps. */
  private static double step(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(most / 4)));
    double times = most / 4 / power;
    return power * (times >= 5 ? 5 : times >= 2 ? 2 : 1);
  }

  private record Name(String words, double at, Lettering set) {}

  /** What each line is, with its figure; moved apart where lines lie close. */
  private static void names(
      Svg svg, Axes axes, Reading last, End end, double budget, double contingency) {
    Lettering set = Lettering.of(LETTER);
    List<Name> right = new ArrayList<>();
    if (contingency > 0) {
      right.add(
          new Name(
              "with reserve " + figure(budget + contingency), axes.y(budget + contingency), set));
    }
    right.add(new Name("budget " + figure(budget), axes.y(budget), set));
    right.add(new Name("8 ends in 10 (hatched):", axes.y(end.high()), set));
    right.add(
        new Name(
            "  " + figure(end.low()) + " to " + figure(end.high()), axes.y(end.high()) + 1, set));
    right.add(new Name("forecast " + figure(end.likely()), axes.y(end.likely()), set.bold()));
    right.sort(Comparator.comparingDouble(Name::at));
    double line = LETTER + 5;
    double y = Math.max(TOP, right.get(0).at() - line * (right.size() - 1) / 2);
    for (Name name : right) {
      svg.words(axes.x(end.day()) + 8, y + 5, name.words(), name.set());
      y += line;
    }
    plate(
        svg,
        axes.x(last.day()) + 8,
        axes.y(last.paid()) + 20,
        "paid (thick) " + figure(last.paid()),
        set);
    String ordered = "with ordered (thin) " + figure(last.committed());
    double x = axes.x(last.day());
    if (x - 8 - set.widthOf(ordered) >= LEFT) {
      plate(svg, x - 8, axes.y(last.committed()) - 10, ordered, set.anchored(Lettering.Anchor.END));
    } else {
      double below = axes.y(last.paid()) + 20 - (LETTER + 6);
      plate(svg, x + 8, Math.min(axes.y(last.committed()) + 20, below), ordered, set);
    }
  }

  private static String figure(double money) {
    return String.format(Locale.ROOT, "%,.0f", money).replace(',', '\u00a0');
  }

  /** Words on white, so that no line runs through them. */
  private static void plate(Svg svg, double x, double foot, String words, Lettering set) {
    double width = set.widthOf(words);
    double left = set.anchor() == Lettering.Anchor.END ? x - width : x;
    svg.rectangle(
            left - 2, foot - set.size(), width + 4, set.size() * 1.3, Look.filled(Shade.WHITE))
        .words(x, foot, words, set);
  }
}
