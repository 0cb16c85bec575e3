package kitwright.drawing;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import kitwright.drawing.Lettering.Anchor;

/**
 * Draws the work ahead like planks along a hull: time runs to the right, each band of work has its
 * rows, and a row holds as many pieces as have room. Thin lines lead from a piece to what waits for
 * it, a broken tail shows its float, and a numbered pin stands on what an open matter will stop.
 */
public final class CourseDrawing {
  private static final double WIDTH = 1180;
  private static final double LEFT = 106;
  private static final double RIGHT = 24;
  private static final double TOP = 74;
  private static final double ROW = 36;
  private static final double STROKE = 8;
  private static final double BAND_GAP = 10;
  private static final double KEY_LINE = 14;
  private static final double LONGEST_NAME = 190;
  private static final int LONGEST_TAIL = 21;
  private static final Lettering NAME = Lettering.of(9.5);
  private static final Lettering SMALL = Lettering.of(9);

  private final Course course;
  private final double dayWidth;
  private final Map<String, Spot> spots = new HashMap<>();
  private final Map<String, Double> bandTops = new HashMap<>();
  private double bottom = TOP;

  /** Where a piece came to lie. */
  private record Spot(Course.Piece piece, double from, double to, double y) {}

  private CourseDrawing(Course course) {
    this.course = course;
    long days = Math.max(7, ChronoUnit.DAYS.between(course.today(), course.last()) + 1);
    this.dayWidth = (WIDTH - LEFT - RIGHT) / days;
    course.bands().forEach(this::place);
  }

  /** The drawing. */
  public static Svg of(Course course) {
    return new CourseDrawing(course).draw();
  }

  private double x(LocalDate day) {
    double days = ChronoUnit.DAYS.between(course.today(), day);
    return Math.max(LEFT, Math.min(WIDTH - RIGHT, LEFT + days * dayWidth));
  }

  private double xAfter(LocalDate day) {
    return x(day.plusDays(1));
  }

  private void place(Course.Band band) {
    bandTops.put(band.name(), bottom);
    List<Double> ends = new ArrayList<>();
    for (Course.Piece piece : band.pieces()) {
      double from = x(piece.first());
      double end = Math.max(end(piece), from + NAME.widthOf(label(piece))) + 14;
      int row = 0;
      while (row < ends.size() && ends.get(row) > from) {
        row++;
      }
      if (row == ends.size()) {
        ends.add(end);
      } else {
        ends.set(row, end);
      }
      double y = bottom + row * ROW + 20;
      spots.put(piece.id(), new Spot(piece, from, Math.max(from + 3, xAfter(piece.finish())), y));
    }
    bottom += Math.max(1, ends.size()) * ROW + BAND_GAP;
  }

  private double end(Course.Piece piece) {
    LocalDate far = piece.ready().plusDays(LONGEST_TAIL);
    return xAfter(piece.slipsTo().isBefore(far) ? piece.slipsTo() : far);
  }

  private static String label(Course.Piece piece) {
    return NAME.fitted(piece.name(), LONGEST_NAME)
        + (piece.floatDays() > 0 ? "  +" + piece.floatDays() + " d" : "");
  }

  private Svg draw() {
    double height = bottom + 34 + course.pins().size() * (KEY_LINE + 2) + 40;
    Svg sheet = Svg.sheet(WIDTH, height, course.title(), course.description());
    sheet.words(LEFT, 18, course.title(), Lettering.of(14).bold());
    calendar(sheet);
    sky(sheet);
    bands(sheet);
    course.links().forEach(link -> link(sheet, link));
    course.bands().stream()
        .flatMap(band -> band.pieces().stream())
        .forEach(piece -> piece(sheet, spot(piece)));
    pins(sheet);
    key(sheet, bottom + 24);
    return sheet;
  }

  private Spot spot(Course.Piece piece) {
    return Objects.requireNonNull(spots.get(piece.id()));
  }

