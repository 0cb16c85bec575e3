package kitwright.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * Plies of cloth over an area, and the resin that wets them.
 *
 * <p>Cloth = area × plies × w / (w - o), where lengths of width w lie side by side with overlap o.
 * Resin mix = cloth × areal weight × (1 - f) / f, where f is the share of fibre by mass: the
 * definition of f. Of a mix with r kg of hardener to 1 kg of resin, 1 / (1 + r) is resin. Resin
 * that a bare core or timber drinks is not in it: add it to the waste.
 */
final class Laminating {
  private final Ledger ledger;
  private final BigDecimal waste;
  private final List<Line> lines;
  private final List<TakeOff.Gap> gaps;

  Laminating(Ledger ledger, BigDecimal waste, List<Line> lines, List<TakeOff.Gap> gaps) {
    this.ledger = ledger;
    this.waste = waste;
    this.lines = lines;
    this.gaps = gaps;
  }

  void plies(Ref ref, Material cloth, Optional<BigDecimal> plies, Quantity area) {
    if (plies.isEmpty()) {
      gap("how many plies of " + ref.id() + " there are", "Write the layer’s “plies”.");
      return;
    }
    if (isLappedSomehow(cloth)) {
      gap(
          "how much of " + ref.id() + " laps the next",
          "Write the “roll-width” of that material, wider than its “overlap”.");
      return;
    }
    BigDecimal count = plies.get();
    Sum laid =
        Sum.of(area.in(Unit.M2))
            .times(count, Decimal.print(count) + (isOne(count) ? " ply" : " plies"));
    Sum cloths = overlapped(cloth, laid);
    lines.add(cloths.line(ref, Line.Role.CLOTH, Unit.M2, waste));
    resin(ref, cloth, cloths);
  }

  private void gap(String what, String mend) {
    gaps.add(new TakeOff.Gap(what, mend));
  }

  private static boolean isOne(BigDecimal count) {
    return count.compareTo(BigDecimal.ONE) == 0;
  }

  /** Whether it laps the next, and nobody can say what is left of its width. */
  private static boolean isLappedSomehow(Material cloth) {
    Optional<BigDecimal> width = measure(cloth, MaterialProperty.ROLL_WIDTH, Unit.M);
    return measure(cloth, MaterialProperty.OVERLAP, Unit.M)
        .filter(lap -> lap.signum() > 0)
        .filter(lap -> width.filter(wide -> lap.compareTo(wide) < 0).isEmpty())
        .isPresent();
  }

  private static Sum overlapped(Material cloth, Sum laid) {
    Optional<BigDecimal> width = measure(cloth, MaterialProperty.ROLL_WIDTH, Unit.M);
    Optional<BigDecimal> overlap = measure(cloth, MaterialProperty.OVERLAP, Unit.M);
    if (width.isEmpty() || overlap.isEmpty()) {
      return laid;
    }
    BigDecimal covers = width.get().subtract(overlap.get());
    return laid.times(
        width.get().divide(covers, MathContext.DECIMAL64),
        Decimal.print(width.get()) + "/" + Decimal.print(covers) + " for overlaps");
  }

  private void resin(Ref ref, Material cloth, Sum cloths) {
    Optional<BigDecimal> weight = measure(cloth, MaterialProperty.AREAL_WEIGHT, Unit.KG_PER_M2);
    Optional<BigDecimal> fibre = measure(cloth, MaterialProperty.FIBRE_FRACTION, Unit.ONE);
    if (cloth.resin().isEmpty()
        || weight.isEmpty()
        || fibre.filter(f -> f.signum() > 0 && f.compareTo(BigDecimal.ONE) < 0).isEmpty()) {
      gap(
          "how much resin " + ref.id() + " takes",
          "Write “resin”, “areal-weight” and “fibre-fraction” of that material.");
      return;
    }
    BigDecimal f = fibre.get();
    BigDecimal perFibre = BigDecimal.ONE.subtract(f).divide(f, MathContext.DECIMAL64);
    Sum mix =
        cloths
            .told(Unit.M2)
            .times(weight.get(), Decimal.print(weight.get()) + " kg/m2")
            .times(
                perFibre, "(1 − " + Decimal.print(f) + ")/" + Decimal.print(f) + " by fibre share");
    mixed(cloth.resin().get(), mix);
  }

  private void mixed(Ref resin, Sum mix) {
    Optional<Material> found = ledger.material(resin);
    Optional<BigDecimal> ratio =
        found.flatMap(each -> measure(each, MaterialProperty.MIX_RATIO, Unit.ONE));
    if (ratio.isEmpty()) {
      lines.add(mix.line(resin, Line.Role.RESIN, Unit.KG, waste));
      gap("how much of " + resin.id() + " is hardener", "Write its “mix-ratio”.");
      return;
    }
    BigDecimal r = ratio.get();
    BigDecimal whole = BigDecimal.ONE.add(r);
    String parts = Decimal.print(whole);
    lines.add(
        mix.times(BigDecimal.ONE.divide(whole, MathContext.DECIMAL64), "1/" + parts)
            .line(resin, Line.Role.RESIN, Unit.KG, waste));
    Optional<Ref> hardener = found.flatMap(Material::hardener);
    if (hardener.isEmpty()) {
      gap("which hardener goes with " + resin.id(), "Write its “hardener”.");
    } else {
      lines.add(
          mix.times(r.divide(whole, MathContext.DECIMAL64), Decimal.print(r) + "/" + parts)
              .line(hardener.get(), Line.Role.HARDENER, Unit.KG, waste));
    }
  }

  private static Optional<BigDecimal> measure(
      Material material, MaterialProperty property, Unit unit) {
    return Optional.ofNullable(material.properties().get(property))
        .filter(quantity -> quantity.unit().convertsTo(unit))
        .map(quantity -> quantity.in(unit).amount());
  }
}
