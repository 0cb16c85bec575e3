package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.cutting.saw.Saw;
import kitwright.cutting.saw.Way;
import kitwright.cutting.solve.Grain;
import kitwright.cutting.solve.Joint;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * What a cut asks of its rack, with what each part may come from and how it must lie there.
 *
 * @param suits for each part that can be made at all, by its mark: how it must lie on which stock
 * @param refused why other parts cannot be made, a sentence each, by their marks
 */
record Wanted(
    Cut cut,
    Rack rack,
    Saw saw,
    Map<String, Map<String, Grain>> suits,
    Map<String, String> refused) {
  /**
   * A jointed piece shorter than this many joints would be all glue. Common practice, no source.
   */
  private static final long JOINTS_A_PIECE = 3;

  private static final long LEAST_PIECE = 1500;

  /** What truing two ends for a butt joint takes: 2 mm. Common practice, no source. */
  private static final long BUTT_LOSS = 20;

  private static final int MOST_REASONS = 4;

  static Wanted of(Cut cut, Rack rack, Ledger ledger) {
    Map<String, Map<String, Grain>> suits = new LinkedHashMap<>();
    Map<String, String> refused = new LinkedHashMap<>();
    for (Cut.Part part : cut.parts()) {
      Map<String, Grain> lies = new HashMap<>();
      Map<String, List<String>> why = new LinkedHashMap<>();
      for (Rack.Free free : rack.pieces()) {
        Suits suit = Suits.of(part, free.stock(), cut, ledger);
        suit.lies().ifPresent(way -> lies.put(free.stock().id(), way));
        if (suit.lies().isEmpty()) {
          why.computeIfAbsent(suit.why(), w -> new ArrayList<>()).add(free.stock().id());
        }
      }
      Optional<String> fault = PartFaults.of(part, cut).or(() -> scarf(part, lies, rack));
      if (fault.isPresent() || lies.isEmpty()) {
        refused.put(part.mark(), fault.orElseGet(() -> told(part, why)));
      } else {
        suits.put(part.mark(), Map.copyOf(lies));
      }
    }
    return new Wanted(cut, rack, saw(cut, ledger), suits, refused);
  }

  private static Optional<String> scarf(Cut.Part part, Map<String, Grain> lies, Rack rack) {
    return part.scarf().isPresent() && !lies.isEmpty() && thickness(part, lies, rack).isEmpty()
        ? Optional.of(
            "A scarf of “"
                + part.mark()
                + "” needs a thickness, and neither part nor stock has one.")
        : Optional.empty();
  }

  private static String told(Cut.Part part, Map<String, List<String>> why) {
    String size =
        Tenths.mm(Sawn.length(part))
            + Sawn.width(part).map(width -> " x " + Tenths.mm(width)).orElse("")
            + part.thickness().map(t -> " x " + Tenths.mm(Tenths.atLeast(t))).orElse("")
            + " mm";
    String none = "No piece that the cut draws on suits “" + part.mark() + "”, " + size;
    if (why.isEmpty()) {
      return none + ": there is none with a size.";
    }
    String reasons =
        why.entrySet().stream()
            .limit(MOST_REASONS)
            .map(each -> named(each.getValue()) + " " + each.getKey())
            .collect(Collectors.joining("; "));
    return none + ": " + reasons + ".";
  }

  private static String named(List<String> stock) {
    int last = stock.size() - 1;
    return switch (stock.size()) {
      case 1 -> stock.get(0);
      case 2, 3 ->
          "each of " + String.join(", ", stock.subList(0, last)) + " and " + stock.get(last);
      default ->
          "each of " + String.join(", ", stock.subList(0, 2)) + " and " + (last - 1) + " more";
    };
  }

  private static Saw saw(Cut cut, Ledger ledger) {
    long kerf = Tenths.atLeast(cut.kerf());
    Keep keep = Keep.of(cut, ledger);
    return new Saw(
        kerf,
        Tenths.atLeast(cut.ripKerf().orElse(cut.kerf())),
        Clearance.trim(cut),
        Clearance.edgeTrim(cut),
        keep.longer(),
        keep.shorter(),
        cut.first().map(first -> first == Cut.First.ALONG ? Way.RIP : Way.CROSS));
  }

  /** The parts that can be made, in the order of the cut. */
  List<Cut.Part> parts() {
    return cut.parts().stream().filter(part -> suits.containsKey(part.mark())).toList();
  }

  /** Stock of which there is a piece and from which some part may come. */
  List<Rack.Free> stock() {
    return rack.pieces().stream()
        .filter(free -> free.count() > 0)
        .filter(
            free -> suits.values().stream().anyMatch(lies -> lies.containsKey(free.stock().id())))
        .toList();
  }

  /**
   * Whether it is a matter of lengths: no part is turned, and nowhere do two parts fit side by
   * side.
   */
  boolean isLengths() {
    return stock().stream().allMatch(free -> isLengths(free.stock()));
  }

  private boolean isLengths(Stock stock) {
    long width = Clearance.of(stock, cut).width();
    List<Cut.Part> here =
        parts().stream().filter(part -> suits(part).containsKey(stock.id())).toList();
    boolean straight =
        here.stream()
            .allMatch(
                part -> suits(part).get(stock.id()) == Grain.ALONG || Sawn.width(part).isEmpty());
    long narrowest =
        here.stream().mapToLong(part -> Sawn.width(part).orElse(width)).min().orElse(width);
    return straight && 2 * narrowest + saw.ripKerf() > width;
  }

  Map<String, Grain> suits(Cut.Part part) {
    return suits.getOrDefault(part.mark(), Map.of());
  }

  /** How a part may be joined; empty where it must be whole. */
  Optional<Joint> joint(Cut.Part part) {
    if (part.scarf().isPresent()) {
      Quantity thick = thickness(part, suits(part), rack).orElseThrow();
      long run = Tenths.atLeast(thick.times(part.scarf().get()));
      return Optional.of(new Joint(run, Math.max(run * JOINTS_A_PIECE, LEAST_PIECE)));
    }
    return part.butt() ? Optional.of(new Joint(BUTT_LOSS, LEAST_PIECE)) : Optional.empty();
  }

  /** By how much the lengths of each scarfed part lap, by its mark. */
  Map<String, Long> laps() {
    Map<String, Long> laps = new HashMap<>();
    parts().stream()
        .filter(part -> part.scarf().isPresent())
        .forEach(part -> laps.put(part.mark(), joint(part).orElseThrow().loss()));
    return Map.copyOf(laps);
  }

  /** As the part says, else the thickest piece it may come from. */
  private static Optional<Quantity> thickness(Cut.Part part, Map<String, Grain> lies, Rack rack) {
    return part.thickness()
        .or(
            () ->
                rack.pieces().stream()
                    .map(Rack.Free::stock)
                    .filter(stock -> lies.containsKey(stock.id()))
                    .flatMap(stock -> stock.size().flatMap(Size::thickness).stream())
                    .max(BigDecimal::compareTo)
                    .map(mm -> new Quantity(mm, Unit.MM)));
  }
}
