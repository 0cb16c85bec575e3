package kitwright.report.photo;

/**
 * What the segments of a JPEG file say of its pixels.
 *
 * @param colours how many values a pixel has; 0 where the file is no JPEG or does not say
 * @param isCutShort whether it is a JPEG that stops before its pixels end
 * @see "ITU-T T.81 (ISO/IEC 10918-1), B.1.1 (markers) and B.2.2 (frame header)"
 */
record Jpeg(int colours, boolean isCutShort) {
  /** Cyan, magenta, yellow and black. */
  static final int PRINTERS = 4;

  private static final int FIRST_FRAME = 0xC0;
  private static final int LAST_FRAME = 0xCF;
  private static final int SCAN = 0xDA;
  private static final int END = 0xD9;

  static boolean is(byte[] file) {
    return file.length >= 4 && at(file, 0) == 0xFF && at(file, 1) == 0xD8;
  }

  static Jpeg of(byte[] file) {
    if (!is(file)) {
      return new Jpeg(0, false);
    }
    int colours = 0;
    int here = 2;
    while (here + 4 <= file.length) {
      int marker = at(file, here + 1);
      if (at(file, here) != 0xFF || marker == 0xFF || marker == 0) {
        here++;
        continue;
      }
      if (marker == SCAN) {
        return new Jpeg(colours, !ends(file, here));
      }
      if (isFrame(marker) && here + 9 < file.length) {
        colours = at(file, here + 9);
      }
      here += 2 + (at(file, here + 2) << 8 | at(file, here + 3));
    }
    return new Jpeg(colours, true);
  }

  private static boolean isFrame(int marker) {
    return marker >= FIRST_FRAME
        && marker <= LAST_FRAME
        && marker != 0xC4
        && marker != 0xC8
        && marker != 0xCC;
  }

  /** Within pixels a byte of ones is never followed by the end's own byte. */
  private static boolean ends(byte[] file, int from) {
    for (int i = from; i + 1 < file.length; i++) {
      if (at(file, i) == 0xFF && at(file, i + 1) == END) {
        return true;
      }
    }
    return false;
  }

  private static int at(byte[] file, int index) {
    return file[index] & 0xFF;
  }
}
