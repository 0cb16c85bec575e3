package kitwright.report.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.assessment.part.Sketch;
import kitwright.assessment.sheet.Print;
import kitwright.drawing.Lettering;
import kitwright.drawing.Lettering.Anchor;
import kitwright.drawing.Look;
import kitwright.drawing.Shade;
import kitwright.drawing.Svg;
import kitwright.ledger.Assessment;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;

/** Cross-sections side by side, to one scale, each material with a hatching of its own. */
public final class SectionDrawing {
  private static final double WIDE = 760;
  private static final double ROOM = 340;
  private static final double TALL = 250;
  private static final double TOP = 74;
  private static final double TITLE = 16;

  /** A plate is far wider than thick: no more of its width is drawn than this times thickness. */
  private static final double WIDTHS = 12;

  private static final Shade[] HATCHES = {
    Shade.PALE, Shade.SLANTED, Shade.DOTTED, Shade.CROSSED, Shade.UPRIGHT, Shade.MIDDLE, Shade.DARK
  };

  private final Assessment assessment;
  private final List<Sketch> sketches;
  private final Map<String, Shade> hatch = new LinkedHashMap<>();
  private final double scale;

  /** How many lines the longest title takes, two at most. */
  private final int titleLines;

  private SectionDrawing(Assessment assessment, List<Sketch> sketches) {
    this.assessment = assessment;
    this.sketches = sketches;
    for (Sketch sketch : sketches) {
      for (Sketch.Piece piece : sketch.pieces()) {
        hatch.putIfAbsent(piece.material(), HATCHES[hatch.size() % HATCHES.length]);
      }
    }
    double widest = sketches.stream().mapToDouble(this::shownWidth).max().orElse(1);
    double tallest = sketches.stream().mapToDouble(Sketch::height).max().orElse(1);
    scale = Math.min(ROOM / widest, TALL / tallest);
    titleLines = sketches.stream().mapToInt(each -> title(each).size()).max().orElse(1);
  }

  /** The drawing as SVG text. */
  public static String of(Assessment assessment, List<Sketch> sketches) {
    return new SectionDrawing(assessment, sketches).draw(assessment.id());
  }

  /** How much of its width is drawn. */
  private double shownWidth(Sketch sketch) {
    double tallest = sketches.stream().mapToDouble(Sketch::height).max().orElse(1);
    return Math.min(sketch.width(), WIDTHS * tallest);
  }

  private String draw(String id) {
    int rows = (sketches.size() + 1) / 2;
    double band = rowHeight() + 74 + TITLE * titleLines;
    double height = TOP + rows * band + 26 * hatch.size() + 24;
    Svg svg =
        Svg.sheet(
            WIDE,
            height,
            "Sections of assessment " + id,
            "Cross-sections to one scale, millimetres, each material with its own hatching.");
    svg.words(20, 28, "Sections of " + id, Lettering.of(18).bold());
    svg.words(20, 50, "all to one scale", Lettering.of(13).in(Shade.DARK));
    double left = WIDE - 30 - bar() * scale;
    svg.rectangle(left, 44, bar() * scale, 6, Look.filled(Shade.BLACK));
    svg.words(left, 38, Print.number(bar()) + " mm", Lettering.of(13).bold());
    for (int i = 0; i < sketches.size(); i++) {
      int row = i / 2;
      place(svg, sketches.get(i), 20 + (i % 2) * (ROOM + 40), TOP + row * band);
    }
    legend(svg, TOP + rows * band + 12);
    return svg.text();
  }

  private double rowHeight() {
    return sketches.stream().mapToDouble(Sketch::height).max().orElse(0) * scale;
  }

