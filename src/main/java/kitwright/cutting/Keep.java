package kitwright.cutting;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;

/**
 * The smallest left-over worth a record: as the cut says; else as small as the smallest part of any
 * cut of the build, within reason, since what is smaller was of no use to anybody yet. Tenths of a
 * millimetre.
 */
public record Keep(long longer, long shorter, boolean isStated) {
  /** Reasonable for what nobody stated: 50 to 300 mm by 20 to 100 mm. From memory. */
  private static final long[] LONGER = {500, 3000};

  private static final long[] SHORTER = {200, 1000};

  static Keep of(Cut cut, Ledger ledger) {
    if (cut.keep().isPresent()) {
      long a = Tenths.side(cut.keep().get().length());
      long b = Tenths.side(cut.keep().get().width());
      return new Keep(Math.max(a, b), Math.min(a, b), true);
    }
    List<Cut.Part> parts =
        Stream.concat(Stream.of(cut), ledger.cuts().stream())
            .flatMap(each -> each.parts().stream())
            .toList();
    long shorter =
        within(
            SHORTER,
            parts.stream().flatMap(part -> Sawn.width(part).stream()).mapToLong(width -> width));
    return cut.keepLength()
        .map(length -> new Keep(Math.max(Tenths.atLeast(length), shorter), shorter, true))
        .orElseGet(
            () ->
                new Keep(
                    Math.max(shorter, within(LONGER, parts.stream().mapToLong(Sawn::length))),
                    shorter,
                    false));
  }

  private static long within(long[] band, LongStream sizes) {
    return Math.min(band[1], Math.max(band[0], sizes.filter(n -> n > 0).min().orElse(band[0])));
  }
}
