package kitwright.cutting.saw;

import java.util.Optional;

/**
 * How pieces are parted; tenths of a millimetre.
 *
 * @param crossKerf what a cut across the piece takes
 * @param ripKerf what a cut along it takes
 * @param trim off both ends first, the kerf included
 * @param edgeTrim off both long edges first, the kerf included
 * @param keepLong a left-over is worth keeping if its longer side is at least this
 * @param keepShort and its shorter side at least this
 * @param first which way the first cuts should run, where that can be chosen
 */
public record Saw(
    long crossKerf,
    long ripKerf,
    long trim,
    long edgeTrim,
    long keepLong,
    long keepShort,
    Optional<Way> first) {
  long kerf(Way way) {
    return way == Way.CROSS ? crossKerf : ripKerf;
  }

  boolean isUseful(Rect rect) {
    return !rect.isEmpty()
        && Math.max(rect.length(), rect.width()) >= keepLong
        && Math.min(rect.length(), rect.width()) >= keepShort;
  }
}
