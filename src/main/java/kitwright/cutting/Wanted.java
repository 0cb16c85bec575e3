package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.cutting.solve.Bar;
import kitwright.cutting.solve.BarPart;
import kitwright.cutting.solve.BarTask;
import kitwright.cutting.solve.FirstCut;
import kitwright.cutting.solve.Grain;
import kitwright.cutting.solve.Joint;
import kitwright.cutting.solve.Panel;
import kitwright.cutting.solve.PanelPart;
import kitwright.cutting.solve.PanelSaw;
import kitwright.cutting.solve.PanelTask;
import kitwright.cutting.solve.Run;
import kitwright.cutting.solve.Span;
import kitwright.cutting.solve.Spoilt;
import kitwright.cutting.solve.Stages;
import kitwright.ledger.Cut;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * A cut in the solver's terms. Asked only of cuts that {@link CutFaults} finds nothing wrong with.
 */
final class Wanted {
  /**
   * A jointed piece shorter than this many joints would be all glue. Common practice, no source.
   */
  private static final long JOINTS_A_PIECE = 3;

  private static final long LEAST_PIECE = 1500;

  /** What truing two ends for a butt joint takes: 2 mm. Common practice, no source. */
  private static final long BUTT_LOSS = 20;

  private Wanted() {}

  /**
   * Whether it is a matter of lengths: where a part may be joined, says no width, or no two parts
   * fit side by side on the widest piece.
   */
  static boolean isLengths(Cut cut, Rack rack) {
    if (cut.parts().stream()
        .anyMatch(part -> part.scarf().isPresent() || part.butt() || part.width().isEmpty())) {
      return true;
    }
    long widest =
        rack.pieces().stream().mapToLong(free -> width(size(free.stock()))).max().orElse(0);
    long narrowest =
        cut.parts().stream()
            .mapToLong(
                part ->
                    Math.min(
                        Tenths.atLeast(part.width().orElse(part.length())),
                        Tenths.atLeast(part.length())))
            .min()
            .orElse(0);
    return 2 * narrowest + ripKerf(cut) > widest;
  }

  static BarTask lengths(Cut cut, Rack rack) {
    List<BarPart> parts = new ArrayList<>();
    for (Cut.Part part : cut.parts()) {
      parts.add(
          new BarPart(
              part.mark(),
              Tenths.atLeast(part.length()),
              part.qty(),
              part.priority().orElse(1),
              joint(part, rack)));
    }
    List<Bar> stock = new ArrayList<>();
    for (Rack.Free free : rack.pieces()) {
      Size size = size(free.stock());
      stock.add(
          new Bar(
              free.stock().id(),
              tenths(size.length()),
              free.count(),
              value(free.stock(), rack),
              flaws(free.stock(), size)));
    }
    return new BarTask(parts, stock, Tenths.atLeast(cut.kerf()), trim(cut), keepLength(cut));
  }

  static PanelTask panels(Cut cut, Rack rack) {
    List<PanelPart> parts = new ArrayList<>();
    for (Cut.Part part : cut.parts()) {
      parts.add(
          new PanelPart(
              part.mark(),
              Tenths.atLeast(part.length()),
              Tenths.atLeast(part.width().orElseThrow()),
              part.qty(),
              part.priority().orElse(1),
              grain(part)));
    }
    List<Panel> stock = new ArrayList<>();
    for (Rack.Free free : rack.pieces()) {
      Size size = size(free.stock());
      stock.add(
          new Panel(
              free.stock().id(),
              tenths(size.length()),
              width(size),
              free.count(),
              value(free.stock(), rack),
              flaws(free.stock(), size).stream()
                  .map(span -> new Spoilt(Run.ACROSS, span))
                  .toList()));
    }
    PanelSaw saw =
        new PanelSaw(
            ripKerf(cut),
            Tenths.atLeast(cut.kerf()),
            trim(cut),
            firstCut(cut),
            Stages.TWO_AND_TRIM);
    return new PanelTask(
        parts,
        stock,
        saw,
        cut.keep().map(keep -> tenths(keep.length().max(keep.width()))).orElse(keepLength(cut)),
        cut.keep().map(keep -> tenths(keep.length().min(keep.width()))).orElse(0L));
  }

  private static FirstCut firstCut(Cut cut) {
    return cut.first()
        .map(first -> first == Cut.First.ALONG ? FirstCut.ALONG : FirstCut.ACROSS)
        .orElse(FirstCut.EITHER);
  }

  private static Grain grain(Cut.Part part) {
    return switch (part.grain().orElse(Cut.Grain.ANY)) {
      case ALONG -> Grain.ALONG;
      case ACROSS -> Grain.ACROSS;
      case ANY -> Grain.FREE;
    };
  }

  private static Optional<Joint> joint(Cut.Part part, Rack rack) {
    if (part.scarf().isPresent()) {
      long run = Tenths.atLeast(thickness(part, rack).orElseThrow().times(part.scarf().get()));
      return Optional.of(new Joint(run, Math.max(run * JOINTS_A_PIECE, LEAST_PIECE)));
    }
    return part.butt() ? Optional.of(new Joint(BUTT_LOSS, LEAST_PIECE)) : Optional.empty();
  }

  /** As the part says, else the thickest piece it may come from. */
  static Optional<Quantity> thickness(Cut.Part part, Rack rack) {
    return part.thickness()
        .or(
            () ->
                rack.pieces().stream()
                    .flatMap(free -> size(free.stock()).thickness().stream())
                    .max(BigDecimal::compareTo)
                    .map(mm -> new Quantity(mm, Unit.MM)));
  }

  static long ripKerf(Cut cut) {
    return Tenths.atLeast(cut.ripKerf().orElse(cut.kerf()));
  }

  private static long trim(Cut cut) {
    return cut.trim().map(Tenths::atLeast).orElse(0L);
  }

  private static long keepLength(Cut cut) {
    return cut.keepLength()
        .map(Tenths::atLeast)
        .orElse(cut.keep().map(keep -> tenths(keep.length())).orElse(0L));
  }

  /** By worth where every piece has one in the same money, else by size. */
  private static long value(Stock stock, Rack rack) {
    boolean priced =
        rack.pieces().stream().allMatch(free -> free.stock().worth().isPresent())
            && rack.pieces().stream()
                    .map(free -> free.stock().worth().orElseThrow().currency())
                    .distinct()
                    .count()
                == 1;
    if (priced) {
      return stock
          .worth()
          .orElseThrow()
          .of(Quantity.of("1", Unit.EACH))
          .amount()
          .unscaledValue()
          .longValue();
    }
    Size size = size(stock);
    return Math.max(1, size.length().multiply(size.width()).movePointLeft(2).longValue());
  }

  private static List<Span> flaws(Stock stock, Size size) {
    long end = tenths(size.length());
    return stock.flaws().stream()
        .map(flaw -> new Span(Tenths.atMost(flaw.from()), Math.min(end, Tenths.atLeast(flaw.to()))))
        .sorted(java.util.Comparator.comparingLong(Span::from))
        .toList();
  }

  static Size size(Stock stock) {
    return stock.size().orElseThrow();
  }

  static long width(Size size) {
    return tenths(size.width());
  }

  static long tenths(BigDecimal mm) {
    return mm.movePointRight(1).setScale(0, java.math.RoundingMode.FLOOR).longValueExact();
  }
}