  private void calendar(Svg sheet) {
    LocalDate monday = course.today().plusDays(8L - course.today().getDayOfWeek().getValue());
    for (LocalDate day = monday; !day.isAfter(course.last()); day = day.plusWeeks(1)) {
      sheet.line(x(day), TOP - 8, x(day), bottom, Look.line(0.5).edged(Shade.MIDDLE, 0.5));
      if (dayWidth * 7 > 24) {
        sheet.words(x(day) + 2, TOP - 12, String.valueOf(day.getDayOfMonth()), SMALL);
      }
    }
    LocalDate month = course.today();
    while (!month.isAfter(course.last())) {
      String name = month.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
      LocalDate next = month.plusMonths(1).withDayOfMonth(1);
      double room = x(next) - x(month) - 4;
      if (SMALL.widthOf(name) <= room) {
        sheet.words(x(month) + 2, TOP - 26, name, SMALL.bold());
      }
      if (!next.isAfter(course.last())) {
        sheet.line(x(next), TOP - 34, x(next), bottom, Look.line(0.9).edged(Shade.MIDDLE, 0.9));
      }
      month = next;
    }
    sheet.together(
        "Today, " + course.today(),
        in ->
            in.line(LEFT, TOP - 36, LEFT, bottom, Look.line(2))
                .words(LEFT - 4, TOP - 26, "today", SMALL.bold().anchored(Anchor.END)));
    course
        .launch()
        .filter(day -> !day.isAfter(course.last()))
        .ifPresent(
            day ->
                sheet.together(
                    "Launch wanted on " + day,
                    in ->
                        in.line(x(day), TOP - 20, x(day), bottom, Look.line(1.6).dashed(7.0, 3.0))
                            .words(
                                x(day) - 4,
                                bottom + 10,
                                "launch wanted",
                                SMALL.bold().anchored(Anchor.END))));
  }

  private void sky(Svg sheet) {
    for (Course.Sky each : course.sky()) {
      if (!each.day().isAfter(course.last()) && !each.day().isBefore(course.today())) {
        Look look = Look.line(0.6).over(each.wet() ? Shade.UPRIGHT : Shade.WHITE);
        sheet.together(each.says(), in -> in.rectangle(x(each.day()), TOP - 8, dayWidth, 6, look));
      }
    }
    for (Course.Window each : course.windows()) {
      double from = x(each.first());
      double to = xAfter(each.last());
      sheet.together(
          each.says(),
          in ->
              in.polyline(
                  List.of(
                      new Svg.Point(from, TOP + 3),
                      new Svg.Point(from, TOP),
                      new Svg.Point(to, TOP),
                      new Svg.Point(to, TOP + 3)),
                  Look.line(1.5)));
    }
  }

  private void bands(Svg sheet) {
    for (Course.Band band : course.bands()) {
      double top = Objects.requireNonNull(bandTops.get(band.name()));
      sheet.line(6, top + 2, WIDTH - RIGHT, top + 2, Look.line(0.5).dashed(1.0, 3.0));
      sheet.words(6, top + 16, SMALL.bold().fitted(band.name(), LEFT - 12), SMALL.bold());
    }
  }

  private void link(Svg sheet, Course.Link link) {
    Spot before = spots.get(link.before());
    Spot after = spots.get(link.after());
    if (before == null || after == null) {
      return;
    }
    double from = xAfter(before.piece().ready());
    double y = before.y() + STROKE / 2;
    double to = after.from();
    double bend = Math.max(from, to - 4);
    sheet.polyline(
        List.of(
            new Svg.Point(from, y),
            new Svg.Point(bend, y),
            new Svg.Point(to, after.y() + STROKE / 2)),
        Look.line(0.8).edged(Shade.MIDDLE, 0.8));
  }

  private void piece(Svg sheet, Spot spot) {
    Course.Piece piece = spot.piece();
    double middle = spot.y() + STROKE / 2;
    double cured = Math.max(spot.to(), xAfter(piece.ready()));
    double tail = end(piece);
    Lettering set = lettering(piece);
    boolean runsOut = spot.from() + set.widthOf(label(piece)) > WIDTH - 4;
    double x = runsOut ? WIDTH - 4 : spot.from();
    sheet.together(
        says(piece),
        in -> {
          if (cured > spot.to()) {
            in.rectangle(
                spot.to(),
                spot.y() + 2,
                cured - spot.to(),
                STROKE - 4,
                Look.line(0.6).over(Shade.DOTTED));
          }
          if (tail > cured && piece.floatDays() > 0) {
            in.line(cured, middle, tail, middle, Look.line(1).dashed(2.0, 2.5));
            in.line(tail, middle - 3, tail, middle + 3, Look.line(1));
          }
          in.rectangle(spot.from(), spot.y(), spot.to() - spot.from(), STROKE, look(piece.kind()));
          in.words(x, spot.y() - 3, label(piece), runsOut ? set.anchored(Anchor.END) : set);
        });
  }

