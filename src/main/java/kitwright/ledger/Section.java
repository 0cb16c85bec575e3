package kitwright.ledger;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * A cross-section, as designed or as built.
 *
 * @param width of a layered section
 * @param layers from bottom to top
 * @param shape of a section that is not layered, with its dimensions
 * @param dimensions by name: {@code height}, {@code width}, {@code diameter}, {@code wall}, {@code
 *     chord}, {@code thickness-ratio}, {@code flange}, {@code web}, {@code span}, …
 * @param skins layers of a skin round a foil or tube, from inside to outside
 * @param members inside the outline: a spine, a web
 * @param outline corners of a polygon, in order round it
 * @param glue between its parts, a material with a bond or shear strength
 * @param grade how much hangs on the part that has this section
 */
public record Section(
    String id,
    Optional<String> what,
    Optional<Quantity> width,
    List<Layer> layers,
    Optional<Shape> shape,
    Optional<Ref> material,
    Map<Ref, Quantity> dimensions,
    List<Layer> skins,
    List<Member> members,
    List<Corner> outline,
    Optional<Ref> glue,
    Optional<Grade> grade,
    Written at)
    implements Entry {
  /** The outline of a section. */
  public enum Shape {
    RECTANGLE,
    ROUND,
    TUBE,
    I,
    FOIL,
    POLYGON,
    BOLT
  }

  /** How the grain of a layer runs against the length of the part. */
  public enum Grain {
    ALONG,
    ACROSS,
    BIAS
  }

  /**
   * A layer: one material over the whole width, or strips side by side.
   *
   * @param thickness where the layer is not so many plies
   * @param plies of a cloth
   * @param angle of a cloth's first fibre direction to the length, from 0 to 180 degrees
   */
  public record Layer(
      Optional<Ref> material,
      Optional<Quantity> thickness,
      Optional<BigDecimal> plies,
      Optional<Grain> grain,
      Optional<Quantity> angle,
      List<Strip> strips,
      At at) {
    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);

    static Layer read(Fields f) {
      return new Layer(
          f.maybeRef("material"),
          f.maybeMeasure("thickness", Unit.ONE, Dimension.LENGTH),
          f.maybeNumber("plies"),
          f.maybeChoice("grain", Grain.class),
          f.maybe("angle", Layer::angle),
          f.each("strips", Strip::read),
          At.of(f));
    }

    /** Plies lie at plus and minus: −45 degrees is the same direction as 135. */
    private static Quantity angle(String text) throws Misread {
      boolean minus = text.startsWith("-") || text.startsWith("−");
      Quantity angle =
          Quantity.parse(minus ? text.substring(1).strip() : text, Unit.DEGREE, Dimension.ANGLE);
      return minus
          ? new Quantity(HALF_TURN.subtract(angle.amount().remainder(HALF_TURN)), Unit.DEGREE)
          : angle;
    }
  }

  /** A strip of a layer; without a material it is a void. */
  public record Strip(
      Optional<Ref> material, Optional<Grain> grain, Quantity width, boolean hollow, At at) {
    static Strip read(Fields f) {
      Optional<Quantity> hollow = f.maybeMeasure("void", Unit.ONE, Dimension.LENGTH);
      return new Strip(
          f.maybeRef("material"),
          f.maybeChoice("grain", Grain.class),
          hollow.isPresent() ? hollow.get() : f.measure("width", Unit.ONE, Dimension.LENGTH),
          hollow.isPresent(),
          At.of(f));
    }
  }

  /**
   * A member inside an outline, such as a spine, reaching from skin to skin.
   *
   * @param at where its middle lies, from the leading edge or the left corner; at three tenths of
   *     the chord where it is not said
   */
  public record Member(
      String what,
      Ref material,
      Quantity width,
      Optional<Quantity> at,
      Optional<Quantity> height,
      At place) {
    static Member read(Fields f) {
      return new Member(
          f.text("what"),
          f.ref("material"),
          f.measure("width", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("at", Unit.ONE, Dimension.LENGTH),
          f.maybeMeasure("height", Unit.ONE, Dimension.LENGTH),
          At.of(f));
    }
  }

  /** A corner of a polygon. */
  public record Corner(Quantity y, Quantity z) {
    static Corner read(Fields f) {
      return new Corner(
          f.measure("y", Unit.ONE, Dimension.LENGTH), f.measure("z", Unit.ONE, Dimension.LENGTH));
    }
  }

  static Section read(Fields f) {
    return new Section(
        f.id(),
        f.maybeText("what"),
        f.maybeMeasure("width", Unit.MM, Dimension.LENGTH),
        f.each("layers", Layer::read),
        f.maybeChoice("shape", Shape.class),
        f.maybeRef("material"),
        f.map("dimensions", text -> Quantity.parse(text, Unit.ONE)),
        f.each("skins", Layer::read),
        f.each("members", Member::read),
        f.each("outline", Corner::read),
        f.maybeRef("glue"),
        f.maybeChoice("grade", Grade.class),
        Written.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.SECTIONS;
  }
}
