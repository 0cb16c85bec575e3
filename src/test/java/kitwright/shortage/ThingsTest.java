package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.ledger.Ledger;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** As which thing, and how much of it, each record counts. */
class ThingsTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          budget: [{line: l, title: L, amount: 900}]
          materials:
            - {id: ply, kind: plywood, what: birch ply, density: 680 kg/m3, source: test}
            - {id: larch, kind: timber, density: 560 kg/m3, source: test}
            - {id: epoxy, kind: resin, density: 1.15 g/cm3, source: test}
          kit:
            - {id: sheet, what: sheet, qty: 4 sheet, material: ply, size: 2440 x 1220 x 12 mm}
            - {id: thin, what: thin sheet, qty: 4 sheet, material: ply, size: 2440 x 1220 x 6 mm}
            - {id: board, what: board, qty: 5, material: larch, size: 3000 x 120 x 25 mm}
            - {id: bolt, what: bolt, qty: 10}
            - {id: rope, what: rope, qty: 14 m}
          stock:
            - {id: rest, what: ply left, qty: 2 m2, material: ply}
            - {id: jar, what: jar, qty: 800 g, material: epoxy}
            - {id: wire, what: wire, qty: 20 m}
          spending:
            - {id: p, on: 2026-01-20, line: l, what: w, state: paid, amount: 9, material: epoxy, qty: 2 kg}
            - {id: q, on: 2026-01-20, line: l, what: w, state: paid, amount: 9, item: rope, qty: 10 ft}
            - {id: r, on: 2026-01-20, line: l, what: w, state: paid, amount: 9, item: rope}
            - {id: t, on: 2026-01-20, line: l, what: w, state: paid, amount: 9, qty: 2}
          tasks:
            - {id: hull, what: Hull, takes: 1 d, uses: [%s]}
          ---
          day: 2026-02-20
          used: [{item: rope, qty: 2 m}, {stock: wire, qty: 3 m}, {material: epoxy, qty: 500 g}, {stock: wire, qty: 3 kg}]
          ---
          """
              .formatted(
                  "{material: larch, qty: 9 m}, {material: epoxy, qty: 1 kg}, {section: skin, area:"
                      + " 2 m2}, {item: bolt, qty: 2}, {stock: wire, qty: 4 m}")
              .replace(
                  "tasks:",
                  "sections: [{id: skin, layers: [{material: ply, thickness: 12 mm}]}]\ntasks:"));
  private static final List<Want> WANTS = Wants.of(LEDGER.tasks().get(0), LEDGER);
  private static final Things THINGS = new Things(LEDGER, WANTS);

  private static String told(Optional<Things.Amount> amount) {
    return amount
        .map(
            each ->
                each.thing().key()
                    + ": "
                    + each.amount().stripTrailingZeros().toPlainString()
                    + " "
                    + each.thing().unit().symbol())
        .orElse("nothing");
  }

  @Test
  void aMaterialIsAskedForInItsOwnUnit() {
    assertThat(WANTS.stream().map(THINGS::of).map(ThingsTest::told))
        .containsExactly(
            "material larch in m: 9 m",
            "material epoxy in kg: 1 kg",
            "material ply 12 mm in m2: 2 m2",
            "kit bolt: 2 each",
            "stock wire: 4 m");
    assertThat(THINGS.materials()).containsExactly("larch", "epoxy", "ply");
    assertThat(THINGS.keysOf("ply")).containsExactly("material ply 12 mm in m2");
    assertThat(THINGS.keysOf("oak")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // 2.44 m × 1.22 m is 2.9768 m² a sheet.
        "sheet; 2 sheet; material ply 12 mm in m2: 5.9536 m2",
        "sheet; 1; material ply 12 mm in m2: 2.9768 m2",
        "thin; 2 sheet; kit thin: 2 sheet", // too thin to serve as that material
        "board; 5; material larch in m: 15 m", // five of three metres
        "board; 5 m; material larch in m: 5 m",
        "board; 5 kg; nothing",
        "bolt; 3; kit bolt: 3 each",
        "bolt; 3 m; nothing",
        "rope; 10 ft; kit rope: 3.048 m"
      })
  void anItemCountsAsTheMaterialThatSomebodyAsksForByName(String id, String qty, String told)
      throws Exception {
    var item = LEDGER.kit().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    assertThat(told(THINGS.of(item, Quantity.parse(qty, Unit.EACH)))).isEqualTo(told);
  }

  @Test
  void stockSpendingAndTheLogCountAlike() {
    assertThat(LEDGER.stock().stream().map(each -> told(THINGS.of(each, each.amount()))))
        .containsExactly(
            // What has no size may be as thick as is asked.
            "material ply 12 mm in m2: 2 m2", "material epoxy in kg: 0.8 kg", "stock wire: 20 m");
    assertThat(LEDGER.stock().stream().map(THINGS::of))
        .containsExactly(
            List.of("material ply 12 mm in m2"),
            List.of("material epoxy in kg"),
            List.of("stock wire"));
    assertThat(LEDGER.spending().stream().map(each -> told(THINGS.of(each))))
        .containsExactly("material epoxy in kg: 2 kg", "kit rope: 3.048 m", "nothing", "nothing");
    assertThat(LEDGER.log().get(0).used().stream().map(each -> told(THINGS.of(each))))
        .containsExactly(
            "kit rope: 2 m", "stock wire: 3 m", "material epoxy in kg: 0.5 kg", "nothing");
  }

  @Test
  void aThingIsNamedByItsMaterialAndThickness() {
    assertThat(WANTS.stream().map(each -> THINGS.of(each).orElseThrow().thing()))
        .extracting(Thing::what, Thing::record)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("larch", "material larch"),
            org.assertj.core.groups.Tuple.tuple("epoxy", "material epoxy"),
            org.assertj.core.groups.Tuple.tuple("birch ply 12 mm", "material ply"),
            org.assertj.core.groups.Tuple.tuple("bolt", "kit item bolt"),
            org.assertj.core.groups.Tuple.tuple("wire", "stock wire"));
  }

  @Test
  void thatNobodyAsksForByNameIsItself() {
    Things none = new Things(LEDGER, List.of());
    assertThat(told(none.of(LEDGER.kit().get(0), LEDGER.kit().get(0).qty())))
        .isEqualTo("kit sheet: 4 sheet");
    assertThat(none.materials()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "12; 12; true",
        "12; 12.6; true", // a twentieth more
        "12; 12.7; false",
        "12; 11.4; true",
        "12; 11.3; false"
      })
  void aSheetServesWithinATwentiethOfTheThickness(String asked, String other, boolean serves)
      throws Exception {
    Pool pool = Pool.of("ply", Optional.of(Quantity.of(asked, Unit.MM)), Quantity.of("1", Unit.M2));
    var size = kitwright.value.Size.parse("1000 x 500 x " + other + " mm");
    assertThat(pool.amount(Quantity.of("2", Unit.EACH), Optional.of(size)).isPresent())
        .isEqualTo(serves);
    assertThat(pool.amount(Quantity.of("2", Unit.M2), Optional.of(size)).isPresent())
        .isEqualTo(serves);
  }

  @Test
  void piecesAreCountedByLengthOrAreaAndNoOtherwise() throws Exception {
    var size = Optional.of(kitwright.value.Size.parse("1000 x 500 x 12 mm"));
    Quantity two = Quantity.of("2", Unit.EACH);
    assertThat(pool("1 m2").amount(two, size)).hasValue(new BigDecimal("1"));
    assertThat(pool("1 m").amount(two, size)).hasValue(new BigDecimal("2"));
    assertThat(pool("1 kg").amount(two, size)).isEmpty();
    assertThat(pool("1 m2").amount(two, Optional.empty())).isEmpty();
    assertThat(pool("1 m2").amount(Quantity.of("2", Unit.KG), size)).isEmpty();
    assertThat(pool("1 m2").amount(Quantity.of("2", Unit.M), size)).isEmpty();
    assertThat(pool("3 each").amount(two, size)).hasValue(new BigDecimal("2"));
  }

  private static Pool pool(String wanted) throws Exception {
    return Pool.of("ply", Optional.empty(), Quantity.parse(wanted, Unit.EACH));
  }

  @ParameterizedTest
  @CsvSource({"3 ft2, m2", "3 ft, m", "3 g, kg", "3 ml, l", "3 sheet, sheet", "3, each"})
  void aPoolIsReckonedInTheUsualUnitOfItsDimension(String wanted, String unit) throws Exception {
    assertThat(pool(wanted).unit().symbol()).isEqualTo(unit);
    assertThat(pool(wanted).key()).isEqualTo("material ply in " + unit);
  }

  @Test
  void aThicknessThatIsNoLengthIsNone() {
    Quantity wanted = Quantity.of("1", Unit.M2);
    assertThat(Pool.of("ply", Optional.of(Quantity.of("12", Unit.KG)), wanted).key())
        .isEqualTo("material ply in m2");
    assertThat(Pool.of("ply", Optional.of(Quantity.of("1.2", Unit.of("cm").orElseThrow())), wanted))
        .extracting(Pool::key)
        .isEqualTo("material ply 12 mm in m2");
  }

  @Test
  void poolsThingsAndSpotsAreTheSameByAllThatTheyAre() throws Exception {
    Pool thick = Pool.of("ply", Optional.of(Quantity.of("12", Unit.MM)), Quantity.of("1", Unit.M2));
    assertThat(pool("1 m2")).isEqualTo(pool("2 m2")).hasSameHashCodeAs(pool("2 m2"));
    assertThat(pool("1 m2")).isNotEqualTo(pool("1 m")).isNotEqualTo(thick).isNotEqualTo("ply");
    assertThat(pool("1 m2"))
        .isNotEqualTo(Pool.of("oak", Optional.empty(), Quantity.of("1", Unit.M2)));
    Thing bolt = new Thing("kit bolt", "bolt", Unit.EACH);
    assertThat(bolt).isEqualTo(new Thing("kit bolt", "bolt", Unit.EACH));
    assertThat(bolt).hasSameHashCodeAs(new Thing("kit bolt", "bolt", Unit.EACH));
    assertThat(bolt)
        .isNotEqualTo(new Thing("kit nut", "bolt", Unit.EACH))
        .isNotEqualTo(new Thing("kit bolt", "nut", Unit.EACH))
        .isNotEqualTo(new Thing("kit bolt", "bolt", Unit.M))
        .isNotEqualTo("bolt");
    assertThat(new Spot("a", "b")).isEqualTo(new Spot("a", "b"));
    assertThat(new Spot("a", "b"))
        .hasSameHashCodeAs(new Spot("a", "b"))
        .isNotEqualTo(new Spot("a", "c"))
        .isNotEqualTo(new Spot("c", "b"))
        .isNotEqualTo("a");
  }

  @ParameterizedTest
  @CsvSource({
    "3, 3 × hoop",
    "1, 1 × hoop",
    "2 m, 2 m of hoop",
    "1 m, 1 m of hoop",
    "2 sheet, 2 sheets of hoop",
    "1 sheet, 1 sheet of hoop",
    "0.5 sheet, 0.5 sheets of hoop",
    "2 box, 2 boxes of hoop",
    "1 box, 1 box of hoop"
  })
  void soMuchOfAThingInWords(String qty, String words) throws Exception {
    assertThat(
            new Thing("kit hoop", "hoop", Unit.EACH)
                .so(Quantity.parse(qty, Unit.EACH))
                .replace('\u00a0', ' '))
        .isEqualTo(words);
  }

  @Test
  void whatConversionLeavesBehindIsNothing() {
    Thing rope = new Thing("kit rope", "rope", Unit.M);
    assertThat(rope.qty(new BigDecimal("0.0000004")).isNone()).isTrue();
    assertThat(rope.qty(new BigDecimal("0.0000006"))).isEqualTo(Quantity.of("0.000001", Unit.M));
    assertThat(rope.qty(new BigDecimal("-2")).isNone()).as("below nothing is nothing").isTrue();
    assertThat(Thing.clean(new BigDecimal("-0.0000004")).signum()).isZero();
    assertThat(rope.unit().dimension()).isEqualTo(Dimension.LENGTH);
  }
}
