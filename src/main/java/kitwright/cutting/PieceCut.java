package kitwright.cutting;

import java.util.List;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Flaw;
import kitwright.ledger.Stock;

/**
 * One piece of stock and how it is parted.
 *
 * @param number which of the pieces of that stock, from 1
 */
public record PieceCut(Stock stock, int number, Board board) {
  /** What nothing may be made of, the nearest first. */
  public List<Flaw> flaws() {
    return Clearance.flaws(stock);
  }

  /** What it is called at the bench. */
  public String name() {
    return stock.id() + ", piece " + number;
  }
}
