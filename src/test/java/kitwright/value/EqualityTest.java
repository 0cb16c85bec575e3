package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Values are equal where all they consist of is, and what is equal has one hash. */
class EqualityTest {
  private static final Place PLACE = new Place("a.yaml", 1, 2, 3, 4);

  private static List<List<? extends Record>> families() {
    return List.of(
        List.of(
            PLACE,
            new Place("a.yaml", 1, 2, 3, 4),
            new Place("b.yaml", 1, 2, 3, 4),
            new Place("a.yaml", 9, 2, 3, 4),
            new Place("a.yaml", 1, 9, 3, 4),
            new Place("a.yaml", 1, 2, 9, 4),
            new Place("a.yaml", 1, 2, 3, 9)),
        List.of(
            new Ref("a", PLACE),
            new Ref("a", new Place("a.yaml", 1, 2, 3, 4)),
            new Ref("b", PLACE),
            new Ref("a", Place.wholeFile("a.yaml"))),
        List.of(
            Quantity.of("4", Unit.M),
            Quantity.of("4.00", Unit.M),
            Quantity.of("400", Unit.CM),
            Quantity.of("5", Unit.M)),
        List.of(money("4", "EUR"), money("4.00", "EUR"), money("4", "NZD"), money("5", "EUR")),
        List.of(
            ThreePoint.fixed("a"),
            new ThreePoint<>("a", "a", "a"),
            new ThreePoint<>("b", "a", "a"),
            new ThreePoint<>("a", "b", "a"),
            new ThreePoint<>("a", "a", "b")),
        List.of(
            days("2026-01-02", "2026-01-03"),
            days("2026-01-02", "2026-01-03"),
            days("2026-01-01", "2026-01-03"),
            days("2026-01-02", "2026-01-04")));
  }

  private static Money money(String amount, String currency) {
    return new Money(new java.math.BigDecimal(amount), java.util.Currency.getInstance(currency));
  }

  private static Days days(String first, String last) {
    return new Days(LocalDate.parse(first), LocalDate.parse(last));
  }

  @TestFactory
  Stream<DynamicTest> equalityIsThatOfTheComponents() {
    return families().stream()
        .map(family -> DynamicTest.dynamicTest(name(family), () -> agrees(family)));
  }

  private static String name(List<? extends Record> family) {
    return family.get(0).getClass().getSimpleName();
  }

  private static void agrees(List<? extends Record> family) throws ReflectiveOperationException {
    for (Record one : family) {
      assertThat(one).isNotEqualTo("something else").isNotEqualTo(null);
      for (Record other : family) {
        boolean same = components(one).equals(components(other));
        assertThat(one.equals(other)).as(one + " and " + other).isEqualTo(same);
        if (same) {
          assertThat(one).hasSameHashCodeAs(other);
        }
      }
    }
    assertThat(family.stream().map(Objects::hashCode).distinct().count())
        .as("hashes tell them apart")
        .isGreaterThan(family.size() / 2);
  }

  private static List<Object> components(Record record) throws ReflectiveOperationException {
    List<Object> all = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      component.getAccessor().setAccessible(true);
      all.add(component.getAccessor().invoke(record));
    }
    return all;
  }
}
