package kitwright.cutting.solve;

/** How far a relaxation is driven. */
enum Care {
  /** Until it is good enough to steer by; it proves nothing. */
  ROUGH,
  /** Until nothing can better it, so that its bound counts. */
  EXACT
}
