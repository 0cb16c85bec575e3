package kitwright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes a drawing as SVG text: shapes in the order in which they are added, numbers to a hundredth
 * of a unit, the same bytes for the same calls. Every drawing has a title and a description, which
 * screen readers speak. Lives on the stack of whoever draws; the text is what is kept.
 *
 * @see "W3C, Scalable Vector Graphics (SVG) 1.1, second edition, 2011: elements and attributes
 *     (from memory)"
 */
public final class Svg {
  /** Beyond this a number is a slip, and viewers differ in what they do. */
  private static final double LARGEST = 1e8;

  private final double width;
  private final double height;
  private final String title;
  private final String description;
  private final StringBuilder body = new StringBuilder();
  private final Set<Shade> used = EnumSet.noneOf(Shade.class);

  /** A corner of a line or an area. */
  public record Point(double x, double y) {}

  private Svg(double width, double height, String title, String description) {
    this.width = width;
    this.height = height;
    this.title = title;
    this.description = description;
  }

  /**
   * An empty sheet; x runs to the right and y down from the upper left corner.
   *
   * @param title a few words
   * @param description what the drawing shows, in sentences, for who cannot see it
   */
  public static Svg sheet(double width, double height, String title, String description) {
    return new Svg(width, height, title, description);
  }

  /** A rectangle from its upper left corner. */
  public Svg rectangle(double x, double y, double w, double h, Look look) {
    return add("rect", at("x", x) + at("y", y) + at("width", w) + at("height", h) + look(look));
  }

  public Svg line(double x1, double y1, double x2, double y2, Look look) {
    return add("line", at("x1", x1) + at("y1", y1) + at("x2", x2) + at("y2", y2) + look(look));
  }

  public Svg circle(double x, double y, double radius, Look look) {
    return add("circle", at("cx", x) + at("cy", y) + at("r", radius) + look(look));
  }

  /** An open line through points. */
  public Svg polyline(List<Point> points, Look look) {
    return add("polyline", " points=\"" + points(points) + "\"" + look(look));
  }

  /** A closed area. */
  public Svg polygon(List<Point> corners, Look look) {
    return add("polygon", " points=\"" + points(corners) + "\"" + look(look));
  }

  /** Words on one line; {@code y} is their base line. */
  public Svg words(double x, double y, String words, Lettering set) {
    used.add(set.shade());
    String turn =
        set.turn() == 0
            ? ""
            : " transform=\"rotate("
                + number(set.turn())
                + " "
                + number(x)
                + " "
                + number(y)
                + ")\"";
    body.append("<text").append(at("x", x)).append(at("y", y)).append(at("font-size", set.size()));
    body.append(" text-anchor=\"").append(set.anchor().word()).append('"');
    body.append(set.weight() == Lettering.Weight.BOLD ? " font-weight=\"bold\"" : "");
    body.append(" fill=\"").append(set.shade().paint()).append('"').append(turn).append('>');
    body.append(escaped(words)).append("</text>\n");
    return this;
  }

  /**
   * Shapes that belong together, with words that a viewer shows on pointing and a reader speaks.
   */
  public Svg together(String says, Consumer<Svg> shapes) {
    body.append("<g><title>").append(escaped(says)).append("</title>\n");
    shapes.accept(this);
    body.append("</g>\n");
    return this;
  }

  /** The drawing as a document. */
  public String text() {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\""
        + " viewBox=\"0 0 "
        + (number(width) + " " + number(height) + "\"")
        + at("width", width)
        + at("height", height)
        + " font-family=\"sans-serif\" role=\"img\" aria-labelledby=\"title desc\">\n"
        + ("<title id=\"title\">" + escaped(title) + "</title>\n")
        + ("<desc id=\"desc\">" + escaped(description) + "</desc>\n")
        + patterns()
        + ("<rect" + at("width", width) + at("height", height) + " fill=\"#ffffff\"/>\n")
        + body
        + "</svg>\n";
  }

  private String patterns() {
    String all = used.stream().map(Shade::pattern).collect(Collectors.joining());
    return all.isEmpty() ? "" : "<defs>\n" + all + "</defs>\n";
  }

  private Svg add(String shape, String attributes) {
    body.append('<').append(shape).append(attributes).append("/>\n");
    return this;
  }

  private String look(Look look) {
    used.add(look.fill());
    used.add(look.stroke());
    List<String> parts = new ArrayList<>(List.of(" fill=\"" + look.fill().paint() + "\""));
    if (look.width() > 0) {
      parts.add(" stroke=\"" + look.stroke().paint() + "\"" + at("stroke-width", look.width()));
    }
    if (!look.dashes().isEmpty()) {
      parts.add(" stroke-dasharray=\"" + numbers(look.dashes().stream()) + "\"");
    }
    return String.join("", parts);
  }

  private static String points(List<Point> points) {
    return points.stream()
        .map(point -> number(point.x()) + "," + number(point.y()))
        .collect(Collectors.joining(" "));
  }

  private static String numbers(Stream<Double> all) {
    return all.map(Svg::number).collect(Collectors.joining(" "));
  }

  private static String at(String name, double value) {
    return " " + name + "=\"" + number(value) + "\"";
  }

  private static String number(double value) {
    if (!(Math.abs(value) <= LARGEST)) {
      throw new IllegalArgumentException("no place on a drawing: " + value);
    }
    BigDecimal plain = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return plain.signum() == 0 ? "0" : plain.stripTrailingZeros().toPlainString();
  }

  /** Text that XML may hold: marks escaped, control characters and lone surrogates replaced. */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
              }
            });
    return out.toString();
  }

  /** The characters of XML 1.0, production 2. */
  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
