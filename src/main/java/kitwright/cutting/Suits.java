package kitwright.cutting;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import kitwright.cutting.solve.Grain;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Stock;
import kitwright.value.Decimal;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * Whether a part may come from a stock, and how it must lie there. What is not stated is taken for
 * what cannot hurt: wood of unknown thickness or material does not do, and solid wood is not laid
 * across.
 *
 * @param lies how it must lie, against the length of the piece; empty where it may not come from it
 * @param why why it may not, in words that go on after the name of the stock
 */
record Suits(Optional<Grain> lies, String why) {
  /** A piece no wider than this and several times as long is taken for a board. From memory. */
  private static final BigDecimal WIDEST_BOARD = BigDecimal.valueOf(300);

  private static Suits no(String why) {
    return new Suits(Optional.empty(), why);
  }

  /** Judges a part of a cut against a stock that has a size. */
  static Suits of(Cut.Part part, Stock stock, Cut cut, Ledger ledger) {
    if (!part.from().isEmpty()
        && part.from().stream().noneMatch(ref -> ref.id().equals(stock.id()))) {
      return no("is not among the stock named for it");
    }
    Size size = stock.size().orElseThrow();
    Optional<String> wrong = thickness(part, stock, size, ledger).or(() -> material(part, stock));
    if (wrong.isPresent()) {
      return no(wrong.get());
    }
    Optional<Grain> lies = lies(part, stock, size, ledger);
    if (lies.isEmpty()) {
      return no("does not say how its grain runs");
    }
    return room(part, stock, cut, lies.get());
  }

  private static Optional<String> thickness(Cut.Part part, Stock stock, Size size, Ledger ledger) {
    if (part.thickness().isEmpty()) {
      return Optional.empty();
    }
    if (size.thickness().isEmpty()) {
      return Optional.of("does not say how thick it is");
    }
    BigDecimal has = size.thickness().get();
    int planed = has.compareTo(part.thickness().get().in(Unit.MM).amount());
    if (planed < 0) {
      return Optional.of("is " + Decimal.print(has) + " mm thick");
    }
    if (planed == 0 || isSolid(stock, size, ledger)) {
      return Optional.empty();
    }
    return Optional.of(
        "is "
            + Decimal.print(has)
            + " mm thick and "
            + (stock.material().isEmpty()
                ? "does not say whether it is wood that can be planed"
                : "cannot be planed"));
  }

  private static Optional<String> material(Cut.Part part, Stock stock) {
    if (part.material().isEmpty()) {
      return Optional.empty();
    }
    if (stock.material().isEmpty()) {
      return Optional.of("does not say what it is made of");
    }
    String is = stock.material().get().id();
    return is.equals(part.material().get().id()) ? Optional.empty() : Optional.of("is of " + is);
  }

  /** How the grain of a stock runs against its length; empty where that is not said. */
  static Optional<Cut.Grain> grain(Stock stock) {
    return stock
        .grain()
        .map(text -> text.strip().toLowerCase(Locale.ROOT))
        .flatMap(
            text ->
                switch (text) {
                  case "along" -> Optional.of(Cut.Grain.ALONG);
                  case "across" -> Optional.of(Cut.Grain.ACROSS);
                  case "any", "none" -> Optional.of(Cut.Grain.ANY);
                  default -> Optional.empty();
                });
  }

  /** Where a size is written with its shorter side first, what its grain is taken for. */
  static Optional<String> doubt(Stock stock) {
    Size size = stock.size().orElseThrow();
    return grain(stock)
        .filter(grain -> grain != Cut.Grain.ANY && size.length().compareTo(size.width()) < 0)
        .map(
            grain ->
                stock.id()
                    + " is written "
                    + Decimal.print(size.length())
                    + " x "
                    + Decimal.print(size.width())
                    + " mm with its grain "
                    + (grain == Cut.Grain.ALONG ? "along" : "across")
                    + ": it is taken to run with the side of "
                    + Decimal.print(grain == Cut.Grain.ALONG ? size.length() : size.width())
                    + " mm.");
  }

