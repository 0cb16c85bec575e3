package kitwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pieces of stock one below the other, to one scale, with what is cut from each. Parts are white
 * with their marks in large letters, remnants dotted, flaws crossed, waste grey: readable in black
 * and white from two metres.
 */
public final class RackDrawing {
  private static final double SHEET = 1000;
  private static final double MARGIN = 20;
  private static final double HEADING = 26;
  private static final double LEAST_HEIGHT = 34;
  private static final double GAP = 22;
  private static final double LETTER = 17;

  private RackDrawing() {}

  /** What a stretch of a piece becomes. */
  public enum Becomes {
    PART,
    REMNANT,
    FLAW
  }

  /**
   * A stretch of a piece, in mm from its near corner.
   *
   * @param mark what is written on it; may be empty
   * @param size what is written below that
   */
  public record Stretch(
      String mark,
      String size,
      double along,
      double across,
      double length,
      double width,
      Becomes becomes) {}

  /**
   * A piece of stock.
   *
   * @param name with its number
   * @param length in mm
   * @param width in mm
   */
  public record Piece(String name, double length, double width, List<Stretch> stretches) {
    public Piece {
      stretches = List.copyOf(stretches);
    }
  }

  /** Draws pieces under a title. */
  public static Svg of(String title, List<Piece> pieces) {
    double longest = pieces.stream().mapToDouble(Piece::length).max().orElse(1);
    double scale = (SHEET - 2 * MARGIN) / longest;
    double height = MARGIN + HEADING;
    List<Double> tops = new ArrayList<>();
    for (Piece piece : pieces) {
      tops.add(height + LETTER + 6);
      height += LETTER + 6 + tall(piece, scale) + GAP;
    }
    Svg svg = Svg.sheet(SHEET, height + MARGIN, title, spoken(pieces));
    svg.words(MARGIN, MARGIN + LETTER, title, Lettering.of(LETTER + 3).bold());
    for (int i = 0; i < pieces.size(); i++) {
      draw(svg, pieces.get(i), tops.get(i), scale);
    }
    return svg;
  }

  private static double tall(Piece piece, double scale) {
    return Math.max(LEAST_HEIGHT, piece.width() * scale);
  }

  private static void draw(Svg svg, Piece piece, double top, double scale) {
    double down = tall(piece, scale) / piece.width();
    svg.words(
        MARGIN,
        top - 5,
        piece.name() + ", " + number(piece.length()) + " x " + number(piece.width()) + " mm",
        Lettering.of(LETTER - 3));
    svg.rectangle(
        MARGIN,
        top,
        piece.length() * scale,
        piece.width() * down,
        Look.line(1.6).over(Shade.MIDDLE));
    for (Stretch each : piece.stretches()) {
      double x = MARGIN + each.along() * scale;
      double y = top + each.across() * down;
      double w = each.length() * scale;
      double h = each.width() * down;
      svg.together(
          each.mark().isEmpty() ? "flaw" : each.mark(),
          shapes -> {
            shapes.rectangle(x, y, w, h, look(each.becomes()));
            write(shapes, each, x, y, w, h);
          });
    }
  }

  private static void write(Svg svg, Stretch each, double x, double y, double w, double h) {
    Lettering big =
        Lettering.of(Math.min(LETTER, Math.max(8, h * 0.5)))
            .bold()
            .anchored(Lettering.Anchor.MIDDLE);
    Lettering small =
        Lettering.of(Math.min(12, big.size() * 0.75)).anchored(Lettering.Anchor.MIDDLE);
    boolean two = h >= big.size() + small.size() + 6;
    double middle = y + h / 2 + big.size() * 0.35 - (two ? small.size() * 0.6 : 0);
    label(svg, each, each.mark(), x + w / 2, middle, w - 4, big);
    if (two && each.becomes() != Becomes.FLAW) {
      label(svg, each, each.size(), x + w / 2, middle + small.size() + 3, w - 4, small);
    }
  }

  private static void label(
      Svg svg, Stretch on, String words, double middle, double foot, double room, Lettering set) {
    if (on.becomes() == Becomes.REMNANT) {
      onPlate(svg, words, middle, foot, room, set);
    } else {
      svg.words(middle, foot, set.fitted(words, room), set);
    }
  }

  /** Words on white, so that dots do not run through them; none where they would be cut. */
  private static void onPlate(
      Svg svg, String words, double middle, double foot, double room, Lettering set) {
    double width = set.widthOf(words);
    if (width <= room) {
      svg.rectangle(
              middle - width / 2,
              foot - set.size() * 0.85,
              width,
              set.size() * 1.1,
              Look.filled(Shade.WHITE))
          .words(middle, foot, words, set);
    }
  }

  private static Look look(Becomes becomes) {
    return switch (becomes) {
      case PART -> Look.line(1.8).over(Shade.WHITE);
      case REMNANT -> Look.line(1.2).over(Shade.DOTTED).dashed(6.0, 4.0);
      case FLAW -> Look.line(0.8).over(Shade.CROSSED);
    };
  }

  private static String spoken(List<Piece> pieces) {
    StringBuilder out = new StringBuilder();
    for (Piece piece : pieces) {
      out.append(piece.name()).append(": ");
      piece.stretches().stream()
          .filter(each -> each.becomes() != Becomes.FLAW)
          .forEach(
              each ->
                  out.append(each.mark())
                      .append(' ')
                      .append(number(each.length()))
                      .append(" x ")
                      .append(number(each.width()))
                      .append(" mm, "));
      out.append("the rest is waste. ");
    }
    return out.toString().strip();
  }

  private static String number(double mm) {
    return mm == Math.rint(mm)
        ? String.valueOf((long) mm)
        : String.valueOf(Math.round(mm * 10) / 10.0);
  }
}
