package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What so much of a thing costs. A price without a unit is that of one, or of one of the item’s own
 * unit; a foot is 0.3048 m exactly (NIST SP 811, 2008, Appendix B.8).
 */
class CostTest {
  private static Quantity qty(String text) throws Misread {
    return Quantity.parse(text, Unit.EACH);
  }

  @ParameterizedTest
  @CsvSource({
    "20 m, 3 EUR, 10 m, 30.00 EUR",
    "20 m, 3 EUR, 10 ft, 9.14 EUR", // 3.048 m
    "20 m, 3 EUR/ft, 10 ft, 30.00 EUR",
    "20 m, 3 EUR/ft, 3.048 m, 30.00 EUR",
    "20 m, 3 EUR, 500 mm, 1.50 EUR",
    "20 m, 3 EUR, 2 kg, none",
    "20 m, 3 EUR/kg, 2 m, none",
    "8, 3 EUR, 4, 12.00 EUR",
    "8, 3 EUR, 4 m, none",
    "8 sheet, 3 EUR, 2 sheet, 6.00 EUR"
  })
  void anItemCostsByItsOwnUnit(String promised, String price, String of, String cost)
      throws Misread {
    KitItem item =
        Sample.ledger("kit: [{id: a, what: a, qty: " + promised + ", price: " + price + "}]")
            .kit()
            .get(0);
    assertThat(item.cost(qty(of)).map(Object::toString).orElse("none")).isEqualTo(cost);
  }

  @ParameterizedTest
  @CsvSource({
    "12 EUR/kg, 500 g, 6.00 EUR",
    "12 EUR/kg, 2 m, none",
    "12 EUR, 4 sheet, 48.00 EUR",
    "12 EUR, 4, 48.00 EUR",
    "12 EUR, 500 g, none" // nobody says whether a kilogramme costs so much, or a tin
  })
  void aMaterialCostsByTheUnitThatItsPriceNames(String price, String of, String cost)
      throws Misread {
    Material material =
        Sample.ledger("materials: [{id: a, kind: resin, source: test, price: " + price + "}]")
            .material(new kitwright.value.Ref("a", new kitwright.value.Place("x", 1, 1, 1, 1)))
            .orElseThrow();
    assertThat(material.cost(qty(of)).map(Object::toString).orElse("none")).isEqualTo(cost);
  }
}
