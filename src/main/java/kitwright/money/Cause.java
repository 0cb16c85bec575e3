package kitwright.money;

/** Why a line ends elsewhere than planned. */
public enum Cause {
  /** Spent, ordered or still to be spent because something was missing, less what came back. */
  SHORTAGE("shortage"),
  /** Spent on building something otherwise than drawn. */
  SUBSTITUTION("substitution"),
  /** Spent, or still to be spent, on making a borrowed tool good. */
  REPAIR("repair of a borrowed tool"),
  /** Nobody had thought of it. */
  FORGOTTEN("forgotten"),
  /** Dearer, or cheaper, than the kit's price. */
  PRICE("price"),
  /** More of it than planned. */
  QUANTITY("quantity"),
  /** The rate has moved since the budget was made. */
  CURRENCY("currency"),
  /** What is left: planned purchases and what is still to come, against the budget. */
  REST("planned purchases against the budget");

  private final String word;

  Cause(String word) {
    this.word = word;
  }

  /** The words a person reads. */
  public String word() {
    return word;
  }
}
