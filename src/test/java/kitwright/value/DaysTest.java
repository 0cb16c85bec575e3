package kitwright.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class DaysTest {
  private static final LocalDate NEW_YEAR = LocalDate.of(2026, 1, 1);

  /** The names that Java has for English (CLDR). */
  @Test
  void monthsAndWeekdaysHaveTheirEnglishNames() {
    for (LocalDate day = NEW_YEAR; day.getYear() == 2026; day = day.plusDays(9)) {
      assertThat(Days.month(day))
          .isEqualTo(day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH));
      assertThat(Days.monthInShort(day))
          .isEqualTo(day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
      assertThat(Days.weekday(day))
          .isEqualTo(day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
    }
  }

  @Test
  void aDayInASentenceHoldsTogether() {
    assertThat(Days.named(LocalDate.of(2026, 3, 31))).isEqualTo("31\u00a0March\u00a02026");
  }
}
