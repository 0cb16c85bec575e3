package kitwright.cutting.solve;

/**
 * A rectangle on a panel.
 *
 * @param along where it begins along the panel's length, tenths of a millimetre
 * @param across where it begins over the panel's width
 * @param length its extent along the panel
 * @param width its extent across
 */
public record Area(long along, long across, long length, long width) {
  /** Its extent in the direction of strips that run so. */
  long down(Run run) {
    return run == Run.ALONG ? length : width;
  }

  /** A rectangle at the near corner of this one, moved and sized in terms of strips that run so. */
  Area part(Run run, long downFrom, long overFrom, long down, long over) {
    return run == Run.ALONG
        ? new Area(along + downFrom, across + overFrom, down, over)
        : new Area(along + overFrom, across + downFrom, over, down);
  }

  /** Its extent from one strip to the next. */
  long over(Run run) {
    return run == Run.ALONG ? width : length;
  }
}