  /** A round length that is easy to measure against. */
  private double bar() {
    double most = 160 / scale;
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double lead = most / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  /** What a section stands for in its assessment; several things where it is several. */
  private String role(Sketch sketch) {
    List<String> roles = new ArrayList<>();
    add(assessment.designed(), sketch, "as drawn", roles);
    add(assessment.built(), sketch, "as built", roles);
    add(assessment.weakLink().map(WeakLink::sacrificial), sketch, "meant to break first", roles);
    add(assessment.weakLink().flatMap(WeakLink::protectedPart), sketch, "to be protected", roles);
    return String.join("; ", roles);
  }

  private static void add(Optional<Ref> section, Sketch sketch, String role, List<String> roles) {
    if (section.filter(ref -> ref.id().equals(sketch.section())).isPresent()) {
      roles.add(role);
    }
  }

  private void place(Svg svg, Sketch sketch, double x, double y) {
    svg.words(x, y - 2, role(sketch), Lettering.of(14).bold().in(Shade.RUST));
    double line = y - 2;
    for (String words : title(sketch)) {
      line += TITLE;
      svg.words(x, line, words, Lettering.of(13).bold());
    }
    double base = y + 10 + TITLE * titleLines + rowHeight();
    boolean cut = shownWidth(sketch) < sketch.width();
    for (Sketch.Piece piece : sketch.pieces()) {
      piece(svg, piece, sketch, x, base);
    }
    svg.words(
        x,
        base + 20,
        tenths(sketch.width())
            + " × "
            + tenths(sketch.height())
            + " mm"
            + (cut ? ", only a part of the width drawn" : ""),
        Lettering.of(13));
    if (cut) {
      broken(svg, x + shownWidth(sketch) * scale, base);
    }
  }

  /** The wavy line by which drawings say that a part goes on. */
  private void broken(Svg svg, double x, double base) {
    List<Svg.Point> line = new ArrayList<>();
    double top = base - rowHeight() - 6;
    int steps = Math.max(4, (int) ((base + 6 - top) / 5));
    for (int i = 0; i <= steps; i++) {
      line.add(new Svg.Point(x + (i % 2 == 0 ? -3 : 3), top + (base + 6 - top) * i / steps));
    }
    svg.polyline(line, Look.line(4).edged(Shade.WHITE, 4));
    svg.polyline(line, Look.line(1));
  }

  /** A tenth of a millimetre is as near as anybody builds. */
  private static String tenths(double mm) {
    return Print.number(Math.round(mm * 10) / 10.0);
  }

  private static List<String> title(Sketch sketch) {
    return Lettering.of(13).bold().lines(sketch.title(), ROOM, 3);
  }

  private void piece(Svg svg, Sketch.Piece piece, Sketch sketch, double x, double base) {
    double most = shownWidth(sketch);
    List<Svg.Point> outer = points(piece.outer(), most, x, base);
    Shade shade = hatch.getOrDefault(piece.material(), Shade.WHITE);
    // A glass skin is thinner than the outline's own line: it is then shown by the line alone.
    Look look = Look.line(0.8).over(shade);
    svg.together(
        piece.where() + ": " + piece.material(),
        group -> {
          group.polygon(outer, look);
          piece
              .holes()
              .forEach(
                  hole ->
                      group.polygon(points(hole, most, x, base), Look.line(0.8).over(Shade.WHITE)));
        });
  }

  private List<Svg.Point> points(List<Sketch.Corner> corners, double most, double x, double base) {
    List<Svg.Point> points = new ArrayList<>();
    for (Sketch.Corner corner : corners) {
      points.add(new Svg.Point(x + Math.min(corner.y(), most) * scale, base - corner.z() * scale));
    }
    return points;
  }

  private void legend(Svg svg, double y) {
    int i = 0;
    for (Map.Entry<String, Shade> entry : hatch.entrySet()) {
      double at = y + 26 * i++;
      svg.rectangle(20, at, 30, 16, Look.line(0.8).over(entry.getValue()));
      svg.words(60, at + 13, entry.getKey(), Lettering.of(13).anchored(Anchor.START));
    }
  }
}
