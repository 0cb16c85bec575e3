package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import kitwright.Sample;
import org.junit.jupiter.api.Test;

/** Each fact of a day is worked out once, and a broken one is told once. */
class FactsTest {
  private final Facts day = Facts.of(Sample.ledger(""), Sample.TODAY);

  private static final class Counted implements Facts.Fact<String> {
    private int times;

    @Override
    public String work(Facts day) {
      times++;
      return "on " + day.day();
    }
  }

  @Test
  void itIsWorkedOutOnceADay() {
    Counted fact = new Counted();
    Facts tomorrow = day.on(Sample.TODAY.plusDays(1));

    assertThat(fact.on(day)).isEqualTo("on 2026-03-02").isSameAs(fact.on(day));
    assertThat(fact.times).isEqualTo(1);
    assertThat(fact.on(tomorrow)).isEqualTo("on 2026-03-03");
    assertThat(tomorrow.on(Sample.TODAY)).isSameAs(day);
    assertThat(fact.times).isEqualTo(2);
  }

  private static final class Breaking implements Facts.Fact<String> {
    private int times;

    @Override
    public String work(Facts day) {
      times++;
      throw new ArithmeticException("by nought");
    }
  }

  private static final class Leaning implements Facts.Fact<String> {
    private final Facts.Fact<String> on;

    Leaning(Facts.Fact<String> on) {
      this.on = on;
    }

    @Override
    public String work(Facts day) {
      return on.on(day);
    }
  }

  @Test
  void whatBreaksIsTriedOnceAndTellsItsNameToWhateverLeansOnIt() {
    Breaking fact = new Breaking();
    Throwable first = catchThrowable(() -> fact.on(day));

    assertThat(first).isInstanceOf(Facts.Broken.class).hasMessageContaining("by nought");
    assertThat(((Facts.Broken) first).fact()).isEqualTo("ledger.FactsTest");
    assertThat(catchThrowable(() -> new Leaning(fact).on(day))).isSameAs(first);
    assertThat(fact.times).isEqualTo(1);
  }

  private static final class Ring implements Facts.Fact<String> {
    @Override
    public String work(Facts day) {
      return new Leaning(this).on(day);
    }
  }

  @Test
  void aCircleIsNamedRatherThanRunThrough() {
    assertThatThrownBy(() -> new Ring().on(day))
        .isInstanceOf(Facts.Broken.class)
        .hasMessageContaining("in a circle");
  }
}