  private static Lettering lettering(Course.Piece piece) {
    return piece.kind() == Course.Kind.DECIDING ? NAME.bold() : NAME;
  }

  private static Look look(Course.Kind kind) {
    return switch (kind) {
      case DECIDING -> Look.line(0.8).over(Shade.BLACK);
      case INDOORS -> Look.line(0.8).over(Shade.PALE);
      case OUTDOORS -> Look.line(0.8).over(Shade.SLANTED);
    };
  }

  private static String says(Course.Piece piece) {
    return piece.name()
        + ": "
        + piece.first()
        + " to "
        + piece.finish()
        + (piece.ready().isAfter(piece.finish()) ? ", cured " + piece.ready() : "")
        + ", float "
        + piece.floatDays()
        + " working days";
  }

  private void pins(Svg sheet) {
    Map<String, Integer> on = new HashMap<>();
    for (Course.Pin pin : course.pins()) {
      Spot spot = spots.get(pin.piece());
      if (spot != null) {
        int before = on.merge(pin.piece(), 1, Integer::sum) - 1;
        pin(sheet, pin, spot.from() - 1 + before * 15, spot.y() + STROKE + 6);
      }
    }
  }

  private static void pin(Svg sheet, Course.Pin pin, double x, double y) {
    sheet.together(
        pin.says(),
        in ->
            in.polygon(
                    List.of(
                        new Svg.Point(x, y - 7),
                        new Svg.Point(x + 7, y),
                        new Svg.Point(x, y + 7),
                        new Svg.Point(x - 7, y)),
                    Look.filled(Shade.RUST).edged(Shade.BLACK, 0.6))
                .words(
                    x,
                    y + 2.8,
                    String.valueOf(pin.number()),
                    Lettering.of(7.5).bold().in(Shade.WHITE).anchored(Anchor.MIDDLE)));
  }

  private void key(Svg sheet, double top) {
    double y = top;
    sample(sheet, LEFT, y, Course.Kind.DECIDING, "decides the end");
    sample(sheet, LEFT + 130, y, Course.Kind.INDOORS, "indoors");
    sample(sheet, LEFT + 220, y, Course.Kind.OUTDOORS, "outdoors");
    sheet.rectangle(LEFT + 320, y - 6, 20, 4, Look.line(0.6).over(Shade.DOTTED));
    sheet.words(LEFT + 345, y, "cures", SMALL);
    sheet.line(LEFT + 400, y - 4, LEFT + 420, y - 4, Look.line(1).dashed(2.0, 2.5));
    sheet.words(LEFT + 425, y, "float, in working days as +n d", SMALL);
    sheet.rectangle(LEFT + 600, y - 7, 12, 6, Look.line(0.6).over(Shade.UPRIGHT));
    sheet.words(LEFT + 617, y, "rain in the forecast", SMALL);
    sheet.polyline(
        List.of(
            new Svg.Point(LEFT + 730, y - 1),
            new Svg.Point(LEFT + 730, y - 5),
            new Svg.Point(LEFT + 750, y - 5),
            new Svg.Point(LEFT + 750, y - 1)),
        Look.line(1.5));
    sheet.words(LEFT + 755, y, "fit weather for outdoor work", SMALL);
    y += KEY_LINE + 8;
    for (Course.Pin pin : course.pins()) {
      pin(sheet, pin, LEFT + 8, y - 3);
      sheet.words(LEFT + 22, y, SMALL.fitted(pin.says(), WIDTH - LEFT - RIGHT - 24), SMALL);
      y += KEY_LINE + 2;
    }
  }

  private static void sample(Svg sheet, double x, double y, Course.Kind kind, String says) {
    sheet.rectangle(x, y - 8, 20, STROKE, look(kind)).words(x + 25, y, says, SMALL);
  }
}
