package kitwright.cutting.solve;

import java.util.List;
import java.util.Optional;

/** Finds the way to cut a piece that is worth most when each type of part has its worth. */
interface Pricing<L> {
  /**
   * The best offers for all kinds of stock at once.
   *
   * @param worth of one part of each type; zero for those not wanted
   * @param floor for each kind of stock: ways worth no more than this are of no interest
   * @param node what is left to make, and what is ruled out
   */
  Offers<L> offers(long[] worth, long[] floor, Node<L> node, Work work);

  /**
   * Ways worth more than the floor, found quickly: not surely the best, and none does not mean that
   * there are none. Empty where there is nothing quicker than {@link #offers}.
   */
  default Optional<List<Column<L>>> rough(
      long[] worth, long[] floor, Node<L> node, Care care, Work work) {
    return Optional.empty();
  }

  /**
   * For each kind of stock, a worth that no way of cutting it exceeds; asked where {@link #offers}
   * finds nothing more but is not complete. Empty where nothing better is known.
   */
  default Optional<List<Long>> limits(long[] worth, Node<L> node, Work work) {
    return Optional.empty();
  }

  /** What a part of each type takes up, used as a first guess of its worth. */
  long[] size();
}
