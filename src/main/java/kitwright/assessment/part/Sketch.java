package kitwright.assessment.part;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.beam.Loop;
import kitwright.mechanics.beam.Outline;
import kitwright.mechanics.beam.Point;
import kitwright.mechanics.beam.Rectangle;
import kitwright.mechanics.beam.Region;
import kitwright.mechanics.beam.Ring;

/**
 * A cross-section as outlines in millimetres, y across and z up from its lower left corner, to be
 * drawn to scale.
 *
 * @param section id of the section
 * @param title what it is
 * @param width mm
 * @param height mm
 */
public record Sketch(
    String section, String title, double width, double height, List<Piece> pieces) {
  private static final int CORNERS = 96;

  /** A corner in mm. */
  public record Corner(double y, double z) {}

  /**
   * One piece of one material.
   *
   * @param holes cut out of it
   */
  public record Piece(String where, String material, List<Corner> outer, List<List<Corner>> holes) {
    public Piece {
      outer = List.copyOf(outer);
      holes = List.copyOf(holes);
    }
  }

  public Sketch {
    pieces = List.copyOf(pieces);
  }

  public static Sketch of(Part part) {
    var box = part.beam().bounds();
    List<Piece> pieces = new ArrayList<>();
    for (Region region : part.beam().regions()) {
      String id = region.material().name();
      pieces.add(piece(region, id, box.minY(), box.minZ()));
    }
    return new Sketch(
        part.source().id(),
        part.source().what().orElse(part.id()),
        (box.maxY() - box.minY()) * 1000,
        (box.maxZ() - box.minZ()) * 1000,
        pieces);
  }

  private static Piece piece(Region region, String id, double left, double low) {
    if (region instanceof Outline outline) {
      return new Piece(
          region.where(),
          id,
          corners(outline.outer(), left, low),
          outline.holes().stream().map(hole -> corners(hole, left, low)).toList());
    }
    if (region instanceof Ring ring) {
      List<List<Corner>> bore =
          ring.inner() > 0 ? List.of(circle(ring, ring.inner(), left, low)) : List.of();
      return new Piece(region.where(), id, circle(ring, ring.outer(), left, low), bore);
    }
    Rectangle box = (Rectangle) region;
    double y = (box.y() - left) * 1000;
    double z = (box.z() - low) * 1000;
    double w = box.width() * 1000;
    double h = box.height() * 1000;
    return new Piece(
        region.where(),
        id,
        List.of(
            new Corner(y, z), new Corner(y + w, z), new Corner(y + w, z + h), new Corner(y, z + h)),
        List.of());
  }

  private static List<Corner> corners(Loop loop, double left, double low) {
    return loop.points().stream().map(p -> corner(p, left, low)).toList();
  }

  private static Corner corner(Point p, double left, double low) {
    return new Corner((p.y() - left) * 1000, (p.z() - low) * 1000);
  }

  private static List<Corner> circle(Ring ring, double radius, double left, double low) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      double turn = 2 * Math.PI * i / CORNERS;
      corners.add(
          new Corner(
              (ring.y() - left + radius * Math.cos(turn)) * 1000,
              (ring.z() - low + radius * Math.sin(turn)) * 1000));
    }
    return corners;
  }
}
