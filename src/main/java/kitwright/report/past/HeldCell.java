package kitwright.report.past;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.document.Cell;
import kitwright.history.Held;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.value.Days;
import kitwright.value.Money;
import kitwright.value.Quantity;

/** What held of a thing on a day, as a cell. */
final class HeldCell implements Held.Cases<Cell> {
  @Override
  public Cell nothing() {
    return Cell.none();
  }

  @Override
  public Cell share(BigDecimal share, Optional<LocalDate> finished) {
    return Cell.number(
        finished.map(day -> "finished on " + Days.named(day)).orElse(Say.percent(share)), share);
  }

  @Override
  public Cell quantity(Quantity quantity) {
    return Cells.qty(quantity);
  }

  @Override
  public Cell money(Money money) {
    return Cells.money(money);
  }

  @Override
  public Cell count(long many) {
    return Cell.number(many);
  }

  @Override
  public Cell day(LocalDate day) {
    return Cell.day(day);
  }

  @Override
  public Cell words(List<String> words) {
    return Cell.several(String.join(", ", words), words);
  }

  @Override
  public Cell changed(List<String> keys) {
    return Cell.several("changed: " + String.join(", ", keys), keys);
  }
}