  private static Optional<Grain> lies(Cut.Part part, Stock stock, Size size, Ledger ledger) {
    Optional<Cut.Grain> has = grain(stock);
    boolean solid = isSolid(stock, size, ledger);
    if (has.isEmpty() && solid && stock.grain().isEmpty() && part.grain().isEmpty()) {
      return Optional.of(Grain.ALONG); // a board's grain runs along it
    }
    Cut.Grain asked = part.grain().orElse(solid ? Cut.Grain.ALONG : Cut.Grain.ANY);
    if (asked == Cut.Grain.ANY) {
      return Optional.of(Grain.FREE);
    }
    return has.map(
        grain -> grain == Cut.Grain.ANY ? Grain.FREE : grain == asked ? Grain.ALONG : Grain.ACROSS);
  }

  private static boolean isSolid(Stock stock, Size size, Ledger ledger) {
    Optional<Material.Sort> sort = sort(stock, ledger);
    if (sort.isPresent()) {
      return sort.get() == Material.Sort.TIMBER;
    }
    if (stock.material().isPresent()) {
      return true; // of a material that nobody described
    }
    boolean boardLike =
        size.width().compareTo(WIDEST_BOARD) <= 0
            && size.length().compareTo(size.width().multiply(BigDecimal.valueOf(3))) >= 0;
    return boardLike || (stock.grain().isPresent() && grain(stock).orElse(null) != Cut.Grain.ANY);
  }

  private static Optional<Material.Sort> sort(Stock stock, Ledger ledger) {
    return stock.material().flatMap(ledger::material).map(Material::sort);
  }

  private static Suits room(Cut.Part part, Stock stock, Cut cut, Grain lies) {
    Clearance room = Clearance.of(stock, cut);
    Optional<Long> width = Sawn.width(part);
    long length = Sawn.length(part);
    boolean joined = part.scarf().isPresent() || part.butt();
    boolean straight =
        lies != Grain.ACROSS
            && (joined || length <= room.longest())
            && width.map(w -> w <= room.width()).orElse(true);
    boolean turned =
        lies != Grain.ALONG
            && width.isPresent()
            && width.get() <= room.longest()
            && length <= room.width();
    if (straight && turned) {
      return new Suits(Optional.of(Grain.FREE), "");
    }
    if (straight) {
      return new Suits(Optional.of(Grain.ALONG), "");
    }
    return turned
        ? new Suits(Optional.of(Grain.ACROSS), "")
        : no(tooSmall(part, stock, room, lies, length, width));
  }

  private static String tooSmall(
      Cut.Part part, Stock stock, Clearance room, Grain lies, long length, Optional<Long> width) {
    String gives =
        "gives "
            + Tenths.mm(room.longest())
            + " x "
            + Tenths.mm(room.width())
            + " mm"
            + (stock.flaws().isEmpty() ? "" : " clear of flaws");
    boolean wouldTurned =
        width.isPresent() && width.get() <= room.longest() && length <= room.width();
    if (lies == Grain.ALONG && wouldTurned && part.grain().isEmpty()) {
      return gives
          + "; turned it would fit, but solid wood is not laid across unless the part says"
          + " “grain: any”";
    }
    boolean grained = grain(stock).filter(grain -> grain != Cut.Grain.ANY).isPresent();
    return lies == Grain.FREE || !grained
        ? gives
        : gives
            + ", its grain "
            + stock.grain().orElse("")
            + " the first side of "
            + Decimal.print(stock.size().orElseThrow().length())
            + " mm"
            + (wouldTurned || lies == Grain.ACROSS
                ? "; if it runs the other way, write “grain: "
                    + (grain(stock).orElseThrow() == Cut.Grain.ALONG ? "across" : "along")
                    + "”"
                : "");
  }
}
