package kitwright.cutting.solve;

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

  /** What a part of each type takes up, used as a first guess of its worth. */
  long[] size();
}
