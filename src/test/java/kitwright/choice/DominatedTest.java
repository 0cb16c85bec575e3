package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.Sample;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Shortage;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;

/** A way out is beaten only by what is known to be nowhere worse and somewhere better. */
class DominatedTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 1);
  private static final Signing SIGNED = new Signing(List.of(), Optional.empty(), List.of());

  private static Shortage.Option option(String id) {
    String yaml =
        "kit: [{id: k, what: k, qty: 9}]\nshortages: [{id: s, item: k, qty: 1, found: 2026-01-24,"
            + " cause: wrong, options: [{id: %s, kind: buy, cost: 1}]}]\n";
    return Sample.ledger(yaml.formatted(id)).shortages().get(0).options().get(0);
  }

  private static Optional<Money> euros(int amount) {
    return amount < 0
        ? Optional.empty()
        : Optional.of(new Money(BigDecimal.valueOf(amount), Currency.getInstance("EUR")));
  }

  /** As drawn, here and launched so many days after the first of April. */
  private static WayOut drawn(String id, int cost, int hours, int arrives, int launch) {
    Money none = Money.zero(Currency.getInstance("EUR"));
    return new WayOut(
        option(id),
        new Outlay(
            euros(cost).map(ThreePoint::fixed),
            euros(cost),
            euros(cost),
            none,
            BigDecimal.valueOf(hours),
            euros(hours)),
        new Timing(
            arrives < 0 ? Optional.empty() : Optional.of(DAY.plusDays(arrives)),
            Optional.empty(),
            launch < 0
                ? Optional.empty()
                : Optional.of(new Timing.LaunchDay(DAY.plusDays(launch), launch)),
            Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  private static WayOut with(WayOut way, Strength strength, Signing signing, Taken... taken) {
    return new WayOut(
        way.option(),
        way.outlay(),
        way.timing(),
        Optional.of(strength),
        Optional.of(signing),
        List.of(taken));
  }

  private static Strength strength(Verdict verdict, double mass) {
    return new Strength(
        Optional.of(verdict),
        Optional.empty(),
        OptionalDouble.empty(),
        mass == 0 ? OptionalDouble.empty() : OptionalDouble.of(mass));
  }

  private static String beaten(WayOut... ways) {
    return Dominated.of(List.of(ways)).toString().replace("Dominated", "");
  }

  @Test
  void eachMeasureAloneDecides() {
    WayOut plain = drawn("plain", 5, 5, 5, 5);
    assertThat(beaten(plain, drawn("other", 6, 5, 5, 5)))
        .isEqualTo("[[way=other, by=plain, reason=cheaper]]");
    assertThat(beaten(plain, drawn("other", 5, 6, 5, 5)))
        .isEqualTo("[[way=other, by=plain, reason=less work]]");
    assertThat(beaten(plain, drawn("other", 5, 5, 6, 5)))
        .isEqualTo("[[way=other, by=plain, reason=here sooner]]");
    assertThat(beaten(plain, drawn("other", 5, 5, 5, 6)))
        .isEqualTo("[[way=other, by=plain, reason=done sooner]]");
    assertThat(beaten(drawn("other", 6, 6, 6, 6), plain))
        .isEqualTo("[[way=other, by=plain, reason=cheaper, less work, done sooner, here sooner]]");
  }

  @Test
  void alikeOrBetterInOneAndWorseInAnotherBeatsNothing() {
    assertThat(beaten(drawn("a", 5, 5, 5, 5), drawn("b", 5, 5, 5, 5))).isEqualTo("[]");
    assertThat(beaten(drawn("a", 4, 6, 5, 5), drawn("b", 5, 5, 5, 5))).isEqualTo("[]");
  }

  @Test
  void twoOfOneNameAreNotCompared() {
    assertThat(beaten(drawn("a", 4, 5, 5, 5), drawn("a", 5, 5, 5, 5))).isEqualTo("[]");
  }

  @Test
  void whatNobodyKnowsNeitherBeatsNorIsBeaten() {
    WayOut known = drawn("known", 5, 5, 5, 5);
    for (WayOut unknown :
        List.of(drawn("x", -1, 9, 9, 9), drawn("x", 9, 9, -1, 9), drawn("x", 9, 9, 9, -1))) {
      assertThat(beaten(known, unknown)).isEqualTo("[]");
      assertThat(beaten(unknown, drawn("worse", 10, 10, 10, 10))).isEqualTo("[]");
    }
  }

  @Test
  void nothingCanCostLessThanNothing() {
    assertThat(beaten(drawn("free", 0, 0, 5, 5), drawn("x", -1, 2, 9, 9)))
        .as("that it is cheaper is not known, and not said")
        .isEqualTo("[[way=x, by=free, reason=less work, done sooner, here sooner]]");
    assertThat(beaten(drawn("free", 0, 0, 5, 5), drawn("x", -1, 0, 5, 5))).isEqualTo("[]");
  }

  @Test
  void strengthMassSignaturesAndWhatOthersLoseCountToo() {
    WayOut plain = drawn("plain", 5, 5, 5, 5);
    WayOut other = drawn("other", 5, 5, 5, 5);
    Strength asDrawn = strength(Verdict.pass(), 1);
    assertThat(beaten(plain, with(other, strength(Verdict.fail(List.of("weak")), 1), SIGNED)))
        .isEqualTo("[[way=other, by=plain, reason=stronger]]");
    assertThat(beaten(plain, with(other, strength(Verdict.pass(), 1.2), SIGNED)))
        .isEqualTo("[[way=other, by=plain, reason=lighter]]");
    assertThat(beaten(plain, with(other, strength(Verdict.pass(), 0), SIGNED)))
        .as("nobody knows its mass")
        .isEqualTo("[]");
    Signing two = new Signing(List.of(), Optional.empty(), List.of("a", "b"));
    assertThat(beaten(plain, with(other, asDrawn, two)))
        .isEqualTo("[[way=other, by=plain, reason=less to be signed]]");
    Quantity one = Quantity.of("1", Unit.EACH);
    Taken taken =
        new Taken("t", "t", one, Optional.empty(), Optional.empty(), List.of("the locker"));
    assertThat(beaten(plain, with(other, asDrawn, SIGNED, taken)))
        .isEqualTo("[[way=other, by=plain, reason=taking less from other work]]");
  }

  @Test
  void whatCannotBeToldIsNotWeaker() {
    WayOut plain = drawn("plain", 5, 5, 5, 5);
    Strength unsure = strength(Verdict.cannotTell(List.of("no value")), 1);
    WayOut other = with(drawn("other", 6, 5, 5, 5), unsure, SIGNED);
    assertThat(Measuring.STRENGTH.isBetter(plain, other)).isFalse();
    assertThat(beaten(plain, other))
        .as("nothing is stronger than as drawn, whatever is found")
        .isEqualTo("[[way=other, by=plain, reason=cheaper]]");
  }

  @Test
  void onlyWhatMayBeBuiltBeats() {
    WayOut dear = drawn("dear", 9, 9, 9, 9);
    Signing open = new Signing(List.of(), Optional.empty(), List.of("nobody has signed"));
    WayOut cheap = drawn("cheap", 1, 1, 1, 1);
    assertThat(beaten(with(cheap, strength(Verdict.pass(), 1), SIGNED), dear)).contains("by=cheap");
    assertThat(beaten(with(cheap, strength(Verdict.pass(), 1), open), dear)).isEqualTo("[]");
    assertThat(beaten(with(cheap, strength(Verdict.fail(List.of("weak")), 1), SIGNED), dear))
        .isEqualTo("[]");
    WayOut nobody =
        new WayOut(
            cheap.option(),
            cheap.outlay(),
            cheap.timing(),
            Optional.of(strength(Verdict.pass(), 1)),
            Optional.empty(),
            List.of());
    assertThat(nobody.isReleased()).as("built otherwise, and nobody has to sign").isFalse();
    assertThat(beaten(nobody, dear)).isEqualTo("[]");
    assertThat(with(cheap, strength(Verdict.fail(List.of("weak")), 1), SIGNED).isReleased())
        .as("signed, and too weak")
        .isFalse();
    WayOut unassessed =
        new WayOut(
            cheap.option(),
            cheap.outlay(),
            cheap.timing(),
            Optional.empty(),
            Optional.of(open),
            List.of());
    assertThat(unassessed.isReleased()).isFalse();
    assertThat(cheap.isReleased()).isTrue();
  }
}
