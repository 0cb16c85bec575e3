package kitwright.shortage;

import java.math.BigDecimal;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/**
 * A material that tasks ask for by its own name, in one unit; sheets and boards of it serve where
 * their thickness is the one asked for.
 */
record Pool(String material, Optional<BigDecimal> thickness, Unit unit) {
  private static final BigDecimal AS_THICK = new BigDecimal("0.05");
  private static final BigDecimal MM2_PER_M2 = BigDecimal.valueOf(1_000_000);
  private static final BigDecimal MM_PER_M = BigDecimal.valueOf(1_000);

  static Pool of(String material, Optional<Quantity> thickness, Quantity wanted) {
    Unit unit =
        switch (wanted.unit().dimension()) {
          case AREA -> Unit.M2;
          case LENGTH -> Unit.M;
          case MASS -> Unit.KG;
          case VOLUME -> Unit.L;
          default -> wanted.unit();
        };
    return new Pool(
        material,
        thickness
            .filter(thick -> thick.unit().dimension() == Dimension.LENGTH)
            .map(thick -> thick.in(Unit.MM).amount()),
        unit);
  }

  String key() {
    return "material "
        + material
        + thickness.map(t -> " " + t + " mm").orElse("")
        + " in "
        + unit.symbol();
  }

  /** So much of a piece's kind in this unit; empty where it is none of this. */
  Optional<BigDecimal> amount(Quantity qty, Optional<Size> size) {
    if (thickness.isPresent() && !size.flatMap(Size::thickness).map(this::isAsThick).orElse(true)) {
      return Optional.empty();
    }
    if (qty.unit().convertsTo(unit)) {
      return Optional.of(qty.in(unit).amount());
    }
    return size.filter(any -> qty.unit().isOfPieces())
        .flatMap(each -> ofPieces(qty.amount(), each));
  }

  private Optional<BigDecimal> ofPieces(BigDecimal count, Size size) {
    return switch (unit) {
      case M2 ->
          Optional.of(count.multiply(size.length()).multiply(size.width()).divide(MM2_PER_M2));
      case M -> Optional.of(count.multiply(size.length()).divide(MM_PER_M));
      default -> Optional.empty();
    };
  }

  private boolean isAsThick(BigDecimal other) {
    BigDecimal wanted = thickness.orElseThrow();
    return wanted.subtract(other).abs().compareTo(wanted.multiply(AS_THICK)) <= 0;
  }
}
