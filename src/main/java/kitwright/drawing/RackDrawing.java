package kitwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Pieces of stock one below the other, to one scale, with what is cut from each: parts white with
 * their marks and sizes in large letters, remnants dotted, flaws crossed, waste grey: readable in
 * black and white from two metres. What has no room for its words bears a number, and its words
 * stand below the piece. End A is on the left, edge B on top.
 */
public final class RackDrawing {
  private static final double SHEET = 1000;
  private static final double MARGIN = 24;
  private static final double LEAST_HEIGHT = 34;
  private static final double GAP = 26;
  private static final double LETTER = 17;
  private static final double NOTE = 14;
  private static final double LEAST = 14;

  private RackDrawing() {}

  /** What a stretch of a piece becomes. */
  public enum Becomes {
    PART("a part"),
    REMNANT("back on the rack"),
    FLAW("flaw, not to be used"),
    WASTE("waste");

    private final String words;

    Becomes(String words) {
      this.words = words;
    }

    private Look look() {
      return switch (this) {
        case PART -> Look.line(1.8).over(Shade.WHITE);
        case REMNANT -> Look.line(1.2).over(Shade.DOTTED).dashed(6.0, 4.0);
        case FLAW -> Look.line(0.8).over(Shade.CROSSED);
        case WASTE -> Look.line(0.6).over(Shade.MIDDLE);
      };
    }
  }

  /**
   * A stretch of a piece, in mm from its marked corner.
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
      Becomes becomes) {
    private String words() {
      return size.isEmpty() ? mark : mark + ", " + size;
    }
  }

  /**
   * A piece of stock.
   *
   * @param name with its number and size
   * @param length in mm
   * @param width in mm
   */
  public record Piece(String name, double length, double width, List<Stretch> stretches) {
    public Piece {
      stretches = List.copyOf(stretches);
    }
  }

  /** A stretch on the sheet. */
  private record Box(Stretch on, double x, double y, double w, double h) {
    private boolean isNamed() {
      return !on.mark().isEmpty();
    }

    /** Whether its words have room at all, upright or turned. */
    private boolean hasRoom() {
      return inLines(w, h) || (w >= 1.2 * LEAST && least(on.words()) <= h);
    }

    private boolean inLines(double wide, double high) {
      boolean two = high >= 2.4 * LEAST && least(on.mark()) <= wide && least(on.size()) <= wide;
      return two || (high >= 1.2 * LEAST && least(on.words()) <= wide);
    }

    private static double least(String words) {
      return Lettering.of(LEAST).bold().widthOf(words) + 6;
    }
  }

  /** Draws pieces under a title, with words to stand above and cautions below them. */
  public static Svg of(
      String title, List<String> above, List<Piece> pieces, List<String> warnings) {
    List<String> cautions =
        warnings.stream()
            .flatMap(
                line -> Lettering.of(NOTE + 1).bold().lines(line, SHEET - 2 * MARGIN, 6).stream())
            .toList();
    double longest = pieces.stream().mapToDouble(Piece::length).max().orElse(1);
    double scale = (SHEET - 2 * MARGIN) / longest;
    double top = MARGIN + LETTER + 8;
    List<String> words =
        above.stream()
            .flatMap(line -> Lettering.of(NOTE).lines(line, SHEET - 2 * MARGIN, 4).stream())
            .toList();
    double head = top + words.size() * (NOTE + 5) + NOTE + 24;
    double height = head;
    List<Double> tops = new ArrayList<>();
    List<List<Box>> boxes = new ArrayList<>();
    for (Piece piece : pieces) {
      double at = height + LETTER + 8;
      tops.add(at);
      boxes.add(boxes(piece, at, scale));
      height =
          at + tall(piece, scale) + notes(boxes.get(boxes.size() - 1)).size() * (NOTE + 4) + GAP;
    }
    height += cautions.size() * (NOTE + 6) + MARGIN;
    Svg svg = Svg.sheet(SHEET, height, title, spoken(pieces, cautions));
    svg.words(MARGIN, MARGIN + LETTER, title, Lettering.of(LETTER + 3).bold());
    for (int i = 0; i < words.size(); i++) {
      svg.words(MARGIN, top + (i + 1) * (NOTE + 5), words.get(i), Lettering.of(NOTE));
    }
    legend(svg, head - 12);
    for (int i = 0; i < pieces.size(); i++) {
      draw(svg, pieces.get(i), tops.get(i), scale, boxes.get(i));
    }
    double foot = height - MARGIN - cautions.size() * (NOTE + 6);
    for (int i = 0; i < cautions.size(); i++) {
      svg.words(
          MARGIN, foot + (i + 1) * (NOTE + 6), cautions.get(i), Lettering.of(NOTE + 1).bold());
    }
    return svg;
  }

  private static void legend(Svg svg, double foot) {
    double x = MARGIN;
    for (Becomes each : Becomes.values()) {
      svg.rectangle(x, foot - NOTE, 26, NOTE + 2, each.look());
      svg.words(x + 32, foot, each.words, Lettering.of(NOTE));
      x += 60 + Lettering.of(NOTE).widthOf(each.words);
    }
    svg.words(x, foot, "end A left, edge B on top", Lettering.of(NOTE));
  }

  private static double tall(Piece piece, double scale) {
    return Math.max(LEAST_HEIGHT, piece.width() * scale);
  }

