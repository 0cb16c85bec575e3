package kitwright.drawing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import kitwright.drawing.Lettering.Anchor;
import kitwright.value.Days;

/**
 * Draws the work ahead like planks along a hull: time runs to the right, each band of work has its
 * rows, and a row holds as many pieces as have room. Arrows lead from a piece to what waits for it,
 * a broken tail shows its float, a thick edge the work that decides the end, and a numbered disc
 * stands on what an open matter will stop. Made to be read where a page shows it 860 px wide.
 */
public final class CourseDrawing {
  private static final double WIDTH = 1000;
  private static final double LEFT = 132;
  private static final double RIGHT = 16;
  private static final double TOP = 104;
  private static final double ROW = 48;
  private static final double STROKE = 14;
  private static final double BAND_GAP = 12;
  private static final double LINE = 21;
  private static final double DISC = 12;
  private static final int LONGEST_TAIL = 21;
  private static final Lettering NAME = Lettering.of(14.5);
  private static final Lettering SMALL = Lettering.of(14);

  private final Course course;
  private final double dayWidth;
  private final Map<String, Spot> spots = new LinkedHashMap<>();
  private final Map<String, Double> bandTops = new HashMap<>();
  private final Map<String, Integer> pinned = new HashMap<>();
  private double bottom = TOP + 8;

  /** Where a piece came to lie. */
  private record Spot(Course.Piece piece, double from, double to, double y) {}

