package kitwright.mechanics.beam;

import java.util.List;

/**
 * A part of a cross-section made of one material. The section lies in the y–z plane, metres, y
 * across and z up; the beam runs along x.
 */
public sealed interface Region permits Rectangle, Outline, Ring {
  /** What a person calls it: "layer 2", "spine". */
  String where();

  BeamMaterial material();

  /** Area and its first and second moments about the axes through the origin. */
  Moments moments();

  /** The box round it. */
  Bounds bounds();

  /** The points that lie furthest out one way or another: none of it lies beyond them. */
  List<Point> corners();

  /** Adds what lies above each level, and the width there. */
  void cut(Cut cut);

  /** The same with y and z exchanged, to bend it sideways. */
  Region turned();

  /** Whether something is left out inside it. */
  boolean hollow();
}