  private static List<Box> boxes(Piece piece, double top, double scale) {
    double down = tall(piece, scale) / piece.width();
    return piece.stretches().stream()
        .map(
            each ->
                new Box(
                    each,
                    MARGIN + each.along() * scale,
                    top + each.across() * down,
                    each.length() * scale,
                    each.width() * down))
        .toList();
  }

  /** What stands below the piece since it has no room on it. */
  private static List<String> notes(List<Box> boxes) {
    List<String> notes = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int number = 1;
    for (Box box : boxes) {
      if (box.isNamed() && !box.hasRoom()) {
        String note = number++ + " = " + box.on().words();
        if (Lettering.of(NOTE).widthOf(line + "    " + note) > SHEET - 2 * MARGIN) {
          notes.add(line.toString());
          line.setLength(0);
        }
        line.append(line.isEmpty() ? "" : "    ").append(note);
      }
    }
    if (!line.isEmpty()) {
      notes.add(line.toString());
    }
    return notes;
  }

  private static void draw(Svg svg, Piece piece, double top, double scale, List<Box> boxes) {
    double tall = tall(piece, scale);
    svg.words(MARGIN, top - 6, piece.name(), Lettering.of(LETTER - 2).bold());
    svg.rectangle(MARGIN, top, piece.length() * scale, tall, Look.line(1.6).over(Shade.MIDDLE));
    int number = 1;
    for (Box box : boxes) {
      Stretch on = box.on();
      String says = on.mark().isEmpty() ? on.becomes().words : on.words();
      String written = box.isNamed() && !box.hasRoom() ? String.valueOf(number++) : "";
      svg.together(
          says,
          shapes -> {
            shapes.rectangle(box.x(), box.y(), box.w(), box.h(), on.becomes().look());
            if (!written.isEmpty()) {
              plate(shapes, written, box, fitting(written, box.w(), box.h()));
            } else if (box.isNamed()) {
              write(shapes, box);
            }
          });
    }
    svg.words(MARGIN - 16, top + tall / 2 + 5, "A", Lettering.of(LETTER).bold());
    List<String> notes = notes(boxes);
    for (int i = 0; i < notes.size(); i++) {
      svg.words(MARGIN, top + tall + (i + 1) * (NOTE + 4), notes.get(i), Lettering.of(NOTE));
    }
  }

  /** As large as there is room for. */
  private static double fitting(String words, double wide, double high) {
    double byWidth = (wide - 4) / Math.max(1, Lettering.of(1).bold().widthOf(words));
    return Math.max(LEAST, Math.min(LETTER, Math.min(byWidth, high * 0.8)));
  }

  private static void write(Svg svg, Box box) {
    Stretch on = box.on();
    boolean upright = box.inLines(box.w(), box.h());
    double wide = upright ? box.w() : box.h();
    double high = upright ? box.h() : box.w();
    boolean two =
        high >= 2.4 * LEAST && Box.least(on.mark()) <= wide && Box.least(on.size()) <= wide;
    if (!upright || !two) {
      line(svg, on.words(), box, fitting(on.words(), wide, high), upright);
      return;
    }
    double big = Math.min(fitting(on.mark(), wide, high / 2), LETTER);
    double small = Math.max(LEAST, Math.min(big * 0.8, fitting(on.size(), wide, high / 2)));
    double middle = box.x() + box.w() / 2;
    double foot = box.y() + box.h() / 2;
    words(svg, on.mark(), middle, foot - 2, big, on.becomes());
    words(svg, on.size(), middle, foot + small, small, on.becomes());
  }

  private static void line(Svg svg, String words, Box box, double size, boolean upright) {
    double middle = box.x() + box.w() / 2;
    double foot = box.y() + box.h() / 2;
    if (upright) {
      words(svg, words, middle, foot + size * 0.35, size, box.on().becomes());
    } else {
      Lettering set = Lettering.of(size).bold().anchored(Lettering.Anchor.MIDDLE).turned(-90);
      svg.words(middle + size * 0.35, foot, words, set);
    }
  }

  /** On white where dots would run through the words. */
  private static void words(
      Svg svg, String words, double middle, double foot, double size, Becomes becomes) {
    Lettering set = Lettering.of(size).bold().anchored(Lettering.Anchor.MIDDLE);
    if (becomes != Becomes.PART) {
      double width = set.widthOf(words);
      svg.rectangle(
          middle - width / 2 - 3,
          foot - size * 0.9,
          width + 6,
          size * 1.2,
          Look.filled(Shade.WHITE));
    }
    svg.words(middle, foot, words, set);
  }

  private static void plate(Svg svg, String words, Box box, double size) {
    words(
        svg,
        words,
        box.x() + box.w() / 2,
        box.y() + box.h() / 2 + size * 0.35,
        size,
        box.on().becomes());
  }

  private static String spoken(List<Piece> pieces, List<String> cautions) {
    StringBuilder out = new StringBuilder();
    for (Piece piece : pieces) {
      out.append(piece.name()).append(": ");
      piece.stretches().stream()
          .filter(each -> !each.mark().isEmpty())
          .forEach(each -> out.append(each.words()).append(", "));
      out.append("the rest is waste. ");
    }
    cautions.forEach(caution -> out.append(caution).append(' '));
    return out.toString().strip();
  }
}