  private CourseDrawing(Course course) {
    this.course = course;
    long days = Math.max(7, ChronoUnit.DAYS.between(course.today(), course.last()) + 1);
    this.dayWidth = (WIDTH - LEFT - RIGHT) / days;
    course.pins().forEach(pin -> pinned.merge(pin.piece(), 1, Integer::sum));
    course.bands().forEach(this::place);
  }

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
      double from = Math.min(labelled(piece), x(piece.first()));
      double end =
          Math.max(end(piece), labelled(piece) + lettering(piece).widthOf(label(piece))) + 16;
      int row = 0;
      while (row < ends.size() && ends.get(row) > from) {
        row++;
      }
      if (row == ends.size()) {
        ends.add(end);
      } else {
        ends.set(row, end);
      }
      double y = bottom + row * ROW + 24;
      spots.put(
          piece.id(),
          new Spot(
              piece, x(piece.first()), Math.max(x(piece.first()) + 4, xAfter(piece.finish())), y));
    }
    bottom += Math.max(1, ends.size()) * ROW + BAND_GAP;
  }

  private double end(Course.Piece piece) {
    LocalDate far = piece.ready().plusDays(LONGEST_TAIL);
    return xAfter(piece.slipsTo().isBefore(far) ? piece.slipsTo() : far);
  }

  private static String label(Course.Piece piece) {
    return NAME.fitted(piece.name(), WIDTH - LEFT - RIGHT - 90)
        + (piece.floatDays() > 0 ? "  +" + piece.floatDays() + " d" : "");
  }

  /** Where the name begins: over its piece, or further left where it would leave the picture. */
  private double labelled(Course.Piece piece) {
    double room = WIDTH - RIGHT - lettering(piece).widthOf(label(piece));
    int discs = pinned.getOrDefault(piece.id(), 0);
    return Math.max(
        LEFT, Math.min(x(piece.first()) + discs * 2 * DISC + (discs > 0 ? 4 : 0), room));
  }

  private Svg draw() {
    double height = bottom + 60 + keyHeight();
    Svg sheet = Svg.sheet(WIDTH, height, course.title(), course.description());
    sheet.words(LEFT, 24, course.title(), Lettering.of(19).bold());
    calendar(sheet);
    sky(sheet);
    bands(sheet);
    course.links().forEach(link -> link(sheet, link));
    spots.values().forEach(spot -> stroke(sheet, spot));
    spots.values().forEach(spot -> name(sheet, spot));
    pins(sheet);
    key(sheet, bottom + 34);
    return sheet;
  }

  private void calendar(Svg sheet) {
    LocalDate monday = course.today().plusDays(8L - course.today().getDayOfWeek().getValue());
    for (LocalDate day = monday; !day.isAfter(course.last()); day = day.plusWeeks(1)) {
      sheet.line(x(day), TOP - 16, x(day), bottom, Look.line(0.6).edged(Shade.PALE, 1.2));
      if (dayWidth * 7 > 34) {
        sheet.words(x(day) + 3, TOP - 20, String.valueOf(day.getDayOfMonth()), SMALL);
      }
    }
    LocalDate month = course.today();
    while (!month.isAfter(course.last())) {
      String name = Days.month(month);
      LocalDate next = month.plusMonths(1).withDayOfMonth(1);
      if (SMALL.bold().widthOf(name) <= x(next) - x(month) - 6) {
        sheet.words(x(month) + 3, TOP - 42, name, SMALL.bold());
      }
      if (!next.isAfter(course.last())) {
        sheet.line(x(next), TOP - 56, x(next), bottom, Look.line(0.9).edged(Shade.MIDDLE, 0.9));
      }
      month = next;
    }
    sheet.together(
        "Today, " + course.today(),
        in ->
            in.line(LEFT, TOP - 58, LEFT, bottom, Look.line(2))
                .words(LEFT - 6, TOP - 42, "today", SMALL.bold().anchored(Anchor.END)));
    course.launch().filter(day -> !day.isAfter(course.last())).ifPresent(day -> launch(sheet, day));
  }

  private void launch(Svg sheet, LocalDate day) {
    sheet.together(
        "Launch wanted on " + Days.named(day),
        in -> {
          in.line(x(day), TOP - 16, x(day), bottom + 2, Look.line(1.6).dashed(7.0, 3.0));
          plate(in, x(day), bottom + 16, "launch wanted", SMALL.bold().anchored(Anchor.END));
        });
  }

  private void sky(Svg sheet) {
    if (!course.sky().isEmpty()) {
      sheet.words(LEFT - 6, TOP - 5, "rain", SMALL.anchored(Anchor.END));
    }
    for (Course.Sky each : course.sky()) {
      if (!each.day().isAfter(course.last()) && !each.day().isBefore(course.today())) {
        Look look = Look.line(0.6).over(each.wet() ? Shade.DARK : Shade.WHITE);
        sheet.together(each.says(), in -> in.rectangle(x(each.day()), TOP - 13, dayWidth, 8, look));
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
                      new Svg.Point(from, TOP + 5),
                      new Svg.Point(from, TOP),
                      new Svg.Point(to, TOP),
                      new Svg.Point(to, TOP + 5)),
                  Look.line(2)));
    }
  }

  private void bands(Svg sheet) {
    for (Course.Band band : course.bands()) {
      double top = Objects.requireNonNull(bandTops.get(band.name()));
      sheet.line(8, top, WIDTH - RIGHT, top, Look.line(0.8).dashed(1.0, 3.0));
      List<String> lines = SMALL.bold().lines(band.name(), LEFT - 16, 2);
      for (int i = 0; i < lines.size(); i++) {
        sheet.words(8, top + 20 + i * 17, lines.get(i), SMALL.bold());
      }
    }
  }

  /** From the end of what comes before, down or up beside what waits, into its start. */
  private void link(Svg sheet, Course.Link link) {
    Spot before = spots.get(link.before());
    Spot after = spots.get(link.after());
    if (before == null || after == null || before.to() >= WIDTH - RIGHT) {
      return;
    }
    double y = before.y() + STROKE / 2;
    double to = after.from();
    double end = after.y() + STROKE / 2;
    double bend = Math.max(LEFT + 3, Math.max(before.to() - 2, to - 9));
    Look look = Look.line(1).edged(Shade.DARK, 1);
    if (Math.abs(y - end) < 1) {
      sheet.polyline(List.of(new Svg.Point(before.to(), y), new Svg.Point(to, end)), look);
    } else {
      sheet.polyline(
          List.of(
              new Svg.Point(Math.min(before.to(), bend), y),
              new Svg.Point(bend, y),
              new Svg.Point(bend, end),
              new Svg.Point(to, end)),
          look);
    }
    sheet.polygon(
        List.of(
            new Svg.Point(to, end),
            new Svg.Point(to - 6, end - 3.5),
            new Svg.Point(to - 6, end + 3.5)),
        Look.filled(Shade.DARK));
  }

  private void stroke(Svg sheet, Spot spot) {
    Course.Piece piece = spot.piece();
    double middle = spot.y() + STROKE / 2;
    double cured = Math.max(spot.to(), xAfter(piece.ready()));
    double tail = end(piece);
    sheet.together(
        says(piece),
        in -> {
          if (cured > spot.to()) {
            in.rectangle(
                spot.to(),
                spot.y() + 3,
                cured - spot.to(),
                STROKE - 6,
                Look.line(0.8).over(Shade.DOTTED));
          }
          if (tail > cured && piece.floatDays() > 0) {
            in.line(cured, middle, tail, middle, Look.line(1.4).dashed(2.0, 3.0));
            in.line(tail, middle - 4, tail, middle + 4, Look.line(1.4));
          }
          in.rectangle(spot.from(), spot.y(), spot.to() - spot.from(), STROKE, look(piece));
        });
  }

  private void name(Svg sheet, Spot spot) {
    plate(
        sheet, labelled(spot.piece()), spot.y() - 5, label(spot.piece()), lettering(spot.piece()));
  }

  /** Words on white, so that no line runs through them. */
  private static void plate(Svg sheet, double x, double foot, String words, Lettering set) {
    double width = set.widthOf(words);
    double left = set.anchor() == Anchor.END ? x - width : x;
    sheet
        .rectangle(
            left - 1,
            foot - set.size() * 0.86,
            width + 2,
            set.size() * 1.12,
            Look.filled(Shade.WHITE))
        .words(x, foot, words, set);
  }

  private static Lettering lettering(Course.Piece piece) {
    return piece.decides() ? NAME.bold() : NAME;
  }

  private static Look look(Course.Piece piece) {
    return Look.line(piece.decides() ? 3 : 1)
        .over(piece.kind() == Course.Kind.INDOORS ? Shade.PALE : Shade.SLANTED);
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
        int all = pinned.getOrDefault(pin.piece(), 1);
        double first = labelled(spot.piece()) - 4 - all * 2 * DISC + DISC;
        pin(
            sheet,
            pin,
            Math.max(first, LEFT - all * 2 * DISC + DISC) + before * 2 * DISC,
            spot.y() - 11);
      }
    }
  }

  private static void pin(Svg sheet, Course.Pin pin, double x, double y) {
    sheet.together(
        pin.says(),
        in ->
            in.circle(x, y, DISC, Look.filled(Shade.RUST).edged(Shade.WHITE, 1))
                .words(
                    x,
                    y + 5,
                    String.valueOf(pin.number()),
                    Lettering.of(14).bold().in(Shade.WHITE).anchored(Anchor.MIDDLE)));
  }

  private double keyHeight() {
    double height = 2 * LINE + 10;
    for (Course.Pin pin : course.pins()) {
      height += said(pin).size() * LINE + 3;
    }
    return height;
  }

  private static List<String> said(Course.Pin pin) {
    return SMALL.lines(pin.says(), WIDTH - LEFT - RIGHT - 30, 3);
  }

  private void key(Svg sheet, double top) {
    double y = top;
    sheet.rectangle(LEFT, y - 11, 26, STROKE, Look.line(3).over(Shade.WHITE));
    sheet.words(LEFT + 33, y, "decides the end", SMALL);
    sheet.rectangle(LEFT + 165, y - 11, 26, STROKE, Look.line(1).over(Shade.PALE));
    sheet.words(LEFT + 198, y, "indoors", SMALL);
    sheet.rectangle(LEFT + 275, y - 11, 26, STROKE, Look.line(1).over(Shade.SLANTED));
    sheet.words(LEFT + 308, y, "outdoors", SMALL);
    sheet.rectangle(LEFT + 395, y - 9, 26, 8, Look.line(0.8).over(Shade.DOTTED));
    sheet.words(LEFT + 428, y, "cures", SMALL);
    sheet.line(LEFT + 490, y - 4, LEFT + 516, y - 4, Look.line(1.4).dashed(2.0, 3.0));
    sheet.words(LEFT + 523, y, "float: +n working days", SMALL);
    y += LINE;
    sheet.rectangle(LEFT, y - 9, 26, 8, Look.line(0.6).over(Shade.DARK));
    sheet.words(LEFT + 33, y, "rain in the forecast", SMALL);
    sheet.polyline(
        List.of(
            new Svg.Point(LEFT + 195, y - 2),
            new Svg.Point(LEFT + 195, y - 8),
            new Svg.Point(LEFT + 221, y - 8),
            new Svg.Point(LEFT + 221, y - 2)),
        Look.line(2));
    sheet.words(LEFT + 228, y, "suitable weather for outdoor work", SMALL);
    sheet.line(LEFT + 490, y - 5, LEFT + 512, y - 5, Look.line(1).edged(Shade.DARK, 1));
    sheet.polygon(
        List.of(
            new Svg.Point(LEFT + 516, y - 5),
            new Svg.Point(LEFT + 510, y - 8.5),
            new Svg.Point(LEFT + 510, y - 1.5)),
        Look.filled(Shade.DARK));
    sheet.words(LEFT + 523, y, "what waits for it", SMALL);
    y += LINE + 10;
    for (Course.Pin pin : course.pins()) {
      pin(sheet, pin, LEFT + DISC, y - 5);
      for (String line : said(pin)) {
        sheet.words(LEFT + 28, y, line, SMALL);
        y += LINE;
      }
      y += 3;
    }
  }
}
